package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where parts sit in one load case. */
record CasePlaces(LoadCase loadCase) {

    /** The cases that rules of placing are judged in: those somebody means to fly. */
    static List<CasePlaces> flight(Build build) {
        return build.loadCases().stream()
                .filter(each -> each.purpose() == Purpose.FLIGHT)
                .map(CasePlaces::new)
                .toList();
    }

    boolean isAboard(PartLine line) {
        return !loadCase.absent().contains(line.id());
    }

    /** Whether the case puts it elsewhere than its line says. */
    boolean isMoved(PartLine line) {
        return loadCase.moved().containsKey(line.id());
    }

    /** Its station in this case; null = not known. */
    @Nullable
    Station station(PartLine line) {
        Station moved = loadCase.moved().get(line.id());
        if (moved != null) {
            return moved;
        }
        LinePlace place = line.place();
        return loadCase.stowed().contains(line.id()) ? place.stowedStation() : place.station();
    }
}
