package dev.ledgerwing.core.build;

import java.util.List;
import java.util.stream.Collectors;

/** A record whose parts do not fit together, with everything that is wrong with it. */
public final class InvalidBuild extends IllegalArgumentException {

    private static final long serialVersionUID = 1;

    private final transient List<Problem> problems;

    InvalidBuild(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("; ")));
        this.problems = List.copyOf(problems);
    }

    public List<Problem> problems() {
        return problems;
    }
}
