package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import java.util.List;

/** One finding with what would put it right. */
public record FindingEntry(VerdictMark verdict, String sentence, List<String> remedies) {

    public FindingEntry {
        remedies = List.copyOf(remedies);
    }

    static FindingEntry of(Finding finding) {
        return new FindingEntry(
                VerdictMark.of(finding.verdict()),
                finding.sentence(),
                finding.remedies().stream().map(Remedy::sentence).toList());
    }
}
