package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.stream.Stream;

/** Surfaces of which nothing is seen from above: all their panels stand upright. */
record SurfaceRule(BalanceShape shape) {

    Stream<Finding> findings() {
        Geometry geometry = shape.geometry();
        return Stream.concat(
                geometry.wing() != null && shape.wing() == null
                        ? Stream.of(upright("Wing", "so it has no mean chord to measure by"))
                        : Stream.empty(),
                geometry.tail() != null && shape.tail() == null
                        ? Stream.of(upright(
                                "Stabiliser", "so it does nothing in pitch and the neutral point counts without it"))
                        : Stream.empty());
    }

    private static Finding upright(String subject, String consequence) {
        return BalanceAgainst.nothing("balance.no-area", subject)
                .finding(
                        Verdict.UNKNOWN,
                        "All panels of the " + (subject.equals("Wing") ? "wing" : "stabiliser") + " stand upright, "
                                + consequence + ". Is their dihedral right?");
    }
}
