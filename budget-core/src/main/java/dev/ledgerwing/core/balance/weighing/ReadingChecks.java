package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import dev.ledgerwing.core.build.Problem;
import dev.ledgerwing.core.build.WeighIn;
import dev.ledgerwing.core.build.WeighIn.Support;
import dev.ledgerwing.core.mass.ScaleError;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Finds readings that cannot be, each as a sentence with the place it is about. */
final class ReadingChecks {

    /** With less between the two weighings the height drowns in the readings. Ledgerwing's own choice. */
    static final double LEAST_TILT_DEG = 1;

    private final WeighIn weighIn;
    private final SupportPlan plan;
    private final Figures figures;
    private final List<Problem> problems = new ArrayList<>();

    private ReadingChecks(WeighIn weighIn, SupportPlan plan, Figures figures) {
        this.weighIn = weighIn;
        this.plan = plan;
        this.figures = figures;
    }

    static List<Problem> of(WeighIn weighIn, SupportPlan plan, Figures figures) {
        ReadingChecks checks = new ReadingChecks(weighIn, plan, figures);
        checks.supportsApart();
        checks.extraItems();
        checks.total();
        checks.tilt();
        return checks.problems;
    }

    private void supportsApart() {
        for (int i = 1; i < weighIn.supports().size(); i++) {
            for (int j = 0; j < i; j++) {
                if (plan.points().get(i).distanceMm(plan.points().get(j)) < SupportPlan.TOLERANCE_MM) {
                    add(
                            "supports[" + i + "].station",
                            "“" + support(i).name() + "” stands at the same point as “"
                                    + support(j).name() + "”");
                }
            }
        }
    }

    private void extraItems() {
        for (int i = 0; i < weighIn.extra().size(); i++) {
            ExtraItem item = weighIn.extra().get(i);
            String cannot = "“" + item.name() + "” does not belong and has no ";
            if (item.mass() == null) {
                add("extra[" + i + "].massG", cannot + "mass: it cannot be taken out");
            }
            if (item.station() == null && (plan.tellsX() || plan.tellsY())) {
                add("extra[" + i + "].station", cannot + "station: it cannot be taken out of the balance");
            }
        }
    }

    private void total() {
        Mass left = total(weighIn);
        if (left.mg() <= 0) {
            String on = weighIn.extra().isEmpty() ? "net of the tare " : "without what does not belong ";
            add("supports", on + figures.mass(left) + " is left on the scales: there is nothing to compare");
        }
    }

    /** Net of tare, without what does not belong; an extra item of unknown mass counts as nothing. */
    static Mass total(WeighIn weighIn) {
        Mass net = weighIn.supports().stream()
                .map(support -> support.reading().minus(support.tare()))
                .reduce(Mass.ZERO, Mass::plus);
        return weighIn.extra().stream()
                .map(ExtraItem::mass)
                .filter(Objects::nonNull)
                .reduce(net, Mass::minus);
    }

    private void tilt() {
        Double tilted = weighIn.tiltedNoseUpDeg();
        if (tilted == null) {
            return;
        }
        if (Math.abs(tilted - weighIn.noseUpDeg()) < LEAST_TILT_DEG) {
            add("tiltedNoseUpDeg", "the second weighing is tilted by less than 1 degree: that gives no height");
        }
        Mass off = weighIn.supports().stream()
                .map(support -> Objects.requireNonNull(support.tiltedReading()).minus(support.reading()))
                .reduce(Mass.ZERO, Mass::plus);
        // The tare is the same in both and cancels out; a reading is refused only where no honest one can be so far
        // off.
        ScaleError scale =
                new ScaleError(weighIn.scale().step(), weighIn.scale().maxError());
        double most = 2 * weighIn.supports().size() * scale.greatestG();
        if (Math.abs(off.grams()) > most) {
            add(
                    "supports",
                    "tilted, the readings add up to " + figures.signedMass(off)
                            + " against the first weighing: more than such scales can be off ("
                            + figures.mass(Mass.ofGrams(most)) + ")");
        }
    }

    private Support support(int index) {
        return weighIn.supports().get(index);
    }

    private void add(String place, String sentence) {
        problems.add(new Problem(place, sentence));
    }
}
