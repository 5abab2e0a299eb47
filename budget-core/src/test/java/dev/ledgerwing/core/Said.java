package dev.ledgerwing.core;

import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import java.util.List;

/** What a finding says, with an ordinary space before each unit, so that a test can be read. */
public final class Said {

    private Said() {}

    public static String plain(String text) {
        return text.replace('\u2009', ' ');
    }

    public static String sentence(Finding finding) {
        return plain(finding.sentence());
    }

    public static List<Remedy> remedies(Finding finding) {
        return finding.remedies().stream()
                .map(remedy -> new Remedy(plain(remedy.sentence()), remedy.cost(), remedy.line()))
                .toList();
    }
}
