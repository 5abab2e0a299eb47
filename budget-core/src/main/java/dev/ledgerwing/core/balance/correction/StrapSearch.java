package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.correction.LinearWay.Effect;
import dev.ledgerwing.core.balance.correction.StrapCell.Obstacle;
import dev.ledgerwing.core.balance.correction.StrapCell.StrapRange;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * Finds the stations of one pack that land one case. With the pack of mass m at x_p now and the case at x_0, a limit x_t is reached with
 * the pack at x_p + M (x_t - x_0)/m; by derivation. Each end is then tried on the record.
 *
 * @param aims of this case, at basic and at predicted mass
 * @param at where the pack sits in this case now
 */
record StrapSearch(
        BalanceStatement statement,
        PartLine pack,
        CasePlaces places,
        StrapPosition position,
        Station at,
        List<Aim> aims) {

    private static final int MOST_STEPS_IN = 10;

    StrapCell cell() {
        Ranges room = new Room(statement.build()).stations(pack, at, places);
        if (room.isEmpty()) {
            return StrapCell.cannot(places, Obstacle.NO_ROOM, 0);
        }
        Ranges balanced = balanced();
        Ranges both = room.and(balanced);
        if (both.isEmpty()) {
            return cannot(balanced, room);
        }
        return range(both.shifted(-position.zeroX().mm()), (balanced.least() + balanced.greatest()) / 2)
                .map(range -> StrapCell.at(places, range))
                .orElseGet(() -> StrapCell.cannot(places, Obstacle.NOWHERE, 0));
    }

    /** The range nearest the middle that has no gap in it. */
    private Optional<StrapRange> range(Ranges open, double middleXMm) {
        OptionalInt nearest = open.wholeNearest(middleXMm - position.zeroX().mm());
        if (nearest.isEmpty()) {
            return Optional.empty();
        }
        Ranges around = open.around(nearest.getAsInt());
        OptionalInt foremost = landing(around, Double.NEGATIVE_INFINITY);
        OptionalInt aftmost = landing(around, Double.POSITIVE_INFINITY);
        if (foremost.isEmpty() || aftmost.isEmpty()) {
            return Optional.empty();
        }
        int best = Math.max(foremost.getAsInt(), Math.min(aftmost.getAsInt(), nearest.getAsInt()));
        return Optional.of(new StrapRange(station(foremost.getAsInt()), station(aftmost.getAsInt()), station(best)));
    }

    /** Stations at which the case balances, whether the pack can go there or not. */
    private Ranges balanced() {
        List<Effect> effects = new Effects(statement, aims).ofStrapping(pack);
        return new LinearWay(effects, 0, Ranges.EVERYTHING, by -> new MovePart(pack, Length.ofMm(by)))
                .landing(aims)
                .shifted(at.x().mm());
    }

    /** The end of the open positions, as read with a ruler, from which on inward the record itself lands. */
    private OptionalInt landing(Ranges open, double end) {
        Ranges left = open;
        for (int step = 0; step < MOST_STEPS_IN; step++) {
            OptionalInt whole = end < 0 ? left.firstWhole() : left.lastWhole();
            if (whole.isEmpty() || lands(whole.getAsInt())) {
                return whole;
            }
            left = left.and(
                    end < 0
                            ? Ranges.between(whole.getAsInt() + 1, Double.POSITIVE_INFINITY)
                            : Ranges.between(Double.NEGATIVE_INFINITY, whole.getAsInt() - 1));
        }
        return OptionalInt.empty();
    }

    private boolean lands(int read) {
        return Aim.of(BalanceStatement.of(strapped(Length.ofMm(station(read))))).stream()
                .filter(aim -> aim.point().loadCase().equals(places.loadCase().code()))
                .allMatch(Aim::isMet);
    }

    private Build strapped(Length x) {
        LoadCase here = places.loadCase();
        Map<String, Station> moved = new TreeMap<>(here.moved());
        moved.put(pack.id(), new Station(x, at.y(), at.z()));
        LoadCase changed = new LoadCase(
                here.code(),
                here.name(),
                here.purpose(),
                here.design(),
                here.absent(),
                moved,
                here.stowed(),
                here.extra());
        Build build = statement.build();
        return build.withLoadCases(build.loadCases().stream()
                .map(each -> each.code().equals(here.code()) ? changed : each)
                .toList());
    }

    private double station(int read) {
        return read + position.zeroX().mm();
    }

    private StrapCell cannot(Ranges balanced, Ranges room) {
        if (!balanced.isEmpty() && balanced.greatest() < room.least()) {
            return StrapCell.cannot(places, Obstacle.TOO_FAR_FORWARD, room.least() - balanced.greatest());
        }
        if (!balanced.isEmpty() && balanced.least() > room.greatest()) {
            return StrapCell.cannot(places, Obstacle.TOO_FAR_AFT, balanced.least() - room.greatest());
        }
        return StrapCell.cannot(places, Obstacle.NOWHERE, 0);
    }
}
