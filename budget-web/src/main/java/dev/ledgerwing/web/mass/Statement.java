package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.MassBudget.CeilingIs;
import dev.ledgerwing.core.mass.BookingsAboard;
import dev.ledgerwing.core.mass.CaseMass;
import dev.ledgerwing.core.mass.MarginOf;
import dev.ledgerwing.core.mass.MassMargin;
import dev.ledgerwing.core.mass.MassRow;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.mass.MassTotal;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes the mass statement term by term. Where a mass is not known, sums are said to be "at least" and what is left "at most". */
final class Statement {

    private final BuildReview review;
    private final MassStatement mass;
    private final Figures figures;

    private Statement(BuildReview review) {
        this.review = review;
        this.mass = review.mass();
        this.figures = review.units();
    }

    static List<Term> of(BuildReview review) {
        Statement statement = new Statement(review);
        List<Term> terms = new ArrayList<>();
        terms.addAll(statement.sums());
        terms.addAll(statement.target());
        terms.addAll(statement.ceiling());
        terms.add(statement.weighed());
        return terms;
    }

    private List<Term> sums() {
        List<Term> terms = new ArrayList<>();
        terms.add(Term.plain("Basic mass", atLeast(mass.total()) + figures.mass(mass.basic()), aboard()));
        terms.add(Term.plain("Growth allowance", figures.signedMass(mass.growth()), grown()));
        BookingsAboard aboard = BookingsAboard.of(mass.build(), mass.design().loadCase());
        aboard.assemblies().forEach(booked -> terms.add(booking(assembly(booked.assembly()), booked.booking())));
        aboard.airframe().ifPresent(booked -> terms.add(booking("", booked)));
        terms.add(Term.sum("Predicted mass", atLeast(mass.total()) + figures.mass(mass.predicted()), ""));
        return terms;
    }

    private Term booking(String assembly, Booking booked) {
        String of = assembly.isEmpty() ? "Booking" : "Booking, " + assembly;
        return Term.plain(of, figures.signedMass(booked.mass()), "Not explained yet: " + booked.reason() + ".");
    }

    private String assembly(String code) {
        return mass.build().assembly(code).map(Assembly::name).orElse(code);
    }

    private static String atLeast(MassTotal total) {
        return total.isComplete() ? "" : "at least ";
    }

    private String aboard() {
        long carried = mass.rows().stream().filter(MassRow::isExtra).count();
        long lines = mass.rows().size() - carried;
        int unknown = mass.total().unknown();
        return counted(lines, "line") + " aboard in “"
                + mass.design().loadCase().name() + "”"
                + (carried == 0 ? "" : ", " + counted(carried, "thing") + " carried besides")
                + (unknown == 0 ? "" : ", " + unknown + " without a mass");
    }

    private static String counted(long count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private String grown() {
        return mass.basic().mg() == 0
                ? ""
                : Figures.percent(100.0 * mass.growth().mg() / mass.basic().mg()) + " of basic mass";
    }

    private List<Term> target() {
        return mass.margin()
                .map(this::against)
                .orElseGet(() -> List.of(
                        new Term("Target", "no target set yet", "Set one, to have it judged.", Verdict.UNKNOWN, false),
                        Term.plain(
                                "Reserve wanted",
                                Figures.percent(mass.reservePercent()),
                                "of target, " + reserveSource())));
    }

    private List<Term> against(MassMargin margin) {
        String most = mass.total().isComplete() ? "" : "at most ";
        return List.of(
                Term.plain("Target", figures.mass(margin.target()), ""),
                Term.judged(
                        "Margin", most + figures.signedMass(margin.mass()), percents(margin), verdict("mass.target")),
                Term.plain(
                        "Reserve wanted",
                        figures.mass(margin.reserve()),
                        Figures.percent(margin.reservePercent()) + " of target, " + reserveSource()));
    }

    /** In per cent of each of the three masses that documents use. */
    private static String percents(MassMargin margin) {
        return Stream.of(MarginOf.TARGET, MarginOf.PREDICTED, MarginOf.BASIC)
                .flatMap(whole -> Stream.ofNullable(margin.percent(whole))
                        .map(percent -> Figures.percent(percent) + " " + whole.words()))
                .collect(Collectors.joining(", "));
    }

    private String reserveSource() {
        return mass.build().budget().reservePercent() == null
                ? "the default at stage " + mass.build().airframe().stage().title()
                : "set for this airframe";
    }

    private List<Term> ceiling() {
        MassBudget budget = mass.build().budget();
        Mass ceiling = budget.ceilingMass();
        CeilingIs meant = budget.ceilingIs();
        if (ceiling == null || meant == null) {
            return List.of();
        }
        CaseMass heaviest = mass.heaviestFlight();
        String most = heaviest.total().isComplete() ? "" : "at most ";
        return List.of(
                Term.plain("Ceiling", meant.words() + " " + figures.mass(ceiling), ""),
                Term.judged(
                        "Left to the ceiling",
                        most + figures.signedMass(ceiling.minus(heaviest.predicted())),
                        "Heaviest in flight: “" + heaviest.loadCase().name() + "”, predicted "
                                + atLeast(heaviest.total()) + figures.mass(heaviest.predicted()),
                        verdict("mass.ceiling")));
    }

    private @Nullable Verdict verdict(String code) {
        return review.finding(code).map(Finding::verdict).orElse(null);
    }

    private Term weighed() {
        Double weighed = mass.total().weighedPercent();
        return Term.plain("Weighed", weighed == null ? "nothing" : Figures.percent(weighed), "of the basic mass");
    }
}
