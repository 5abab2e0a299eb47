package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.build.MassBudget.CeilingIs;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.mass.GrowthHistory;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.TitleBlocks;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Revision;
import dev.ledgerwing.web.desk.Snapshot;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** Fills the model of the mass page; the whole page and the part of it that htmx replaces show the same. */
@Component
class MassPage {

    private final Readings readings;
    private final TitleBlocks titleBlocks;
    private final GrowthCharts charts;

    MassPage(Readings readings, TitleBlocks titleBlocks, GrowthCharts charts) {
        this.readings = readings;
        this.titleBlocks = titleBlocks;
        this.charts = charts;
    }

    void show(Snapshot shown, Figures figures, Model model) {
        String code = shown.build().airframe().code();
        GrowthHistory history = GrowthHistory.of(
                readings.history(code).stream().map(Revision::mass).toList());
        model.addAttribute("block", titleBlocks.of(shown, AirframePage.MASS, figures));
        GrowthView growth = GrowthView.of(history, charts.of(history, figures), figures);
        model.addAttribute("mass", MassView.of(shown.reviewIn(figures), growth));
        model.addAttribute("massUnit", figures.smallMassUnit());
    }

    /** The page with the form for target, ceiling, reserve and stage opened, in the units it was first shown in. */
    void showForm(Snapshot shown, BudgetForm form, Figures figures, Model model) {
        show(shown, figures, model);
        UnitSystem units = form.unitSystem(figures.units());
        model.addAttribute("editing", true);
        model.addAttribute("formUnit", new Figures(units).smallMassUnit());
        model.addAttribute("stages", stages(shown));
        model.addAttribute("meanings", meanings());
    }

    /** Each stage with its default reserve, since choosing one chooses the other. */
    private static Map<String, String> stages(Snapshot shown) {
        Map<String, String> stages = new LinkedHashMap<>();
        for (Stage stage : Stage.values()) {
            double percent = shown.build().judgedBy().reserves().percent(stage);
            stages.put(stage.name(), stage.title() + ", reserve " + Figures.percent(percent));
        }
        return stages;
    }

    private static Map<String, String> meanings() {
        Map<String, String> meanings = new LinkedHashMap<>();
        meanings.put(CeilingIs.BELOW.name(), "stay below it");
        meanings.put(CeilingIs.AT_MOST.name(), "may reach it");
        return meanings;
    }

    /** The view for a request: the whole page, or the part that htmx replaces. */
    static String view(boolean inPlace) {
        return inPlace ? "mass/show :: airframe" : "mass/show";
    }
}
