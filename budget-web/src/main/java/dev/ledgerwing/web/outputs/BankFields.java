package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.build.OutputBank;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.QuantityText;
import dev.ledgerwing.core.quantity.Reading;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The rows of the banks of a board. */
final class BankFields {

    static final String LIST = "bank";

    private static final List<String> OF_A_BANK = List.of("name", "numbers", "rates");
    private static final int RATE_DIGITS = 4;
    private static final String RATES_EXPECTED =
            "Please write the rates in hertz, with commas between them: 50, 100, 333.";

    private BankFields() {}

    static void show(List<OutputBank> banks, Shown fields) {
        for (int i = 0; i < banks.size(); i++) {
            OutputBank bank = banks.get(i);
            String row = LIST + "." + i;
            fields.text(row + ".name", bank.name())
                    .text(row + ".numbers", OutputNumbers.text(bank.outputNumbers()))
                    .text(row + ".rates", rates(bank.ratesHz()));
            bank.pulses().forEach(kind -> fields.tick(pulse(row, kind), true));
        }
    }

    private static String rates(List<Double> ratesHz) {
        return ratesHz.stream().map(rate -> Figures.number(rate, RATE_DIGITS)).collect(Collectors.joining(", "));
    }

    private static String pulse(String row, PulseKind kind) {
        return row + ".pulse." + kind.name();
    }

    /** The banks as typed; fewer where something is wrong. */
    static List<OutputBank> banks(Entries entries) {
        List<OutputBank> banks = new ArrayList<>();
        Map<Integer, Integer> rowOf = new HashMap<>();
        for (int i = 0; i < entries.typed().rows(LIST); i++) {
            String row = LIST + "." + i;
            List<PulseKind> pulses = pulses(row, entries);
            if (!entries.typed().isBlank(row, OF_A_BANK) || !pulses.isEmpty()) {
                bank(i, pulses, rowOf, entries).ifPresent(banks::add);
            }
        }
        return banks;
    }

    private static Optional<OutputBank> bank(
            int index, List<PulseKind> pulses, Map<Integer, Integer> rowOf, Entries entries) {
        String row = LIST + "." + index;
        String name = entries.name(row + ".name", "Please name the bank, as the board does: A.");
        List<Integer> numbers = OutputNumbers.read(row + ".numbers", entries);
        sayInTwo(row + ".numbers", index, numbers, rowOf, entries);
        List<Double> ratesHz = rates(row + ".rates", entries);
        return entries.areFine() ? Optional.of(new OutputBank(name, numbers, ratesHz, pulses)) : Optional.empty();
    }

    /** @param rowOf the row that each number was met in, to which these are added */
    private static void sayInTwo(
            String field, int index, List<Integer> numbers, Map<Integer, Integer> rowOf, Entries entries) {
        for (int number : numbers) {
            Integer other = rowOf.putIfAbsent(number, index);
            if (other != null && other != index) {
                entries.trouble(field, "Output " + number + " is in bank " + (other + 1) + " already.");
                return;
            }
        }
    }

    private static List<PulseKind> pulses(String row, Entries entries) {
        return Arrays.stream(PulseKind.values())
                .filter(kind -> entries.typed().isTicked(pulse(row, kind)))
                .toList();
    }

    /** A comma parts two rates unless a semicolon does, so 50, 333 is two. */
    private static List<Double> rates(String field, Entries entries) {
        String text = entries.typed().text(field);
        if (text.isEmpty()) {
            return List.of();
        }
        List<Double> ratesHz = new ArrayList<>();
        for (String part : text.split(text.contains(";") ? ";" : ",", -1)) {
            Reading<Double> read = QuantityText.number(part.strip(), OutputBounds.RATE.unit());
            Double rateHz = read.found();
            if (rateHz == null) {
                entries.trouble(field, RATES_EXPECTED);
                return List.of();
            }
            if (!OutputBounds.RATE.hold(rateHz)) {
                entries.trouble(field, OutputBounds.RATE.sentence());
                return List.of();
            }
            if (!ratesHz.contains(rateHz)) {
                ratesHz.add(rateHz);
            }
        }
        return ratesHz;
    }
}
