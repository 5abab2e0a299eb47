package dev.ledgerwing.web.tables;

import dev.ledgerwing.core.file.table.Meaning;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.LengthUnit;
import dev.ledgerwing.core.quantity.MassUnit;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.TitleBlocks;
import dev.ledgerwing.web.desk.ElementIds;
import dev.ledgerwing.web.desk.Snapshot;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** Fills the models of the pages on which a table is given and looked at. */
@Component
class PreviewPage {

    static final String GIVE = "tables/give";
    static final String PREVIEW = "tables/preview";

    private static final List<String> MASS_UNITS =
            Arrays.stream(MassUnit.values()).map(MassUnit::symbol).toList();
    private static final List<String> LENGTH_UNITS =
            Arrays.stream(LengthUnit.values()).map(LengthUnit::symbol).toList();

    private final TitleBlocks titleBlocks;
    private final ElementIds ids;

    PreviewPage(TitleBlocks titleBlocks, ElementIds ids) {
        this.titleBlocks = titleBlocks;
        this.ids = ids;
    }

    /** Where a table that was given is looked at. */
    static String address(Upload upload) {
        return "/airframes/" + upload.airframe() + "/import/" + upload.id();
    }

    /** The page that asks for a table. */
    String give(Snapshot head, Figures figures, Model model) {
        model.addAttribute("block", titleBlocks.of(head, AirframePage.PARTS, figures));
        model.addAttribute("lines", head.build().lines().size());
        return GIVE;
    }

    /** A table that was given, with what importing it into {@code head} would do. */
    String preview(Snapshot head, Upload upload, ReadTable table, Figures figures, Model model) {
        model.addAttribute("block", titleBlocks.of(head, AirframePage.PARTS, figures));
        model.addAttribute("base", address(upload));
        model.addAttribute("seen", head.revision().number());
        model.addAttribute("lines", head.build().lines().size());
        model.addAttribute("preview", PreviewView.of(upload.name(), table, effects(head, table, figures), figures));
        model.addAttribute("columns", table.choices().text());
        model.addAttribute("meanings", Meaning.values());
        model.addAttribute("massUnits", MASS_UNITS);
        model.addAttribute("lengthUnits", LENGTH_UNITS);
        model.addAttribute("unknown", Verdict.UNKNOWN);
        model.addAttribute("breaks", Verdict.BREAKS);
        model.addAttribute("massUnit", figures.smallMassUnit());
        model.addAttribute("lengthUnit", figures.lengthUnit());
        return PREVIEW;
    }

    private List<Effect> effects(Snapshot head, ReadTable table, Figures figures) {
        if (!table.reading().isUsable()) {
            return List.of();
        }
        BuildReview before = head.reviewIn(figures);
        Stream<Placing> ways = head.build().lines().isEmpty() ? Stream.of(Placing.APPEND) : Stream.of(Placing.values());
        return ways.map(placing -> new TableDeed(table.reading(), placing, ImportForm.LOOSE))
                .map(deed -> Effect.of(deed, before, ids.freshLines(head.build())))
                .toList();
    }
}
