package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Optional;

/** What is missing for a band: without one no balance is judged, and none is ever made up. */
record LimitsRule(BalanceShape shape) {

    Optional<Finding> finding() {
        Geometry geometry = shape.geometry();
        if (geometry.balanceLimits() != null && shape.declared() == null) {
            return Optional.of(unknown(
                    "The balance limits are in per cent of the wing's chord, but "
                            + (geometry.wing() == null ? "no wing is drawn" : "the wing has no chord seen from above")
                            + ": they cannot be used.",
                    "Draw the wing, or enter the limits in millimetres."));
        }
        if (shape.band() != null) {
            return Optional.empty();
        }
        return Optional.of(geometry.staticMargin() == null ? noLimits() : noWing());
    }

    private Finding noLimits() {
        return unknown(
                "No balance limits are set: where it balances is held against nothing.",
                shape.wing() == null
                        ? "First enter the two limits that the plan gives in millimetres, or draw the wing and enter the static"
                                + " margin you want."
                        : "First enter the two limits that the plan gives, or the static margin you want.");
    }

    private static Finding noWing() {
        return unknown(
                "A static margin is wanted, but without a wing there is no neutral point to measure it from.",
                "Draw the wing, or enter the two limits that the plan gives in millimetres.");
    }

    private static Finding unknown(String sentence, String first) {
        return BalanceAgainst.nothing(BalanceFindings.NO_LIMITS, "Balance limits")
                .finding(Verdict.UNKNOWN, sentence, new Remedy(first, null, null));
    }
}
