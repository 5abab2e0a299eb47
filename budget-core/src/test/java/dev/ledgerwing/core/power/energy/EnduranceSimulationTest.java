package dev.ledgerwing.core.power.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.power.network.PowerNetwork;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Flies the same flights second by second, with nothing but the record's numbers, and lands when the pack says so. */
class EnduranceSimulationTest {

    private static final double PACK_V = 11.1;
    private static final double REGULATED_V = 5;
    private static final double EFFICIENCY = 0.9;
    private static final double QUIESCENT_A = 0.05;
    private static final double USABLE = 0.8;
    private static final int STRETCHES = 1;

    /** A flight: take-off, a cruise that stretches, landing. */
    private record Flight(
            double capacityMah,
            List<Double> motorA,
            List<Double> boardA,
            List<Integer> seconds,
            double reserveMinutes) {

        static Flight seeded(long seed) {
            Random random = new Random(seed);
            return new Flight(
                    4000 + random.nextInt(6000),
                    List.of(10.0 + random.nextInt(10), 1.0 + random.nextInt(4), 0.0 + random.nextInt(3)),
                    List.of(random.nextDouble(), random.nextDouble(), random.nextDouble()),
                    List.of(60 * random.nextInt(6), 0, 60 * random.nextInt(6)),
                    random.nextInt(8));
        }

        double packA(int phase) {
            return motorA.get(phase) + REGULATED_V * boardA.get(phase) / (EFFICIENCY * PACK_V) + QUIESCENT_A;
        }

        /** Seconds in the air; -1 when the fixed phases or the reserve do not fit. */
        int flownSeconds() {
            double leftAs = capacityMah * 3.6 * USABLE;
            for (double second = 0; second < reserveMinutes * 60; second++) {
                leftAs -= packA(STRETCHES);
            }
            int flown = 0;
            for (int phase = 0; phase < seconds.size(); phase++) {
                for (int second = 0; second < seconds.get(phase); second++) {
                    leftAs -= packA(phase);
                    flown++;
                }
            }
            if (leftAs < 0) {
                return -1;
            }
            while (leftAs >= packA(STRETCHES)) {
                leftAs -= packA(STRETCHES);
                flown++;
            }
            return flown;
        }

        Build build() {
            List<Phase> phases = List.of(
                    Flights.fixed("take-off", seconds.get(0) / 60.0),
                    Flights.stretching("cruise"),
                    Flights.fixed("landing", seconds.get(2) / 60.0));
            FeedElement regulator = FeedElement.regulator(
                    "Regulator",
                    5.0,
                    5.0,
                    new Regulator(
                            Regulator.Type.SWITCHING, REGULATED_V, EFFICIENCY * 100, 1.0, 6.0, 20.0, QUIESCENT_A));
            Power power = Flights.power(
                    List.of(Flights.pack("one", capacityMah)),
                    List.of(Flights.rail("main"), Flights.rail("five")),
                    List.of(Flights.feed("one", "main"), Flights.feed("main", "five", regulator)));
            Build build = Flights.build(
                    power,
                    phases,
                    Flights.load("motor", "main", 20.0, duties(motorA, 20)),
                    Flights.load("board", "five", 1.0, duties(boardA, 1)));
            return Flights.wanting(null, reserveMinutes, build);
        }

        private static Map<String, Double> duties(List<Double> meanA, double typicalA) {
            return Map.of(
                    "take-off", meanA.get(0) / typicalA,
                    "cruise", meanA.get(1) / typicalA,
                    "landing", meanA.get(2) / typicalA);
        }
    }

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void agreesWithTheFlightFlownSecondBySecond(long seed) {
        Flight flight = Flight.seeded(seed);
        Endurance endurance = PowerEnergy.of(PowerNetwork.of(flight.build())).endurance();
        int seconds = flight.flownSeconds();
        assertThat(endurance.holdsFixedPhases()).isEqualTo(seconds >= 0);
        if (seconds >= 0) {
            assertThat(endurance.minutes()).isCloseTo(seconds / 60.0, within(1.01 / 60));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void spendsNoMoreThanThePackMayGive(long seed) {
        Flight flight = Flight.seeded(seed);
        PowerEnergy energy = PowerEnergy.of(PowerNetwork.of(flight.build()));
        if (energy.endurance().holdsFixedPhases()) {
            List<Double> givenMah = new ArrayList<>();
            for (PhaseEnergy phase : energy.phases()) {
                Double minutes = phase.minutes();
                assertThat(minutes).isNotNull();
                givenMah.add(phase.sources().get(0).chargeMah(minutes));
            }
            double reserveMah = flight.packA(STRETCHES) * 1000 * flight.reserveMinutes / 60;
            assertThat(givenMah.stream().mapToDouble(each -> each).sum() + reserveMah)
                    .isCloseTo(flight.capacityMah * USABLE, within(1e-6));
        }
    }
}
