package dev.ledgerwing.core.power.charging;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PowerSource;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Which solar cells charge which packs, by the way the feeds lie. */
public final class Charging {

    private final Map<PowerSource, List<ChargeWay>> byCells;

    private Charging(Map<PowerSource, List<ChargeWay>> byCells) {
        this.byCells = byCells;
    }

    public static Charging of(Build build) {
        Map<PowerSource, List<ChargeWay>> byCells = new LinkedHashMap<>();
        build.power().sources().stream()
                .filter(source -> source.kind() == PowerSource.Kind.SOLAR)
                .forEach(cells -> byCells.put(cells, SunWays.of(build.power(), cells)));
        return new Charging(byCells);
    }

    /** Every array with the ways from it, open ones and others. */
    Map<PowerSource, List<ChargeWay>> byCells() {
        return byCells;
    }

    /** The packs that any cells charge. */
    public List<PackCharge> packs() {
        return byCells.values().stream()
                .flatMap(List::stream)
                .filter(ChargeWay::isOpen)
                .collect(Collectors.groupingBy(ChargeWay::battery, LinkedHashMap::new, Collectors.toList()))
                .entrySet()
                .stream()
                .map(entry -> new PackCharge(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** The pack of this code, if any cells charge it. */
    public Optional<PackCharge> pack(String code) {
        return packs().stream()
                .filter(charge -> charge.battery().code().equals(code))
                .findFirst();
    }
}
