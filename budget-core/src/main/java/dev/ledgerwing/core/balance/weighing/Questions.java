package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.WeighIn.Support;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What looks as if a reading, a unit or a station were wrong. All thresholds are Ledgerwing's own choice. */
record Questions(WeighInReport report, ScalesAnswer answer, Build build, Figures figures) {

    /** A reading of this many times the ledger, or one part in as many, was likely typed in another unit. */
    private static final double FAR_OFF = 2;
    /** How far above or below the airframe's parts the CG may come out. */
    private static final double BEYOND_MM = 100;

    List<String> all() {
        List<String> questions = new ArrayList<>();
        farOff().ifPresent(questions::add);
        unloaded(questions);
        if (report.weighIn().extra().isEmpty()) {
            outside().ifPresent(questions::add);
        }
        height().ifPresent(questions::add);
        return questions;
    }

    private Optional<String> farOff() {
        Mass ledger = report.ledger().mass();
        if (ledger.mg() <= 0 || !report.ledger().withoutMass().isEmpty()) {
            return Optional.empty();
        }
        double ratio = answer.mass().grams() / ledger.grams();
        return ratio <= FAR_OFF && ratio >= 1 / FAR_OFF
                ? Optional.empty()
                : Optional.of("The scales say " + figures.mass(answer.mass()) + ", the ledger " + figures.mass(ledger)
                        + ": is every reading in the right unit, and was all of it aboard?");
    }

    private void unloaded(List<String> questions) {
        List<Support> supports = report.weighIn().supports();
        supports.stream()
                .filter(support -> support.reading().equals(support.tare()))
                .forEach(support -> questions.add("“" + support.name() + "” carries nothing: did it touch the scale?"));
    }

    /** By the ledger it would have tipped over. */
    private Optional<String> outside() {
        JointMass ledger = report.ledger().joint();
        SupportPlan plan = ScalesReading.plan(report.weighIn());
        if (plan.points().size() < 2) {
            return Optional.empty();
        }
        return ledger.centre(Axis.X)
                .flatMap(
                        x -> ledger.centre(Axis.Y)
                                .filter(y -> !plan.carries(
                                        new SupportPlan.Point(x.mm(), y.mm()),
                                        2 * Math.hypot(x.uncertaintyMm(), y.uncertaintyMm())))
                                .map(
                                        y -> "By the ledger the CG lies at x = " + figures.length(x.length()) + ", y = "
                                                + figures.length(y.length())
                                                + ", outside the supports: it would have tipped over. Are the stations of supports and parts right?"));
    }

    private Optional<String> height() {
        return answer.joint()
                .centre(Axis.Z)
                .flatMap(z -> AirframeExtent.of(build)
                        .along(Axis.Z)
                        .filter(range ->
                                !range.reaches(z.mm(), Math.max(BEYOND_MM, range.lengthMm()) + 2 * z.uncertaintyMm()))
                        .map(range -> "The tilted readings put the CG at z = " + figures.length(z.length())
                                + ", the parts lie from " + figures.length(Length.ofMm(range.fromMm())) + " to "
                                + figures.length(Length.ofMm(range.toMm()))
                                + ": are the angle and the tilted readings right?"));
    }
}
