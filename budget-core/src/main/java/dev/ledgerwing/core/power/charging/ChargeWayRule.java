package dev.ledgerwing.core.power.charging;

import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Whether solar cells reach a pack at all: nothing is said where they do. */
record ChargeWayRule(PowerSource cells, List<ChargeWay> ways) {

    Stream<Finding> findings() {
        if (ways.isEmpty()) {
            return Stream.of(finding(
                    Verdict.TIGHT,
                    name() + " leads to no rail that a pack feeds: the sun charges nothing, and by itself it is not"
                            + " counted as a source."));
        }
        return ways.stream().anyMatch(ChargeWay::isOpen)
                ? Stream.empty()
                : ways.stream().map(this::blocked);
    }

    private Finding blocked(ChargeWay way) {
        FeedElement inTheWay = Objects.requireNonNull(way.inTheWay());
        String pack = PowerWords.quoted(way.battery().name());
        String element = PowerWords.quoted(inTheWay.name());
        if (inTheWay.kind() == Kind.DIODE) {
            return finding(
                    Verdict.TIGHT,
                    "The sun cannot reach " + pack + ": the diode " + element + " lies between it and " + name()
                            + " and lets current out of the pack only.");
        }
        return finding(
                Verdict.UNKNOWN,
                "What " + name() + " gives to " + pack + " is not known: " + element
                        + " lies between, and nothing here says what it lets through that way.");
    }

    private String name() {
        return PowerWords.quoted(cells.name());
    }

    private Finding finding(Verdict verdict, String sentence) {
        return ChargeAgainst.nothing(ChargingFindings.WAY, cells.name()).finding(verdict, sentence);
    }
}
