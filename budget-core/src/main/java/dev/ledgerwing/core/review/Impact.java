package dev.ledgerwing.core.review;

import dev.ledgerwing.core.mass.MassMargin;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;

/** Says in a few words what a change does to the budgets. */
final class Impact {

    private static final String TARGET = "mass.target";
    private static final int MOST_SPELT_OUT = 3;

    private final BuildReview before;
    private final BuildReview after;
    private final Figures units;

    private Impact(BuildReview before, BuildReview after) {
        this.before = before;
        this.after = after;
        this.units = after.units();
    }

    /** The mass against its target first, then the CG of the design case, the heaviest loaded rail, the channels and connections needed, what else got worse, and how much was put right. */
    static List<ImpactPart> of(BuildReview before, BuildReview after, List<FindingChange> changes) {
        List<FindingChange> others = changes.stream()
                .filter(change -> !isSaid(change.finding(), before, after))
                .toList();
        List<ImpactPart> parts = new ArrayList<>();
        parts.add(new Impact(before, after).mass());
        BalanceImpact.of(before, after).ifPresent(parts::add);
        PowerImpact.of(before, after).ifPresent(parts::add);
        RadioImpact.of(before, after).ifPresent(parts::add);
        OutputImpact.of(before, after).ifPresent(parts::add);
        parts.addAll(worse(others));
        long better = others.stream().filter(FindingChange::isBetter).count();
        if (better > 0) {
            parts.add(new ImpactPart(
                    better == 1 ? "One finding is put right." : better + " findings are put right.", null));
        }
        return parts;
    }

    /** Whether one of the first sentences speaks of it already. */
    private static boolean isSaid(Finding finding, BuildReview before, BuildReview after) {
        return finding.code().equals(TARGET)
                || BalanceImpact.speaksOf(finding, after)
                || RadioImpact.speaksOf(finding, before, after)
                || OutputImpact.speaksOf(finding, before, after);
    }

    private static List<ImpactPart> worse(List<FindingChange> changes) {
        List<Finding> worse = changes.stream()
                .filter(FindingChange::isWorse)
                .map(FindingChange::finding)
                .toList();
        List<ImpactPart> parts = new ArrayList<>();
        worse.stream()
                .limit(MOST_SPELT_OUT)
                .forEach(finding -> parts.add(new ImpactPart(finding.sentence(), finding.verdict())));
        if (worse.size() > MOST_SPELT_OUT) {
            List<Finding> rest = worse.subList(MOST_SPELT_OUT, worse.size());
            Verdict worst = Verdict.worst(rest.stream().map(Finding::verdict).toList());
            parts.add(new ImpactPart(
                    rest.size() == 1 ? "And one more finding." : "And " + rest.size() + " more findings.", worst));
        }
        return parts;
    }

    /** {@code +48 g, predicted 6912 g: breaks the target by 112 g.} */
    private ImpactPart mass() {
        Mass predicted = after.mass().predicted();
        Mass change = predicted.minus(before.mass().predicted());
        String moved = change.mg() == 0 ? "Mass unchanged" : units.signedMass(change) + withGrowth();
        Verdict verdict = after.finding(TARGET).map(Finding::verdict).orElse(Verdict.UNKNOWN);
        String judged =
                after.mass().margin().map(margin -> judged(verdict, margin)).orElse("no target is set");
        return new ImpactPart(moved + ", predicted " + units.mass(predicted) + ": " + judged + ".", verdict);
    }

    /** A part of 300 g that moves the predicted mass by 330 g wants a word of explanation. */
    private String withGrowth() {
        boolean bothMoved = !after.mass().growth().equals(before.mass().growth())
                && !after.mass().basic().equals(before.mass().basic());
        return bothMoved ? " with growth" : "";
    }

    private String judged(Verdict verdict, MassMargin margin) {
        return switch (verdict) {
            case BREAKS ->
                "breaks the target by " + units.mass(margin.predicted().minus(margin.target()));
            case UNKNOWN -> units.mass(margin.mass()) + " to the target, but not every mass is known";
            case TIGHT -> tight(margin);
            case HOLDS -> "holds the target with " + units.mass(margin.mass()) + " to spare";
        };
    }

    private String tight(MassMargin margin) {
        String left = "inside the target by " + units.mass(margin.mass());
        return margin.isShort()
                ? left + ", reserve wanted " + units.mass(margin.reserve())
                : left + ", less than twice its uncertainty";
    }
}
