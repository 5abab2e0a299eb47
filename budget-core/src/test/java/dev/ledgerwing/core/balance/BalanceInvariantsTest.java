package dev.ledgerwing.core.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.AssemblyBooking;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Builds;
import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.Moments;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BalanceInvariantsTest {

    private static final Length SHIFT = Length.ofMm(137);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void groupsAddUpToTheTotalExactly(long seed) {
        BalanceStatement statement = BalanceStatement.of(Builds.seeded(seed));
        for (CaseBalance aboard : statement.cases()) {
            for (MassState state : MassState.values()) {
                assertThat(statement.byAssembly(aboard).stream()
                                .map(group -> group.sum(state))
                                .reduce(BalanceSum.ZERO, BalanceSum::plus))
                        .isEqualTo(aboard.sum(state));
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theOrderOfTheLinesChangesNothing(long seed) {
        Build build = Builds.seeded(seed);
        List<PartLine> shuffled = new ArrayList<>(build.lines());
        Collections.shuffle(shuffled, new Random(seed));
        BalanceStatement inOrder = BalanceStatement.of(build);
        BalanceStatement mixed = BalanceStatement.of(build.withLines(shuffled));
        for (int i = 0; i < inOrder.cases().size(); i++) {
            for (MassState state : MassState.values()) {
                assertThat(mixed.cases().get(i).sum(state))
                        .isEqualTo(inOrder.cases().get(i).sum(state));
                assertThat(mixed.cases().get(i).uncertainty(state))
                        .isEqualTo(inOrder.cases().get(i).uncertainty(state));
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aShiftOfTheDatumChangesTheOriginOnly(long seed) {
        BalanceStatement before = BalanceStatement.of(withoutGeometry(Builds.seeded(seed)));
        BalanceStatement after = BalanceStatement.of(shifted(before.build()));
        for (int i = 0; i < before.cases().size(); i++) {
            CaseBalance was = before.cases().get(i);
            CaseBalance is = after.cases().get(i);
            for (MassState state : MassState.values()) {
                assertThat(is.cg(state).isPresent()).isEqualTo(was.cg(state).isPresent());
                was.cg(state).ifPresent(cg -> {
                    Cg now = is.cg(state).orElseThrow();
                    assertThat(now.xMm() - SHIFT.mm()).isCloseTo(cg.xMm(), within(1e-6));
                    assertThat(now.yMm()).isEqualTo(cg.yMm());
                    assertThat(is.uncertainty(state).orElseThrow().xMm())
                            .isCloseTo(was.uncertainty(state).orElseThrow().xMm(), within(1e-6));
                });
            }
            was.inertia()
                    .ifPresent(inertia -> assertThat(
                                    is.inertia().orElseThrow().aboutCg().izz())
                            .isCloseTo(inertia.aboutCg().izz(), within(1e-9)));
        }
    }

    private static Build withoutGeometry(Build build) {
        return build.withGeometry(Geometry.NONE);
    }

    private static Build shifted(Build build) {
        return build.withLines(build.lines().stream()
                        .map(line -> line.withPlace(shifted(line.place())))
                        .toList())
                .withLoadCases(build.loadCases().stream()
                        .map(BalanceInvariantsTest::shifted)
                        .toList())
                .withAssemblyBookings(build.assemblyBookings().stream()
                        .map(each -> new AssemblyBooking(each.assembly(), shifted(each.booking())))
                        .toList());
    }

    private static LinePlace shifted(LinePlace place) {
        return new LinePlace(
                shifted(place.station()),
                place.stationUncertainty(),
                shifted(place.stowedStation()),
                null,
                place.size(),
                place.mirroredAtY());
    }

    private static LoadCase shifted(LoadCase was) {
        TreeMap<String, Station> moved = new TreeMap<>();
        was.moved()
                .forEach((line, station) ->
                        moved.put(line, new Station(station.x().plus(SHIFT), station.y(), station.z())));
        return new LoadCase(
                was.code(), was.name(), was.purpose(), was.design(), was.absent(), moved, was.stowed(), was.extra());
    }

    private static Booking shifted(Booking booking) {
        Moments moments = booking.moments();
        return moments == null
                ? booking
                : new Booking(
                        booking.mass(), booking.reason(), moments.plus(Moments.of(booking.mass(), Station.atX(SHIFT))));
    }

    private static @Nullable Station shifted(@Nullable Station station) {
        return station == null ? null : new Station(station.x().plus(SHIFT), station.y(), station.z());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aMirroredBuildBalancesOnItsCentreLine(long seed) {
        Build build = Builds.seeded(seed);
        List<PartLine> both = new ArrayList<>();
        for (PartLine line : build.lines()) {
            LinePlace was = line.place();
            Station at = was.station() == null ? Station.atX(Length.ZERO) : was.station();
            both.add(line.withPlace(new LinePlace(at, null, null, null, null, Length.ofMm(250))));
        }
        Build mirrored = build.withLines(both)
                .withLoadCases(List.of(LoadCase.everythingAboard()))
                .withAssemblyBookings(List.of())
                .withBooking(new Booking(Mass.ofGrams(7), "scales"));
        CaseBalance design = BalanceStatement.of(mirrored).design();
        design.cg(MassState.BASIC).ifPresent(cg -> assertThat(cg.yMm()).isZero());
        design.cg(MassState.PREDICTED).ifPresent(cg -> assertThat(cg.yMm()).isZero());
        assertThat(design.cg(MassState.BASIC).isPresent())
                .isEqualTo(design.basic().mass().mg() > 0);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void perCentAndMillimetresAgree(long seed) {
        BalanceShape shape = BalanceShape.of(Builds.seeded(seed).geometry());
        Planform wing = shape.wing();
        double xMm = new Random(seed).nextDouble() * 3000 - 1000;
        if (wing == null) {
            assertThat(shape.percentMac(xMm)).isNull();
        } else {
            assertThat(wing.xMm(wing.percentMac(xMm))).isCloseTo(xMm, within(1e-9));
            assertThat(wing.macMm()).isBetween(0.0, 300.0);
        }
    }
}
