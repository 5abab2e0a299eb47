package dev.ledgerwing.core.power.solar;

import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.core.build.SolarDay;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a day's balance is made from.
 *
 * @param cells the sources that are solar cells
 * @param consumptionW what is drawn from the packs; null = not known
 */
record DayInputs(
        List<PowerSource> cells, DayStore store, @Nullable Double consumptionW) {

    DayInputs {
        cells = cells.stream()
                .filter(source -> source.kind() == PowerSource.Kind.SOLAR)
                .toList();
    }

    /** Null where anything is missing of any cells. */
    @Nullable
    DayHarvest harvest(SolarDay day) {
        List<DayHarvest.Field> fields = new ArrayList<>();
        for (PowerSource source : cells) {
            SolarArray array = source.array();
            CellOutput output = array == null ? null : CellOutput.of(array, store.nominalV());
            if (array == null || output == null) {
                return null;
            }
            fields.add(new DayHarvest.Field(array, output));
        }
        return fields.isEmpty() ? null : new DayHarvest(day, fields);
    }

    /** Everything that would have to be known. */
    List<String> missing() {
        List<String> missing = new ArrayList<>();
        if (cells.isEmpty()) {
            missing.add("cells that charge a pack");
        }
        cells.forEach(each -> missing.addAll(new CellGaps(each).words()));
        boolean isTied = cells.stream().flatMap(DayInputs::array).anyMatch(DayInputs::isTied);
        require(missing, isTied ? store.nominalV() : Double.valueOf(0), "the voltage of the packs");
        require(missing, store.capacityWh(), "the capacity of the packs");
        require(missing, store.usablePercent(), "how much of the packs may be used");
        require(missing, consumptionW, "what is drawn from the packs");
        return missing;
    }

    private static Stream<SolarArray> array(PowerSource source) {
        return Stream.ofNullable(source.array());
    }

    private static boolean isTied(SolarArray array) {
        return array.connection() == SolarArray.Connection.DIRECT;
    }

    private static void require(List<String> missing, @Nullable Double value, String what) {
        if (value == null) {
            missing.add(what);
        }
    }
}
