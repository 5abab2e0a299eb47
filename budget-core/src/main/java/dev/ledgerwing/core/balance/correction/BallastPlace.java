package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Assembly.MovesWith;
import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A place that ballast could sit at, on the centre line.
 *
 * @param key short and steady
 * @param words where it is, to follow “ballast”
 * @param assembly code of the assembly that carries it
 */
public record BallastPlace(String key, String words, String assembly, Station station) {

    private static final String BESIDE = "beside “";

    /**
     * The places worth trying: beside the foremost and the aftmost part that flies in every case, where there is something to fix it to and
     * the lever is longest; beside ballast there is; at either end of every bay. Of several at one station the first.
     */
    static List<BallastPlace> in(Build build) {
        if (build.assemblies().isEmpty()) {
            return List.of();
        }
        List<PartLine> fixed =
                placed(build).filter(line -> fliesAlways(line, build)).toList();
        List<BallastPlace> places = new ArrayList<>();
        if (!fixed.isEmpty()) {
            places.add(beside(fixed.get(0)));
            places.add(beside(fixed.get(fixed.size() - 1)));
        }
        placed(build)
                .filter(line -> line.category() == Category.BALLAST)
                .map(BallastPlace::beside)
                .forEach(places::add);
        build.bays().forEach(bay -> places.addAll(atEndsOf(bay, build)));
        Map<Length, BallastPlace> apart = new LinkedHashMap<>();
        places.forEach(place -> apart.putIfAbsent(place.station().x(), place));
        return List.copyOf(apart.values());
    }

    /** From the front aft. */
    private static Stream<PartLine> placed(Build build) {
        return build.lines().stream()
                .filter(line -> line.place().station() != null)
                .sorted(Comparator.comparing(BallastPlace::x).thenComparing(PartLine::id));
    }

    private static boolean fliesAlways(PartLine line, Build build) {
        return line.category() != Category.PAYLOAD
                && CasePlaces.flight(build).stream().allMatch(places -> places.isAboard(line));
    }

    private static BallastPlace beside(PartLine line) {
        Station station = known(line.place().station());
        return new BallastPlace(line.id(), BESIDE + line.name() + "”", line.assembly(), centred(station));
    }

    private static List<BallastPlace> atEndsOf(Bay bay, Build build) {
        Length z = middle(bay.fromZ(), bay.toZ());
        String assembly = carrier(bay, build);
        return List.of(
                new BallastPlace(
                        bay.code() + ".front",
                        "at the front of “" + bay.name() + "”",
                        assembly,
                        new Station(bay.fromX(), Length.ZERO, z)),
                new BallastPlace(
                        bay.code() + ".back",
                        "at the back of “" + bay.name() + "”",
                        assembly,
                        new Station(bay.toX(), Length.ZERO, z)));
    }

    /** The assembly of a part that the bay holds, else the fuselage. */
    private static String carrier(Bay bay, Build build) {
        Optional<String> held = bay.holds().stream()
                .flatMap(id -> build.line(id).stream())
                .map(PartLine::assembly)
                .findFirst();
        return held.orElseGet(() -> build.assemblies().stream()
                .filter(assembly -> assembly.movesWith() == MovesWith.FUSELAGE)
                .findFirst()
                .orElse(build.assemblies().get(0))
                .code());
    }

    private static Station centred(Station station) {
        return new Station(station.x(), Length.ZERO, station.z());
    }

    private static Length middle(@Nullable Length from, @Nullable Length to) {
        return from == null || to == null ? Length.ZERO : new Length((from.um() + to.um()) / 2);
    }

    private static Length x(PartLine line) {
        return known(line.place().station()).x();
    }

    private static Station known(@Nullable Station station) {
        if (station == null) {
            throw new IllegalArgumentException("ballast needs a station to sit at");
        }
        return station;
    }
}
