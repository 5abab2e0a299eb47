package dev.ledgerwing.report.cli;

import java.util.List;

/** Why something a person gave cannot be used, one line for each problem. */
final class Unusable extends Exception {

    private static final long serialVersionUID = 1;

    private final transient List<String> problems;

    Unusable(List<String> problems) {
        super(String.join("; ", problems));
        this.problems = List.copyOf(problems);
    }

    Unusable(String problem) {
        this(List.of(problem));
    }

    List<String> problems() {
        return problems;
    }
}
