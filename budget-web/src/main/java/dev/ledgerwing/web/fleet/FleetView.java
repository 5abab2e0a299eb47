package dev.ledgerwing.web.fleet;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.web.desk.AirframeHeadline;
import dev.ledgerwing.web.desk.FleetRevision;
import dev.ledgerwing.web.support.Moments;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The fleet, worst first, and what happened lately, ready to be shown. */
record FleetView(List<Row> rows, List<Event> lately) {

    /** One airframe. */
    record Row(
            String code,
            String name,
            String stage,
            MassBar bar,
            Verdict verdict,
            String verdictWords,
            String mass,
            String margin,
            BandBar band,
            Verdict balanceVerdict,
            String balance,
            Verdict powerVerdict,
            String power,
            Verdict radioVerdict,
            String radio,
            Verdict outputsVerdict,
            String outputs,
            String change,
            String title) {}

    /** One revision of some airframe. */
    record Event(String when, String who, String code, String name, int number, String title, String change) {}

    private static final Comparator<AirframeHeadline> WORST_FIRST = Comparator.comparing(FleetView::worst)
            .thenComparing(AirframeHeadline::massVerdict)
            .reversed()
            .thenComparingDouble(FleetView::marginShare)
            .thenComparing(AirframeHeadline::code);

    static FleetView of(List<AirframeHeadline> fleet, List<FleetRevision> lately, Figures figures, Moments moments) {
        return new FleetView(
                fleet.stream()
                        .sorted(WORST_FIRST)
                        .map(headline -> row(headline, figures, moments))
                        .toList(),
                lately.stream().map(each -> event(each, figures, moments)).toList());
    }

    private static Verdict worst(AirframeHeadline headline) {
        return headline.massVerdict()
                .worseOf(headline.balanceVerdict())
                .worseOf(headline.powerVerdict())
                .worseOf(headline.radioVerdict())
                .worseOf(headline.outputsVerdict());
    }

    private static double marginShare(AirframeHeadline headline) {
        Mass target = headline.target();
        return target == null ? 1 : 1 - (double) headline.predicted().mg() / target.mg();
    }

    private static Row row(AirframeHeadline headline, Figures figures, Moments moments) {
        Mass target = headline.target();
        Mass margin = target == null ? null : target.minus(headline.predicted());
        boolean isKnown = headline.massVerdict() != Verdict.UNKNOWN;
        return new Row(
                headline.code(),
                headline.name(),
                headline.stage().title(),
                MassBar.of(headline.basic(), headline.predicted(), target),
                headline.massVerdict(),
                words(headline.massVerdict(), margin, figures),
                (isKnown ? "" : "at least ")
                        + figures.mass(headline.predicted())
                        + (target == null ? "" : " of " + figures.mass(target)),
                margin == null ? "no target set" : "margin " + (isKnown ? figures.signedMass(margin) : "not known"),
                BandBar.of(headline.balance(), headline.balanceVerdict()),
                headline.balanceVerdict(),
                headline.balance().words(figures),
                headline.powerVerdict(),
                headline.power().words(),
                headline.radioVerdict(),
                headline.radio().words(),
                headline.outputsVerdict(),
                headline.outputs().words(),
                "r" + headline.number() + " · " + headline.author() + " · " + moments.text(headline.moment()),
                headline.title());
    }

    private static String words(Verdict verdict, @Nullable Mass margin, Figures figures) {
        return verdict == Verdict.BREAKS && margin != null && margin.isNegative()
                ? "breaks by " + figures.mass(Mass.ZERO.minus(margin))
                : verdict.word();
    }

    private static Event event(FleetRevision found, Figures figures, Moments moments) {
        Mass change = found.change();
        return new Event(
                moments.text(found.revision().moment()),
                found.revision().author(),
                found.airframeCode(),
                found.airframeName(),
                found.revision().number(),
                found.revision().title(),
                change == null || change.mg() == 0 ? "" : figures.signedMass(change));
    }
}
