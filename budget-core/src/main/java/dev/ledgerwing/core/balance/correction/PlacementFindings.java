package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Whether parts sit where bays and rules to keep apart let them, in every flight case; one finding for each rule to keep apart, and one
 * for each part that a bay holds. A part that is in no flight case breaks no rule. Distances are held against as they are drawn; how
 * surely a station is known takes no part.
 */
public final class PlacementFindings {

    public static final String BAY = "balance.bay";
    public static final String APART = "balance.apart";

    private final Figures figures;

    private PlacementFindings(Figures figures) {
        this.figures = figures;
    }

    /** Sentences in the units of {@code figures}. */
    public static List<Finding> of(Build build, Figures figures) {
        List<PlacementCheck> checks = PlacementRules.of(build).checks().stream()
                .filter(check -> !check.cases().isEmpty())
                .toList();
        PlacementFindings findings = new PlacementFindings(figures);
        return Stream.concat(
                        worstBayOfEachPart(checks).stream().map(findings::bay),
                        checks.stream().filter(check -> check.bay() == null).map(findings::apart))
                .toList();
    }

    /** A part that two bays hold is spoken of once. */
    private static List<PlacementCheck> worstBayOfEachPart(List<PlacementCheck> checks) {
        Map<String, PlacementCheck> worst = new LinkedHashMap<>();
        checks.stream()
                .filter(check -> check.bay() != null)
                .forEach(check -> worst.merge(check.parts().get(0).id(), check, PlacementFindings::worse));
        return new ArrayList<>(worst.values());
    }

    private static PlacementCheck worse(PlacementCheck one, PlacementCheck other) {
        return Comparator.comparing(PlacementFindings::verdict)
                                .thenComparing(Comparator.comparingDouble(PlacementCheck::leftMm)
                                        .reversed())
                                .compare(one, other)
                        >= 0
                ? one
                : other;
    }

    private static Verdict verdict(PlacementCheck check) {
        if (check.isBroken()) {
            return Verdict.BREAKS;
        }
        return check.isKnown() ? Verdict.HOLDS : Verdict.UNKNOWN;
    }

    private Finding bay(PlacementCheck check) {
        Verdict verdict = verdict(check);
        String part = "“" + check.subject() + "”";
        String bay = "“" + check.bay() + "”";
        String sentence = switch (verdict) {
            case BREAKS -> part + " sticks " + length(-check.leftMm()) + " out of " + bay + where(check) + ".";
            case HOLDS, TIGHT ->
                part + " stays inside " + bay + ", " + length(check.leftMm()) + " clear of its walls" + where(check)
                        + ".";
            case UNKNOWN ->
                "Whether " + part + " stays inside " + bay + " is not known: enter "
                        + (check.isSized() ? "where it sits" + unplaced(check) : "its size") + ".";
        };
        return finding(BAY, verdict, check, sentence);
    }

    private Finding apart(PlacementCheck check) {
        Verdict verdict = verdict(check);
        String both = "“" + check.parts().get(0).name() + "” and “"
                + check.parts().get(1).name() + "”";
        String wanted = length(check.wantedMm()) + " at least";
        String sentence = switch (verdict) {
            case BREAKS, HOLDS, TIGHT ->
                both + " are " + length(check.leastMm()) + " apart" + measuredBetween(check) + where(check)
                        + ", wanted are " + wanted + ".";
            case UNKNOWN ->
                "How far apart " + both + " are is not known: enter where they sit" + unplaced(check) + ". Wanted are "
                        + wanted + ".";
        };
        return finding(APART, verdict, check, sentence);
    }

    private static String measuredBetween(PlacementCheck check) {
        return check.isSized() ? "" : " between their stations";
    }

    private static String where(PlacementCheck check) {
        return check.dependsOnCase()
                ? check.worst().map(worst -> " in “" + worst.loadCase() + "”").orElse("")
                : "";
    }

    /** The first case it is not known in, where it is known in another. */
    private static String unplaced(PlacementCheck check) {
        return !check.dependsOnCase()
                ? ""
                : check.cases().stream()
                        .filter(each -> each.measuredMm() == null)
                        .findFirst()
                        .map(each -> " in “" + each.loadCase() + "”")
                        .orElse("");
    }

    private static Finding finding(String code, Verdict verdict, PlacementCheck check, String sentence) {
        boolean measured = check.worst().isPresent();
        PartLine part = check.parts().get(0);
        return new Finding(
                code,
                Budget.BALANCE,
                verdict,
                check.subject(),
                check.bay() == null ? null : part.id(),
                measured ? check.leastMm() : null,
                check.wantedMm(),
                measured ? check.leftMm() : null,
                "mm",
                sentence,
                List.of());
    }

    private String length(double mm) {
        return figures.length(Length.ofMm(Math.min(mm, LARGEST_MM)));
    }

    /** More than any two stations can lie apart. */
    private static final double LARGEST_MM = 1e6;
}
