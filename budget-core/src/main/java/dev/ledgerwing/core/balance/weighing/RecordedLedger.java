package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.WeighIn;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the ledger says today of what stood on the scales at a recorded weigh-in. The record does not keep which load case that was: it is
 * the one whose stations give what the ledger said then, else the design case.
 */
record RecordedLedger(LedgerSide side, boolean revised) {

    static RecordedLedger of(Build build, WeighIn weighIn) {
        Set<String> aboard = new HashSet<>(weighIn.aboard());
        List<PartLine> lines = build.lines().stream()
                .filter(line -> aboard.contains(line.id()))
                .toList();
        return Stream.concat(Stream.of(build.designCase()), build.loadCases().stream())
                .map(loadCase -> of(build, loadCase, lines, weighIn))
                .filter(each -> !each.revised)
                .findFirst()
                .orElseGet(() -> of(build, build.designCase(), lines, weighIn));
    }

    private static RecordedLedger of(Build build, LoadCase loadCase, List<PartLine> lines, WeighIn weighIn) {
        LedgerSide side = LedgerSide.of(build, loadCase, lines, List.of());
        boolean same = side.mass().equals(weighIn.ledger().mass())
                && Objects.equals(side.moments(), weighIn.ledger().moments());
        return new RecordedLedger(side, !same);
    }
}
