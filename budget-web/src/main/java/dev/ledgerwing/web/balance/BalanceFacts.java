package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.balance.BalanceBand;
import dev.ledgerwing.core.balance.BalanceShape;
import dev.ledgerwing.core.balance.CaseBalance;
import dev.ledgerwing.core.balance.Cg;
import dev.ledgerwing.core.balance.CgUncertainty;
import dev.ledgerwing.core.balance.MassState;
import dev.ledgerwing.core.balance.NeutralPoint;
import dev.ledgerwing.core.balance.Planform;
import dev.ledgerwing.core.build.StaticMargin;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.review.BuildReview;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where the main figure comes from, fact by fact. */
final class BalanceFacts {

    /** @param figure on one or two lines, note empty where there is nothing to say */
    record Fact(String label, String figure, String note) {}

    private static final String OF_PLACED = "of what is placed";

    private final BalanceShape shape;
    private final CaseBalance design;
    private final Figures figures;
    private final List<Fact> facts = new ArrayList<>();

    private BalanceFacts(BuildReview review) {
        this.shape = review.balance().shape();
        this.design = review.balance().design();
        this.figures = review.units();
    }

    static List<Fact> of(BuildReview review) {
        BalanceFacts all = new BalanceFacts(review);
        all.centres();
        all.neutralPoint();
        all.limits();
        all.wing();
        return all.facts;
    }

    private void centres() {
        cg(
                "CG",
                MassState.BASIC,
                (design.isKnown() ? "" : OF_PLACED + "; ") + "design case, basic mass; ± its standard uncertainty");
        cg("at predicted mass", MassState.PREDICTED, design.isKnown() ? "" : OF_PLACED);
    }

    private void cg(String label, MassState state, String note) {
        Cg cg = design.cg(state).orElse(null);
        if (cg == null) {
            add(label, "not known", "Nothing with a mass and a station is aboard.");
            return;
        }
        double u = design.uncertainty(state).map(CgUncertainty::xMm).orElse(0.0);
        Double percent = shape.percentMac(cg.xMm());
        add(
                label,
                mm(cg.xMm()) + " ± " + mm(u) + (percent == null ? "" : "\n" + Figures.percent(percent) + " MAC"),
                note);
    }

    private void neutralPoint() {
        NeutralPoint neutral = shape.neutralPoint();
        if (neutral == null) {
            return;
        }
        add(
                "Neutral point, estimate",
                Figures.percent(neutral.percentMac()) + " MAC\n" + mm(neutral.xMm()),
                neutral.caution());
        StaticMargin wanted = shape.geometry().staticMargin();
        String note = wanted == null
                ? "no margin asked for"
                : "wanted " + Figures.number(wanted.leastPercent(), 1) + " to " + Figures.percent(wanted.mostPercent());
        if (!design.isKnown()) {
            add("Static margin", "not known", "Something aboard has no mass or no station; " + note + ".");
            return;
        }
        design.cg(MassState.BASIC)
                .ifPresent(cg ->
                        add("Static margin", Figures.percent(neutral.staticMarginPercent(cg.xMm())) + " MAC", note));
    }

    private void limits() {
        band("Limits, declared", shape.declared(), "judged by these");
        band(
                "Limits, from the neutral point",
                shape.derived(),
                shape.declared() == null ? "judged by these" : "to compare");
        if (shape.band() == null) {
            add("Limits", "none", "Enter the two of the kit, or the wing and the margin wanted.");
        }
    }

    private void band(String label, @Nullable BalanceBand band, String note) {
        if (band == null) {
            return;
        }
        Double forward = shape.percentMac(band.forwardXMm());
        Double aft = shape.percentMac(band.aftXMm());
        String percents = forward == null || aft == null
                ? ""
                : "\n" + Figures.number(forward, 1) + " to " + Figures.percent(aft) + " MAC";
        add(label, figures.lengthNumber(Length.ofMm(band.forwardXMm())) + " to " + mm(band.aftXMm()) + percents, note);
    }

    private void wing() {
        Planform wing = shape.wing();
        if (wing == null) {
            return;
        }
        add("Mean aerodynamic chord (MAC)", mm(wing.macMm()), "");
        add("Leading edge of the MAC", mm(wing.macXMm()), "aft of the datum");
        add(
                "Wing",
                Figures.number(wing.areaM2(), 3) + "\u2009m²",
                "span " + mm(wing.spanMm()) + ", aspect ratio " + Figures.number(wing.aspectRatio(), 1));
    }

    private String mm(double mm) {
        return figures.length(Length.ofMm(mm));
    }

    private void add(String label, String figure, String note) {
        facts.add(new Fact(label, figure, note));
    }
}
