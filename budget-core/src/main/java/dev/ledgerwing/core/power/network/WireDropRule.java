package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Whether the wires on the way to a rail lose no more of its voltage than the team allows. */
record WireDropRule(NetworkStatement statement) {

    static final String DROP = "power.wire-drop";

    Stream<Finding> findings() {
        return statement.rails().stream()
                .filter(RailState::isSolved)
                .map(this::of)
                .filter(Objects::nonNull);
    }

    private @Nullable Finding of(RailState rail) {
        Double percent = rail.wireDropPercent();
        double limit = statement.network().build().power().rules().dropLimitInForce();
        if (percent == null && rail.wireDropV() > 0) {
            return Against.nothing(DROP, rail.rail().name())
                    .finding(
                            Verdict.UNKNOWN,
                            PowerWords.quoted(rail.rail().name()) + " has no nominal voltage to hold the "
                                    + PowerWords.volts(rail.wireDropV()) + " against that its wires lose.");
        }
        return percent == null || percent <= limit + 1e-9
                ? null
                : Against.percent(DROP, rail.rail().name(), percent, limit)
                        .finding(
                                Verdict.BREAKS,
                                "The wires on the way to "
                                        + PowerWords.quoted(rail.rail().name()) + " lose "
                                        + PowerWords.volts(rail.wireDropV()) + ", " + Figures.percent(percent)
                                        + " of its voltage; no more than " + Figures.percent(limit) + " is allowed.",
                                "Thicker or shorter wires.");
    }
}
