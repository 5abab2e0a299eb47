package dev.ledgerwing.core.power;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.build.SolarDay;
import dev.ledgerwing.core.power.charging.ChargeWay;
import dev.ledgerwing.core.power.charging.Charging;
import dev.ledgerwing.core.power.charging.PackCharge;
import dev.ledgerwing.core.power.energy.EnergyShare;
import dev.ledgerwing.core.power.energy.PhaseEnergy;
import dev.ledgerwing.core.power.energy.PowerEnergy;
import dev.ledgerwing.core.power.failure.Failure;
import dev.ledgerwing.core.power.failure.FailureTable;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.RailLoad;
import dev.ledgerwing.core.power.solar.DayBalance;
import dev.ledgerwing.core.power.solar.DayStore;
import dev.ledgerwing.core.power.solar.UnchargedPack;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Puts together what the balance of a day needs: what is aboard in the phase flown all day, and what it draws from the packs. */
record FlownDay(
        NetworkStatement network,
        FailureTable failures,
        Charging charging,
        SolarDay day,
        @Nullable PhaseEnergy flown) {

    /** Empty where no day is looked at. */
    static Optional<DayBalance> of(
            NetworkStatement network, FailureTable failures, Charging charging, PowerEnergy energy) {
        SolarDay day = network.network().build().power().day();
        return day == null
                ? Optional.empty()
                : Optional.of(new FlownDay(network, failures, charging, day, flown(day, energy)).balance());
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

    /** Only the packs that the cells charge count; what is drawn from the others is taken from these too, as if they stood in. */
    private DayBalance balance() {
        List<PackCharge> charged = charging.packs().stream()
                .filter(each -> isAboard(each.battery()))
                .toList();
        List<PowerSource> packs = charged.stream().map(PackCharge::battery).toList();
        List<PowerSource> cells = charged.stream()
                .flatMap(each -> each.ways().stream())
                .map(ChargeWay::cells)
                .filter(this::isAboard)
                .distinct()
                .toList();
        return DayBalance.of(day, cells, DayStore.of(packs), consumptionW()).beside(uncharged(packs));
    }

    private boolean isAboard(PowerSource source) {
        return flown == null || flown.occasion().isAboard(source);
    }

    private List<UnchargedPack> uncharged(List<PowerSource> charged) {
        List<EnergyShare> shares = flown == null ? List.of() : flown.sources();
        return shares.stream()
                .filter(share -> share.meanW() > 0 && isAlone(share.code()))
                .flatMap(share -> network.network().source(share.code()).stream()
                        .filter(source -> source.kind() == PowerSource.Kind.BATTERY && !charged.contains(source))
                        .map(source -> uncharged(source, share.meanW())))
                .filter(pack -> pack.lowHour() == null || pack.lowHour() < day.startHour() + 24)
                .toList();
    }

    /** Whether something goes dark without it. */
    private boolean isAlone(String source) {
        return failures.of(Failure.Kind.SOURCE_OUT, source)
                .filter(row -> !row.loads().isEmpty())
                .isPresent();
    }

    private UnchargedPack uncharged(PowerSource source, double meanW) {
        DayStore store = DayStore.of(List.of(source));
        Double capacityWh = store.capacityWh();
        Double usablePercent = store.usablePercent();
        if (capacityWh == null || usablePercent == null) {
            return new UnchargedPack(source.name(), null);
        }
        double freePercent = Math.max(0, day.startPercent() - (100 - usablePercent));
        return new UnchargedPack(source.name(), day.startHour() + capacityWh * freePercent / 100 / meanW);
    }

    /**
     * Null where a current or an efficiency is missing, where something hangs on no rail or on one that is not fed, and where a supply
     * collapses.
     */
    private @Nullable Double consumptionW() {
        boolean isKnown = network.collapses().isEmpty()
                && network.network().loads().stream().allMatch(this::isKnown)
                && network.network().feeds().stream().noneMatch(FlownDay::lacksEfficiency);
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
        return !runs || (load.typicalA() != null && !load.lacksNominalV() && isFed(load.rail()));
    }

    /** What is dark draws nothing: the packs would seem to last. */
    private boolean isFed(@Nullable Rail rail) {
        return rail != null
                && network.rail(rail.code())
                        .filter(state -> state.isSolved() && state.isFed())
                        .isPresent();
    }

    private static boolean lacksEfficiency(Feed feed) {
        return feed.elements().stream()
                .map(FeedElement::regulator)
                .filter(Objects::nonNull)
                .anyMatch(each -> each.type() == Regulator.Type.SWITCHING && each.efficiencyPercent() == null);
    }

    private boolean isPack(EnergyShare share) {
        return network.network()
                .source(share.code())
                .filter(source -> source.kind() == PowerSource.Kind.BATTERY)
                .isPresent();
    }
}
