package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.RadioFunction;
import java.util.List;

/** Names in a row, as people write them. */
final class Names {

    private Names() {}

    static String of(List<RadioFunction> functions) {
        return joined(functions.stream().map(RadioFunction::name).toList());
    }

    static String joined(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    /** Clauses hold commas and words like “and” of their own, so each is set apart by a comma. */
    static String clauses(List<String> clauses) {
        int last = clauses.size() - 1;
        return last < 1
                ? String.join("", clauses)
                : String.join(", ", clauses.subList(0, last)) + ", and " + clauses.get(last);
    }

    static String either(List<String> names) {
        int last = names.size() - 1;
        return last < 1 ? String.join("", names) : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }

    /** “1 channel”, “2 channels”. */
    static String count(int number, String one) {
        String more = one.endsWith("ch") ? one + "es" : one + "s";
        return number + " " + (number == 1 ? one : more);
    }
}
