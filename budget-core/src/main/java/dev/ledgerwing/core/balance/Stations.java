package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.mass.CaseMass;
import dev.ledgerwing.core.mass.MassRow;
import dev.ledgerwing.core.quantity.Length;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Where each row of a load case sits: moved, stowed, or at its own station. A stowed line without a stowed station is nowhere. */
final class Stations {

    private final Map<String, PartLine> lines;
    private final Length uncertainty;

    Stations(Build build) {
        lines = build.lines().stream().collect(Collectors.toMap(PartLine::id, Function.identity()));
        uncertainty = build.geometry().stationUncertaintyInForce();
    }

    List<PlacedRow> of(CaseMass aboard) {
        LoadCase loadCase = aboard.loadCase();
        Set<String> stowed = new HashSet<>(loadCase.stowed());
        Iterator<ExtraItem> extra = loadCase.extra().iterator(); // the extra rows stand last and in this order
        List<PlacedRow> placed = new ArrayList<>();
        for (MassRow row : aboard.rows()) {
            PartLine line = row.line() == null ? null : lines.get(row.line());
            placed.add(line == null ? place(row, extra.next()) : place(row, line, loadCase, stowed));
        }
        return placed;
    }

    private PlacedRow place(MassRow row, ExtraItem item) {
        return new PlacedRow(row, item.station(), uncertainty, null, null);
    }

    private PlacedRow place(MassRow row, PartLine line, LoadCase loadCase, Set<String> stowed) {
        LinePlace place = line.place();
        Station station = loadCase.moved().get(line.id());
        if (station == null) {
            station = stowed.contains(line.id()) ? place.stowedStation() : place.station();
        }
        Length own = place.stationUncertainty();
        return new PlacedRow(
                row,
                centred(station, place.mirroredAtY()),
                own == null ? uncertainty : own,
                place.mirroredAtY(),
                place.size());
    }

    /** Half at +y and half at -y have their common centre on the centre line. */
    private static @Nullable Station centred(@Nullable Station station, @Nullable Length mirroredAtY) {
        return station == null || mirroredAtY == null ? station : new Station(station.x(), Length.ZERO, station.z());
    }
}
