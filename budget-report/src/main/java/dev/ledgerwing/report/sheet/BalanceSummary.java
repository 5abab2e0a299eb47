package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.balance.BalanceBand;
import dev.ledgerwing.core.balance.BalanceFindings;
import dev.ledgerwing.core.balance.BalanceShape;
import dev.ledgerwing.core.balance.CaseBalance;
import dev.ledgerwing.core.balance.Cg;
import dev.ledgerwing.core.balance.CgUncertainty;
import dev.ledgerwing.core.balance.MassState;
import dev.ledgerwing.core.balance.NeutralPoint;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The balance budget of one build in words and figures. Where masses or stations are missing, a CG is that of the rest and says so. */
public final class BalanceSummary {

    private static final String NOT_KNOWN = "not known";

    private final BuildReview review;
    private final BalanceShape shape;
    private final Figures units;

    public BalanceSummary(BuildReview review) {
        this.review = review;
        this.shape = review.balance().shape();
        this.units = review.units();
    }

    /** The verdict of the balance budget: {@code breaks by 3.1 mm}. */
    public VerdictMark verdict() {
        Verdict verdict = review.verdict(Budget.BALANCE);
        return VerdictMark.saying(verdict, verdict.word() + (verdict == Verdict.BREAKS ? by() : ""));
    }

    /** By how much the worst flight case lies outside; empty where something else breaks. */
    private String by() {
        return review.findings(Budget.BALANCE).stream()
                .filter(finding -> finding.code().equals(BalanceFindings.CG) && finding.verdict() == Verdict.BREAKS)
                .map(Finding::marginLeft)
                .filter(Objects::nonNull)
                .min(Double::compare)
                .map(margin -> " by " + length(-margin))
                .orElse("");
    }

    /** The summary, cell by cell. */
    public List<Fact> facts() {
        return List.of(cg(MassState.BASIC), cg(MassState.PREDICTED), band(), neutralPoint(), margin(), across());
    }

    /** Where the design case balances. */
    public Fact cg(MassState state) {
        CaseBalance design = review.balance().design();
        String label = "CG, " + state.word() + " mass";
        Optional<Cg> cg = design.cg(state);
        return cg.map(at -> new Fact(label, station(at.xMm()), note(design, state)))
                .orElse(new Fact(label, NOT_KNOWN, "nothing is placed"));
    }

    private String note(CaseBalance design, MassState state) {
        int unplaced = design.withoutMass().size() + design.withoutStation().size();
        if (unplaced > 0) {
            return "of the rest: " + unplaced + " not placed";
        }
        double sigma = design.uncertainty(state).map(CgUncertainty::xMm).orElse(0.0);
        return "± " + length(2 * sigma) + ", 95 of 100";
    }

    /** The band that judges. */
    public Fact band() {
        BalanceBand band = shape.band();
        if (band == null) {
            return new Fact("Allowed band", "not set", "no limits are declared or estimated");
        }
        String source = band.source() == BalanceBand.Source.DECLARED ? "declared" : "estimated";
        return new Fact("Allowed band", range(band), percentRange(band) + source);
    }

    private String range(BalanceBand band) {
        return units.lengthNumber(Length.ofMm(band.forwardXMm())) + " to " + length(band.aftXMm());
    }

    private String percentRange(BalanceBand band) {
        Double forward = shape.percentMac(band.forwardXMm());
        Double aft = shape.percentMac(band.aftXMm());
        return forward == null || aft == null
                ? ""
                : Figures.number(forward, 1) + " to " + Figures.percent(aft) + " MAC, ";
    }

    private Fact neutralPoint() {
        NeutralPoint neutral = shape.neutralPoint();
        return neutral == null
                ? new Fact("Neutral point", NOT_KNOWN, "no wing is entered")
                : new Fact(
                        "Neutral point",
                        Figures.percent(neutral.percentMac()) + " MAC",
                        "an estimate; " + length(neutral.xMm()));
    }

    private Fact margin() {
        NeutralPoint neutral = shape.neutralPoint();
        CaseBalance design = review.balance().design();
        Cg cg = design.cg(MassState.BASIC).orElse(null);
        return neutral == null || cg == null || !design.isKnown()
                ? new Fact("Static margin", NOT_KNOWN, "")
                : new Fact(
                        "Static margin",
                        Figures.percent(neutral.staticMarginPercent(cg.xMm())) + " MAC",
                        "an estimate; at basic mass");
    }

    private Fact across() {
        CaseBalance design = review.balance().design();
        Cg cg = design.cg(MassState.BASIC).orElse(null);
        return cg == null
                ? new Fact("To the side", NOT_KNOWN, "")
                : new Fact(
                        "To the side",
                        length(Math.abs(cg.yMm())) + side(cg.yMm()),
                        (design.isKnown() ? "" : "of the rest; ") + "allowed " + units.length(shape.lateralLimit()));
    }

    private String side(double yMm) {
        boolean onCentreLine = units.lengthNumber(Length.ofMm(yMm)).equals("0");
        return onCentreLine ? "" : yMm > 0 ? " right" : " left";
    }

    /** What the wing says; empty without one. */
    List<Fact> shape() {
        var wing = shape.wing();
        if (wing == null) {
            return List.of();
        }
        Fact derived = derived(shape.derived());
        return Stream.of(
                        new Fact("MAC", length(wing.macMm()), length(wing.macYMm()) + " from the centre line"),
                        new Fact("Its leading edge", length(wing.macXMm()), "from the datum"),
                        new Fact("Wing area", Figures.number(wing.areaM2(), 3) + "\u2009m²", "seen from above"),
                        new Fact(
                                "Span", length(wing.spanMm()), "aspect ratio " + Figures.number(wing.aspectRatio(), 1)),
                        band(),
                        derived)
                .toList();
    }

    private Fact derived(@Nullable BalanceBand band) {
        return band == null
                ? new Fact("By static margin", NOT_KNOWN, "no margin is asked for")
                : new Fact("By static margin", range(band), percentRange(band) + "estimated");
    }

    /** {@code 641.9 mm, 38.5 % MAC}. */
    String station(double xMm) {
        Double percent = shape.percentMac(xMm);
        return length(xMm) + (percent == null ? "" : ", " + Figures.percent(percent));
    }

    private String length(double mm) {
        return units.length(Length.ofMm(mm));
    }
}
