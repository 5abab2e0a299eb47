package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Mass;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A flight controller that is fitted or might be.
 *
 * @param serialPorts serial ports, {@code i2cBuses} and {@code canBuses} buses and {@code analogInputs} inputs that are
 *     free for other parts; null = not known
 * @param unitMass null = not known
 * @param typicalA typical and {@code peakA} peak current it draws; null = not known
 * @param outputA what the plugs of its outputs may carry together; null = not known
 */
public record Board(
        String code,
        String name,
        List<OutputBank> banks,
        @Nullable Integer serialPorts,
        @Nullable Integer i2cBuses,
        @Nullable Integer canBuses,
        @Nullable Integer analogInputs,
        @Nullable Mass unitMass,
        @Nullable Double typicalA,
        @Nullable Double peakA,
        @Nullable Double outputA)
        implements Element {

    public Board {
        banks = List.copyOf(banks);
        Check.slug("code", code);
        Check.name("name", name);
        ports("serialPorts", serialPorts);
        ports("i2cBuses", i2cBuses);
        ports("canBuses", canBuses);
        ports("analogInputs", analogInputs);
        Check.mass("unitMassG", unitMass);
        Check.within("typicalA", typicalA, 0, 1000, " A");
        Check.within("peakA", peakA, 0, 2000, " A");
        Check.within("outputA", outputA, 0.01, 1000, " A");
        Set<Integer> numbers = new HashSet<>();
        for (OutputBank bank : banks) {
            for (int number : bank.outputNumbers()) {
                Check.require(numbers.add(number), "banks: output " + number + " is in two banks");
            }
        }
    }

    private static void ports(String what, @Nullable Integer count) {
        if (count != null) {
            Check.within(what, count, 0, 100);
        }
    }

    @Override
    public String id() {
        return code;
    }

    /** How many outputs it has. */
    public int outputs() {
        return banks.stream().mapToInt(bank -> bank.outputNumbers().size()).sum();
    }
}
