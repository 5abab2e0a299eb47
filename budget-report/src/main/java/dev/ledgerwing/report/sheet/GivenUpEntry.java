package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.List;
import java.util.stream.Collectors;

/** A combination of states that the team has given up: what, in which phases, who and why. */
public record GivenUpEntry(String what, String phases, String by, String why) {

    static List<GivenUpEntry> of(Build build) {
        return build.radio().notNeeded().stream()
                .map(given -> new GivenUpEntry(
                        given.states().stream()
                                .map(each -> name(build, each.function()) + " " + each.state())
                                .collect(Collectors.joining(" with ")),
                        given.phases().isEmpty() ? "in every phase" : phases(build, given.phases()),
                        given.by(),
                        given.why()))
                .toList();
    }

    private static String name(Build build, String code) {
        return build.radio().functions().stream()
                .filter(function -> function.code().equals(code))
                .map(RadioFunction::name)
                .findFirst()
                .orElse(code);
    }

    private static String phases(Build build, List<String> codes) {
        return build.phases().stream()
                .filter(phase -> codes.contains(phase.code()))
                .map(Phase::name)
                .collect(Collectors.joining(", "));
    }
}
