package dev.ledgerwing.core.power.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.power.network.PowerNetwork;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** 11.1 V straight to a motor, and down to 5 V by a linear regulator of 10 mA of its own. */
class PhaseEnergyTest {

    private static final FeedElement REGULATOR = FeedElement.regulator(
            "Regulator", 2.0, 2.0, new Regulator(Regulator.Type.LINEAR, 5, null, 1.0, null, null, 0.01));

    @Test
    void takesTypicalCurrentsForTheShareOfThePhase() {
        PhaseEnergy climb = energy().phases().get(0);
        assertThat(rail(climb, "main").meanA()).isCloseTo(10, within(1e-9));
        assertThat(rail(climb, "five").meanA()).isCloseTo(0.25, within(1e-9));
        assertThat(climb.sources().get(0).meanA()).isCloseTo(10.26, within(1e-9));
        assertThat(climb.sources().get(0).meanW()).isCloseTo(10.26 * 11.1, within(1e-9));
    }

    @Test
    void givesToEachRailWhatItsOwnLoadsTake() {
        PhaseEnergy climb = energy().phases().get(0);
        assertThat(rail(climb, "main").meanW()).isCloseTo(111, within(1e-9));
        assertThat(rail(climb, "five").meanW()).isCloseTo(1.25, within(1e-9));
    }

    /** By derivation: (11.1 - 5) V x 0.25 A in the regulator and 11.1 V x 0.01 A for itself. */
    @Test
    void losesTheRestOnTheWay() {
        assertThat(energy().phases().get(0).lossW()).isCloseTo(6.1 * 0.25 + 0.111, within(1e-9));
    }

    @Test
    void countsWattHoursAndMilliampereHours() {
        EnergyShare pack = energy().phases().get(0).sources().get(0);
        assertThat(pack.chargeMah(6)).isCloseTo(1026, within(1e-6));
        assertThat(pack.energyWh(6)).isCloseTo(1.026 * 11.1, within(1e-9));
    }

    @Test
    void lastsAsLongAsItIsFixedOrAsThePacksLetItStretch() {
        PowerEnergy energy = energy();
        Double whole = energy.endurance().minutes();
        assertThat(whole).isNotNull();
        assertThat(energy.phases().get(0).minutes()).isEqualTo(6.0);
        assertThat(energy.phases().get(1).minutes()).isCloseTo(whole - 6, within(1e-9));
    }

    @Test
    void isOneForAllTheTimeWithoutPhases() {
        Build build =
                Flights.onePack(Flights.pack("one", 5000.0), List.of(), Flights.load("board", "main", 0.5, Map.of()));
        PowerEnergy energy = PowerEnergy.of(PowerNetwork.of(build));
        assertThat(energy.phases()).hasSize(1);
        assertThat(energy.phases().get(0).occasion().name()).isEqualTo("all the time");
        assertThat(rail(energy.phases().get(0), "main").meanA()).isCloseTo(0.5, within(1e-9));
    }

    private static EnergyShare rail(PhaseEnergy phase, String code) {
        return phase.rails().stream()
                .filter(share -> share.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private static PowerEnergy energy() {
        return PowerEnergy.of(PowerNetwork.of(build()));
    }

    private static Build build() {
        Power power = Flights.power(
                List.of(Flights.pack("one", 5000.0)),
                List.of(Flights.rail("main"), Flights.rail("five")),
                List.of(Flights.feed("one", "main"), Flights.feed("main", "five", REGULATOR)));
        return Flights.build(
                power,
                List.of(Flights.fixed("climb", 6.0), Flights.stretching("cruise")),
                Flights.load("motor", "main", 10.0, Map.of("cruise", 0.2)),
                Flights.load("board", "five", 0.5, Map.of("climb", 0.5)));
    }
}
