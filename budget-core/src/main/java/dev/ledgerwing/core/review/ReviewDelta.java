package dev.ledgerwing.core.review;

import dev.ledgerwing.core.verdict.Finding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What lies between two reviews.
 *
 * @param figures those that differ, in the order of the review
 * @param findings those that appeared, disappeared or changed their verdict, worst first
 * @param impact what a builder has to be told, in one to a few sentences
 */
public record ReviewDelta(List<FigureChange> figures, List<FindingChange> findings, List<ImpactPart> impact) {

    public ReviewDelta {
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
        impact = List.copyOf(impact);
    }

    /** From one review to another; sentences in the units of the later one. */
    public static ReviewDelta between(BuildReview before, BuildReview after) {
        List<FindingChange> findings = findings(before.findings(), after.findings());
        return new ReviewDelta(
                figures(before.figures(), after.figures()), findings, Impact.of(before, after, findings));
    }

    private static List<FigureChange> figures(Map<String, Double> before, Map<String, Double> after) {
        Set<String> names = new LinkedHashSet<>(after.keySet());
        names.addAll(before.keySet());
        return names.stream()
                .map(name -> new FigureChange(name, before.get(name), after.get(name)))
                .filter(change -> !Objects.equals(change.before(), change.after()))
                .toList();
    }

    /** What makes two findings the same one, before and after. */
    private record Key(String code, @Nullable String line, String subject) {

        /** A line keeps its id when it is renamed. */
        static Key of(Finding finding) {
            return new Key(finding.code(), finding.line(), finding.line() == null ? finding.subject() : "");
        }
    }

    private static List<FindingChange> findings(List<Finding> before, List<Finding> after) {
        Map<Key, Finding> gone = new LinkedHashMap<>();
        before.forEach(finding -> gone.put(Key.of(finding), finding));
        List<FindingChange> changes = new ArrayList<>();
        for (Finding now : after) {
            Finding then = gone.remove(Key.of(now));
            if (then == null || then.verdict() != now.verdict()) {
                changes.add(new FindingChange(then, now));
            }
        }
        gone.values().forEach(then -> changes.add(new FindingChange(then, null)));
        return changes;
    }
}
