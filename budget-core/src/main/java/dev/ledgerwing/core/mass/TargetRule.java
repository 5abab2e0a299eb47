package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether the predicted mass stays within the target with the reserve of the stage. Without a target, without anything aboard, or with a
 * part aboard whose mass nobody knows, that is not known, unless what is known breaks it already.
 */
record TargetRule(MassStatement statement, MassForecast forecast, Figures figures) {

    static final String CODE = "mass.target";
    private static final String SUBJECT = "Target mass";

    Finding finding() {
        return statement.margin().map(this::against).orElseGet(this::withoutTarget);
    }

    private Finding withoutTarget() {
        String sentence =
                "No target is set: predicted " + figures.mass(statement.predicted()) + " is held against nothing.";
        return new MassAgainst(CODE, SUBJECT, null, statement.predicted(), null)
                .finding(Verdict.UNKNOWN, sentence, List.of(new Remedy("Set a target mass.", null, null)));
    }

    private Finding against(MassMargin margin) {
        Verdict verdict = verdict(margin);
        return new MassAgainst(CODE, SUBJECT, null, margin.predicted(), margin.target())
                .finding(verdict, sentence(verdict, margin), remedies(verdict, margin));
    }

    private Verdict verdict(MassMargin margin) {
        if (margin.isBroken()) {
            return Verdict.BREAKS;
        }
        if (!forecast.isComplete()) {
            return Verdict.UNKNOWN;
        }
        return margin.isShort() || isWithinUncertainty(margin) ? Verdict.TIGHT : Verdict.HOLDS;
    }

    private boolean isWithinUncertainty(MassMargin margin) {
        return margin.mass().grams() < 2 * forecast.standardUncertaintyG();
    }

    private String sentence(Verdict verdict, MassMargin margin) {
        String predicted = "Predicted " + figures.mass(margin.predicted());
        String target = "the target of " + figures.mass(margin.target());
        String left = figures.mass(margin.mass());
        return switch (verdict) {
            case BREAKS ->
                predicted + " breaks " + target + " by "
                        + figures.mass(margin.predicted().minus(margin.target())) + "." + onTop();
            case UNKNOWN ->
                statement.rows().isEmpty()
                        ? "Nothing is aboard yet: no mass can be held against " + target + "."
                        : predicted + " leaves " + left + " to " + target + "." + onTop();
            case TIGHT -> predicted + " leaves " + left + " to " + target + reserve(margin) + uncertainty(margin) + ".";
            case HOLDS ->
                predicted + " holds " + target + " with " + left + " to spare ("
                        + Figures.percent(
                                100.0 * margin.mass().mg() / margin.target().mg()) + " of target).";
        };
    }

    private String onTop() {
        int unknown = statement.total().unknown();
        return switch (unknown) {
            case 0 -> "";
            case 1 -> " One part without a mass comes on top.";
            default -> " " + unknown + " parts without a mass come on top.";
        };
    }

    private String reserve(MassMargin margin) {
        if (!margin.isShort()) {
            return "";
        }
        return ", short of the wanted reserve of " + figures.mass(margin.reserve()) + " ("
                + Figures.percent(margin.reservePercent()) + " of target)";
    }

    private String uncertainty(MassMargin margin) {
        if (!isWithinUncertainty(margin)) {
            return "";
        }
        return ", less than twice its standard uncertainty of " + figures.roughMass(forecast.standardUncertainty());
    }

    private List<Remedy> remedies(Verdict verdict, MassMargin margin) {
        MassRemedies remedies = new MassRemedies(statement.rows(), forecast.weighNext(), figures);
        return switch (verdict) {
            case BREAKS -> remedies.toSave(margin.predicted().minus(margin.target()));
            case TIGHT -> loosen(margin, remedies);
            case UNKNOWN, HOLDS -> List.of();
        };
    }

    private List<Remedy> loosen(MassMargin margin, MassRemedies remedies) {
        List<Remedy> all = new ArrayList<>();
        if (margin.isShort()) {
            all.addAll(remedies.toSave(margin.reserve().minus(margin.mass())));
        }
        if (isWithinUncertainty(margin)) {
            all.addAll(remedies.toNarrow());
        }
        return all;
    }
}
