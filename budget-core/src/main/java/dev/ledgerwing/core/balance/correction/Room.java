package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.KeepApart;
import dev.ledgerwing.core.build.LinePlace.Size;
import dev.ledgerwing.core.build.LinePlace.Travel;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Where along x a part may sit: what its travel, the bays that hold it and the rules to keep apart leave open. */
record Room(Build build) {

    /** The millimetres aft that a part may be moved by, for every flight case that it is aboard of and that does not put it elsewhere. */
    Ranges moves(PartLine line) {
        Station station = line.place().station();
        Travel travel = line.place().travel();
        if (station == null || travel == null) {
            return Ranges.NOTHING;
        }
        Ranges open = travel(travel).shifted(-station.x().mm());
        for (CasePlaces places : CasePlaces.flight(build)) {
            Station at = places.station(line);
            if (places.isAboard(line) && !places.isMoved(line) && at != null) {
                open = open.and(ruled(line, at, places).shifted(-at.x().mm()));
            }
        }
        return open;
    }

    /** The stations that a part may be strapped at in one load case. */
    Ranges stations(PartLine line, Station at, CasePlaces places) {
        Travel travel = line.place().travel();
        Ranges ruled = ruled(line, at, places);
        return travel == null ? ruled : ruled.and(travel(travel));
    }

    private static Ranges travel(Travel travel) {
        return Ranges.between(travel.fromX().mm(), travel.toX().mm());
    }

    /** What bays and rules leave open, the part staying as far aside and as high as it is. */
    private Ranges ruled(PartLine line, Station at, CasePlaces places) {
        Ranges open = Ranges.EVERYTHING;
        for (Bay bay : build.bays()) {
            if (bay.holds().contains(line.id())) {
                open = open.and(inside(bay, line));
            }
        }
        for (KeepApart rule : build.keepApart()) {
            Optional<PartLine> other = other(rule, line);
            if (other.isPresent() && places.isAboard(other.get())) {
                open = clearOf(rule, line, at, other.get(), places.station(other.get()), open);
            }
        }
        return open;
    }

    private static Ranges inside(Bay bay, PartLine line) {
        Size size = line.place().size();
        double half = size == null ? 0 : size.length().mm() / 2;
        return Ranges.between(bay.fromX().mm() + half, bay.toX().mm() - half);
    }

    private Optional<PartLine> other(KeepApart rule, PartLine line) {
        if (rule.first().equals(line.id())) {
            return build.line(rule.second());
        }
        return rule.second().equals(line.id()) ? build.line(rule.first()) : Optional.empty();
    }

    /**
     * Two boxes s apart seen along x keep D apart where their stations are sqrt(D^2 - s^2) and half of both lengths apart along x.
     */
    private static Ranges clearOf(
            KeepApart rule, PartLine line, Station at, PartLine other, @Nullable Station where, Ranges open) {
        if (where == null) {
            return open; // nobody has said where the other sits: its own finding says so
        }
        double wanted = rule.atLeast().mm();
        Ranges clear = open;
        for (Box box : Box.of(line.place(), at)) {
            for (Box obstacle : Box.of(other.place(), where)) {
                double aside = box.asideMm(obstacle);
                if (aside < wanted) {
                    double apart = Math.sqrt(wanted * wanted - aside * aside) + box.reachX(obstacle);
                    clear = clear.without(obstacle.xMm() - apart, obstacle.xMm() + apart);
                }
            }
        }
        return clear;
    }
}
