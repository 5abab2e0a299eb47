package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.correction.StrapCell.Obstacle;
import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import java.util.List;
import java.util.stream.Stream;

/**
 * Where to strap every battery pack in every flight case so that the case lies between its limits moved inward, at basic and at predicted
 * mass. A pack is a line of category BATTERY that a bay holds or that has a travel.
 */
public record StrapTable(List<StrapRow> rows) {

    public StrapTable {
        rows = List.copyOf(rows);
    }

    public static StrapTable of(BalanceStatement statement) {
        List<Aim> aims = Aim.of(statement);
        return new StrapTable(statement.build().lines().stream()
                .filter(line -> line.category() == Category.BATTERY)
                .flatMap(line -> row(line, statement, aims))
                .toList());
    }

    private static Stream<StrapRow> row(PartLine pack, BalanceStatement statement, List<Aim> aims) {
        Build build = statement.build();
        Bay bay = build.bays().stream()
                .filter(each -> each.holds().contains(pack.id()))
                .findFirst()
                .orElse(null);
        return StrapPosition.of(pack, bay)
                .map(position -> new StrapRow(
                        pack,
                        position,
                        CasePlaces.flight(build).stream()
                                .map(places -> cell(new Strapping(statement, aims), pack, position, places))
                                .toList()))
                .stream();
    }

    /** What every cell of a table is worked out from. */
    private record Strapping(BalanceStatement statement, List<Aim> aims) {

        List<Aim> aims(CasePlaces places) {
            return aims.stream()
                    .filter(aim ->
                            aim.point().loadCase().equals(places.loadCase().code()))
                    .toList();
        }

        boolean isKnown(CasePlaces places) {
            return statement.loadCase(places.loadCase().code()).orElseThrow().isKnown();
        }
    }

    private static StrapCell cell(Strapping strapping, PartLine pack, StrapPosition position, CasePlaces places) {
        List<Aim> aims = strapping.aims(places);
        Station at = places.station(pack);
        if (!places.isAboard(pack)) {
            return StrapCell.cannot(places, Obstacle.AT_HOME, 0);
        }
        if (pack.totalMass().mg() == 0) {
            return StrapCell.cannot(places, Obstacle.NO_MASS, 0);
        }
        if (at == null) {
            return StrapCell.cannot(places, Obstacle.NO_STATION, 0);
        }
        if (aims.isEmpty()) {
            return StrapCell.cannot(places, Obstacle.NO_LIMITS, 0);
        }
        return strapping.isKnown(places)
                ? new StrapSearch(strapping.statement(), pack, places, position, at, aims).cell()
                : StrapCell.cannot(places, Obstacle.INCOMPLETE, 0);
    }
}
