package dev.ledgerwing.core.power;

import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.SolarDay;
import dev.ledgerwing.core.power.energy.EnergyShare;
import dev.ledgerwing.core.power.energy.PhaseEnergy;
import dev.ledgerwing.core.power.energy.PowerEnergy;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.RailLoad;
import dev.ledgerwing.core.power.solar.DayBalance;
import dev.ledgerwing.core.power.solar.DayStore;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Puts together what the balance of a day needs: what is aboard in the phase flown all day, and what it draws from the packs. */
record FlownDay(
        NetworkStatement network, SolarDay day, @Nullable PhaseEnergy flown) {

    /** Empty where no day is looked at. */
    static Optional<DayBalance> of(NetworkStatement network, PowerEnergy energy) {
        SolarDay day = network.network().build().power().day();
        return day == null ? Optional.empty() : Optional.of(new FlownDay(network, day, flown(day, energy)).balance());
    }

    /** The phase that the day names, or else the one that stretches; without phases there is only all the time. */
    private static @Nullable PhaseEnergy flown(SolarDay day, PowerEnergy energy) {
        return energy.phases().stream()
                .filter(each -> isFlown(each.occasion().phase(), day.phase()))
                .findFirst()
                .orElse(null);
    }

    private static boolean isFlown(@Nullable Phase phase, @Nullable String named) {
        return phase == null || (named == null ? phase.stretch() : phase.code().equals(named));
    }

    private DayBalance balance() {
        List<PowerSource> aboard = network.network().sources().stream()
                .filter(source -> flown == null || flown.occasion().isAboard(source))
                .toList();
        return DayBalance.of(day, aboard, DayStore.of(aboard), consumptionW());
    }

    /** Null where a current is missing, where something hangs on no rail, and where a supply collapses. */
    private @Nullable Double consumptionW() {
        boolean isKnown = network.collapses().isEmpty()
                && network.network().loads().stream().allMatch(this::isKnown);
        if (flown == null || !isKnown) {
            return null;
        }
        return flown.sources().stream()
                .filter(this::isPack)
                .mapToDouble(EnergyShare::meanW)
                .sum();
    }

    private boolean isKnown(RailLoad load) {
        boolean runs = flown == null || flown.occasion().duty(load) > 0;
        return !runs || (load.rail() != null && load.typicalA() != null);
    }

    private boolean isPack(EnergyShare share) {
        return network.network()
                .source(share.code())
                .filter(source -> source.kind() == PowerSource.Kind.BATTERY)
                .isPresent();
    }
}
