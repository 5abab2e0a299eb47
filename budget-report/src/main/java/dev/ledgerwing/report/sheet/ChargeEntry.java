package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.power.charging.ChargeWay;
import dev.ledgerwing.core.power.charging.Charging;
import dev.ledgerwing.core.power.charging.PackCharge;
import dev.ledgerwing.core.power.network.PowerWords;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * A pack that solar cells charge, and what stops it.
 *
 * @param cells what charges it
 * @param stop functions of the radio that can stop it
 */
public record ChargeEntry(
        String pack, String cells, String most, String limit, String full, String cutOff, String stop) {

    static List<ChargeEntry> of(Charging charging, Build build) {
        return charging.packs().stream().map(charge -> of(charge, build)).toList();
    }

    private static ChargeEntry of(PackCharge charge, Build build) {
        List<String> stops = charge.ways().stream()
                .map(ChargeWay::array)
                .map(array -> array.stopFunction())
                .filter(Objects::nonNull)
                .flatMap(code -> name(build, code))
                .distinct()
                .toList();
        return new ChargeEntry(
                charge.battery().name(),
                PowerWords.names(
                        charge.ways().stream().map(way -> way.cells().name()).toList()),
                PowerSummary.orNotKnown(charge.worstA(), "A"),
                PowerSummary.orNotKnown(charge.pack().maxChargeA(), "A"),
                PowerWords.volts(charge.pack().fullV()),
                charge.hasCutOff() ? "by itself" : "none recorded",
                stops.isEmpty() ? "none" : PowerWords.names(stops));
    }

    private static Stream<String> name(Build build, String code) {
        return build.radio().functions().stream()
                .filter(function -> function.code().equals(code))
                .map(RadioFunction::name);
    }
}
