package dev.ledgerwing.web.outputs;

import dev.ledgerwing.web.forms.Entries;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The numbers of outputs as people write them: {@code 1-4, 6}. */
final class OutputNumbers {

    private static final Pattern SOME = Pattern.compile("(\\d{1,9})(?:\\s*(?:[-–−]|to)\\s*(\\d{1,9}))?");
    private static final String EXPECTED =
            "Please write the numbers as they are printed on the board, with commas: 1-4, 6.";

    private OutputNumbers() {}

    /** Writes three or more in a row as their first and last one. */
    static String text(List<Integer> numbers) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < numbers.size(); ) {
            int last = i;
            while (last + 1 < numbers.size() && numbers.get(last + 1) == numbers.get(last) + 1) {
                last++;
            }
            if (last - i >= 2) {
                texts.add(numbers.get(i) + "-" + numbers.get(last));
                i = last + 1;
            } else {
                texts.add(Integer.toString(numbers.get(i)));
                i++;
            }
        }
        return String.join(", ", texts);
    }

    /** Reads them in their order, with a sentence at the field where that cannot be. */
    static List<Integer> read(String field, Entries entries) {
        String text = entries.typed().text(field);
        List<Integer> numbers = new ArrayList<>();
        for (String part : text.split("[,;]", -1)) {
            Matcher some = SOME.matcher(part.strip());
            if (!some.matches()) {
                entries.trouble(field, text.isEmpty() ? "Please give the numbers of its outputs: 1-4, 6." : EXPECTED);
                return List.of();
            }
            int first = Integer.parseInt(some.group(1));
            int last = some.group(2) == null ? first : Integer.parseInt(some.group(2));
            String wrong = wrong(first, last, numbers.size());
            if (!wrong.isEmpty()) {
                entries.trouble(field, wrong);
                return List.of();
            }
            for (int number = first; number <= last; number++) {
                numbers.add(number);
            }
        }
        sayTwice(field, numbers, entries);
        return numbers;
    }

    private static String wrong(int first, int last, int before) {
        if (Math.min(first, last) < 1 || Math.max(first, last) > OutputBounds.LARGEST_NUMBER) {
            return "The number of an output is from 1 to " + OutputBounds.LARGEST_NUMBER + ".";
        }
        if (last < first) {
            return "From " + first + " to " + last + " there is nothing: please write the smaller number first.";
        }
        return before + last - first + 1 > OutputBounds.MOST_IN_A_BANK
                ? "A bank has at most " + OutputBounds.MOST_IN_A_BANK + " outputs."
                : "";
    }

    private static void sayTwice(String field, List<Integer> numbers, Entries entries) {
        Set<Integer> met = new HashSet<>();
        numbers.stream()
                .filter(number -> !met.add(number))
                .findFirst()
                .ifPresent(number -> entries.trouble(field, "Output " + number + " stands here twice."));
    }
}
