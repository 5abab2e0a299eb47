package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** How functions, states and phases are named in sentences. */
record RadioWords(Build build) {

    private static final int MOST_NAMED = 3;

    static String quoted(String name) {
        return "“" + name + "”";
    }

    /** The name a function has, in quotes. */
    String function(String code) {
        return quoted(name(code));
    }

    /** {@code Landing gear down}. */
    String state(FunctionState state) {
        return name(state.function()) + " " + state.state();
    }

    String name(String code) {
        return build.radio().functions().stream()
                .filter(function -> function.code().equals(code))
                .map(RadioFunction::name)
                .findFirst()
                .orElse(code);
    }

    /** {@code Climb and Cruise}, or {@code every phase} where these are all there are. */
    String phases(List<String> codes) {
        List<Phase> all = build.phases();
        if (all.size() > 1 && codes.size() == all.size()) {
            return "every phase";
        }
        return and(all.stream()
                .filter(phase -> codes.contains(phase.code()))
                .map(Phase::name)
                .toList());
    }

    /** {@code “A”, “B”, “C” and 4 more}, in the order given. */
    static String named(Collection<RadioFunction> functions) {
        List<String> quoted =
                functions.stream().map(function -> quoted(function.name())).toList();
        int more = quoted.size() - MOST_NAMED;
        return more <= 1
                ? and(quoted)
                : quoted.stream().limit(MOST_NAMED).collect(Collectors.joining(", ")) + " and " + more + " more";
    }

    static String and(List<String> words) {
        return joined(words, " and ");
    }

    static String or(List<String> words) {
        return joined(words, " or ");
    }

    private static String joined(List<String> words, String last) {
        int end = words.size() - 1;
        return end < 1 ? String.join("", words) : String.join(", ", words.subList(0, end)) + last + words.get(end);
    }

    /** {@code 1 channel}, {@code 7 channels}. */
    static String channels(int count) {
        return count == 1 ? "1 channel" : count + " channels";
    }
}
