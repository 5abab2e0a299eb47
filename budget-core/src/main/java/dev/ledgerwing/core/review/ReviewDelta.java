package dev.ledgerwing.core.review;

import dev.ledgerwing.core.verdict.Finding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
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
        Map<Key, List<Finding>> gone = new LinkedHashMap<>();
        before.forEach(finding ->
                gone.computeIfAbsent(Key.of(finding), key -> new ArrayList<>()).add(finding));
        List<Finding> changed = new ArrayList<>();
        for (Finding now : after) {
            if (take(gone, now, then -> then.verdict() == now.verdict()) == null) {
                changed.add(now);
            }
        }
        List<FindingChange> changes = new ArrayList<>();
        changed.forEach(now -> changes.add(new FindingChange(take(gone, now, then -> true), now)));
        gone.values().forEach(left -> left.forEach(then -> changes.add(new FindingChange(then, null))));
        return changes;
    }

    /** Several may have one key, such as those of two fuses of one name: what has not changed goes together first. */
    private static @Nullable Finding take(Map<Key, List<Finding>> gone, Finding now, Predicate<Finding> wanted) {
        List<Finding> left = gone.getOrDefault(Key.of(now), List.of());
        Finding then = left.stream().filter(wanted).findFirst().orElse(null);
        if (then != null) {
            left.remove(left.indexOf(then));
        }
        return then;
    }
}
