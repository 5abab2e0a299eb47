package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.GrowthTable;
import dev.ledgerwing.core.build.JudgedBy;
import dev.ledgerwing.core.build.MassUncertainty;
import dev.ledgerwing.core.build.Reserves;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Figures;
import java.util.Arrays;
import java.util.List;

/** What the figures of the page are judged by, and where that comes from. */
record RulesView(
        Source growthSource,
        List<Growth> growth,
        Source uncertaintySource,
        List<Uncertainty> uncertainty,
        String scales,
        Source reserveSource,
        List<Reserve> reserves) {

    /** @param own whether it is the project's own choice, from no publication */
    record Source(String sentence, boolean own) {}

    record Growth(String category, String guessed, String calculated, String catalogue) {}

    record Uncertainty(String basis, String standard, String correlation) {}

    record Reserve(String stage, String percent, boolean current) {}

    static RulesView of(JudgedBy rules, Stage stage, Figures figures) {
        MassUncertainty uncertainty = rules.massUncertainty();
        return new RulesView(
                source(rules.growth().source(), rules.growth().equals(GrowthTable.OWN_CHOICE)),
                rules.growth().rows().stream().map(RulesView::growth).toList(),
                source(uncertainty.source(), uncertainty.equals(MassUncertainty.OWN_CHOICE)),
                Arrays.stream(Basis.values())
                        .map(basis -> uncertainty(basis, uncertainty))
                        .toList(),
                scales(uncertainty, figures),
                reserveSource(rules.reserves()),
                Arrays.stream(Stage.values())
                        .map(each -> new Reserve(
                                each.title(), Figures.percent(rules.reserves().percent(each)), each == stage))
                        .toList());
    }

    private static Source source(String words, boolean own) {
        return new Source(words.endsWith(".") ? words : words + ".", own);
    }

    private static Source reserveSource(Reserves reserves) {
        return reserves.equals(Reserves.OWN_CHOICE)
                ? new Source("Ledgerwing's own choice; from no publication.", true)
                : new Source("Set by the team.", false);
    }

    private static Growth growth(GrowthTable.Row row) {
        return new Growth(
                row.category().title(),
                Figures.percent(row.guessedPercent()),
                Figures.percent(row.calculatedPercent()),
                Figures.percent(row.cataloguePercent()));
    }

    private static Uncertainty uncertainty(Basis basis, MassUncertainty rules) {
        String standard = switch (basis) {
            case GUESSED -> Figures.percent(rules.guessedPercent());
            case CALCULATED -> Figures.percent(rules.calculatedPercent());
            case CATALOGUE -> Figures.percent(rules.cataloguePercent());
            case WEIGHED -> "by the scales";
        };
        return new Uncertainty(basis.word(), standard, Figures.number(rules.correlation(basis), 2));
    }

    private static String scales(MassUncertainty rules, Figures figures) {
        return "Scales with steps of " + figures.mass(rules.scaleStep()) + " and an error of at most "
                + figures.mass(rules.scaleMaxError()) + " either way"
                + (rules.tareTaken() ? ", a tare taken at each weighing." : ".");
    }
}
