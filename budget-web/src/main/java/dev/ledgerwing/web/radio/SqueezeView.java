package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.radio.explain.Explanation;
import dev.ledgerwing.core.radio.explain.Reason;
import dev.ledgerwing.core.radio.explain.Relaxation;
import dev.ledgerwing.core.radio.explain.Relaxations;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.List;
import java.util.Objects;

/**
 * Why it does not fit, and what would make it fit.
 *
 * @param because the smallest explanation: without any one of it everything would fit
 * @param undecided it is not known of every concession whether it is enough
 */
record SqueezeView(List<String> because, List<Way> ways, boolean undecided) {

    /**
     * A single concession that is enough.
     *
     * @param key what it is asked for by
     * @param loses what the pilot cannot do any more
     * @param caution what has to be proven before; empty = nothing more
     */
    record Way(String key, String what, String loses, String caution, String button) {}

    /** Those after which the flight still hangs on the radio alone. */
    public List<Way> usual() {
        return ways.stream().filter(way -> way.caution().isEmpty()).toList();
    }

    /** Those that need proof of another path first. */
    public List<Way> grave() {
        return ways.stream().filter(way -> !way.caution().isEmpty()).toList();
    }

    /** Whether a concession is among the grave ones. */
    public boolean isGrave(String key) {
        return grave().stream().anyMatch(way -> way.key().equals(key));
    }

    static SqueezeView of(Build build) {
        ChannelProblem problem = ChannelProblem.of(build);
        Relaxations relaxations = Relaxations.of(problem);
        return new SqueezeView(
                Explanation.of(problem).reasons().stream().map(Reason::sentence).toList(),
                relaxations.all().stream().map(SqueezeView::way).toList(),
                relaxations.undecided());
    }

    private static Way way(Relaxation relaxation) {
        return new Way(
                relaxation.key(),
                relaxation.what(),
                relaxation.loses(),
                Objects.requireNonNullElse(relaxation.caution(), ""),
                relaxation.kind() == Relaxation.Kind.GIVE_UP ? "Give this up" : "Record this");
    }
}
