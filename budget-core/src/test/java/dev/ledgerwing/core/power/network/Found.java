package dev.ledgerwing.core.power.network;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;

/** The findings of a network, by their rule. */
final class Found {

    private Found() {}

    static List<Finding> all(Build build) {
        return NetworkFindings.of(NetworkStatement.of(PowerNetwork.of(build)));
    }

    static List<Finding> of(String code, Build build) {
        return all(build).stream()
                .filter(finding -> finding.code().equals(code))
                .toList();
    }

    static Finding only(String code, Build build) {
        List<Finding> findings = of(code, build);
        assertThat(findings).as(code).hasSize(1);
        return findings.get(0);
    }

    static void none(String code, Build build) {
        assertThat(of(code, build)).as(code).isEmpty();
    }

    /** That there is one of this rule, with this verdict, and what it says. */
    static String said(String code, Verdict verdict, Build build) {
        Finding finding = only(code, build);
        assertThat(finding.verdict()).as(finding.sentence()).isEqualTo(verdict);
        return Said.sentence(finding);
    }
}
