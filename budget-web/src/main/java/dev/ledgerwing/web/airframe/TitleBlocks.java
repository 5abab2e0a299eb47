package dev.ledgerwing.web.airframe;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.mass.MassMargin;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.web.airframe.TitleBlock.Tile;
import dev.ledgerwing.web.desk.CgFigure;
import dev.ledgerwing.web.desk.OutputsFigure;
import dev.ledgerwing.web.desk.PowerFigure;
import dev.ledgerwing.web.desk.RadioFigure;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.support.Moments;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Fills in title blocks. */
@Component
public class TitleBlocks {

    private final Moments moments;

    TitleBlocks(Moments moments) {
        this.moments = moments;
    }

    /** The title block of a revision, with the cell of the open page marked. */
    public TitleBlock of(Snapshot shown, AirframePage open, Figures figures) {
        Build build = shown.build();
        String code = build.airframe().code();
        return new TitleBlock(
                code,
                build.airframe().name(),
                build.airframe().stage().title(),
                shown.revision().number(),
                moments.text(shown.revision().moment()),
                shown.revision().author(),
                List.of(
                        parts(shown, open, code),
                        mass(shown, open, figures),
                        balance(shown, open, figures),
                        power(shown, open),
                        radio(shown, open),
                        outputs(shown, open),
                        tile("History", AirframePage.HISTORY, open, code, revisions(shown)),
                        tile("Sheets", AirframePage.SHEETS, open, code, List.of("5", "build to outputs"))));
    }

    private static Tile parts(Snapshot shown, AirframePage open, String code) {
        int lines = shown.build().lines().size();
        Double weighed = shown.review().mass().total().weighedPercent();
        return tile(
                "Parts",
                AirframePage.PARTS,
                open,
                code,
                List.of(
                        lines == 1 ? "1 line" : lines + " lines",
                        weighed == null ? "nothing weighed" : Figures.percent(weighed) + " weighed"));
    }

    private static List<String> revisions(Snapshot shown) {
        int number = shown.revision().number();
        return List.of(String.valueOf(number), number == 1 ? "revision" : "revisions, all kept");
    }

    private static Tile tile(String label, AirframePage page, AirframePage open, String code, List<String> words) {
        return new Tile(label, page.address(code), null, words.get(0), words.get(1), page == open);
    }

    private static Tile mass(Snapshot shown, AirframePage open, Figures figures) {
        Verdict verdict = shown.review().verdict(Budget.MASS);
        MassStatement mass = shown.review().mass();
        return new Tile(
                Budget.MASS.title(),
                AirframePage.MASS.address(shown.build().airframe().code()),
                verdict,
                massWords(verdict, mass.margin().orElse(null), figures),
                (verdict == Verdict.UNKNOWN ? "at least " : "")
                        + ofTarget(mass.predicted(), shown.build().budget().targetMass(), figures),
                open == AirframePage.MASS);
    }

    private static Tile balance(Snapshot shown, AirframePage open, Figures figures) {
        Verdict verdict = shown.review().verdict(Budget.BALANCE);
        return new Tile(
                Budget.BALANCE.title(),
                AirframePage.BALANCE.address(shown.build().airframe().code()),
                verdict,
                verdict.word(),
                (verdict == Verdict.UNKNOWN
                                        && !shown.review().balance().design().isKnown()
                                ? "of what is placed "
                                : "")
                        + CgFigure.of(shown.review().figures()).words(figures),
                open == AirframePage.BALANCE);
    }

    private static Tile power(Snapshot shown, AirframePage open) {
        Verdict verdict = shown.review().verdict(Budget.POWER);
        return new Tile(
                Budget.POWER.title(),
                AirframePage.POWER.address(shown.build().airframe().code()),
                verdict,
                verdict.word(),
                powerWords(shown),
                open == AirframePage.POWER);
    }

    private static Tile radio(Snapshot shown, AirframePage open) {
        Verdict verdict = shown.review().verdict(Budget.RADIO);
        return new Tile(
                Budget.RADIO.title(),
                AirframePage.RADIO.address(shown.build().airframe().code()),
                verdict,
                verdict.word(),
                RadioFigure.of(shown.review().figures()).words(),
                open == AirframePage.RADIO);
    }

    private static Tile outputs(Snapshot shown, AirframePage open) {
        Verdict verdict = shown.review().verdict(Budget.OUTPUTS);
        return new Tile(
                Budget.OUTPUTS.title(),
                AirframePage.OUTPUTS.address(shown.build().airframe().code()),
                verdict,
                verdict.word(),
                OutputsFigure.of(shown.review().figures()).words(),
                open == AirframePage.OUTPUTS);
    }

    /** {@code 18 % free at Main diode, 43 min}: the worst margin and where it is, and how long it flies. */
    private static String powerWords(Snapshot shown) {
        PowerFigure figure = PowerFigure.of(shown.review().figures());
        String where = shown.review().power().network().elements().stream()
                .filter(element -> Objects.equals(element.marginPercent(), figure.marginPercent()))
                .findFirst()
                .map(element -> " at " + element.name())
                .orElse("");
        if (figure.margin().isEmpty()) {
            return figure.words();
        }
        String endurance = figure.endurance();
        return figure.margin() + where + (endurance.isEmpty() ? "" : ", " + endurance);
    }

    /** {@code breaks by 122 g}, or the verdict alone. */
    public static String massWords(Verdict verdict, @Nullable MassMargin margin, Figures figures) {
        return verdict == Verdict.BREAKS && margin != null && margin.isBroken()
                ? "breaks by " + figures.mass(margin.predicted().minus(margin.target()))
                : verdict.word();
    }

    /** {@code 6172 of 6050 g}; the unit once where both have the same. */
    public static String ofTarget(Mass predicted, @Nullable Mass target, Figures figures) {
        if (target == null) {
            return figures.mass(predicted) + ", no target";
        }
        String whole = figures.mass(target);
        boolean sameUnit = unit(figures.mass(predicted)).equals(unit(whole));
        return (sameUnit ? figures.massNumber(predicted) : figures.mass(predicted)) + " of " + whole;
    }

    private static String unit(String mass) {
        return mass.replaceAll("[^a-z]", "").toLowerCase(Locale.ROOT);
    }
}
