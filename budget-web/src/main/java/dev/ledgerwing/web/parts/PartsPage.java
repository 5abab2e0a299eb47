package dev.ledgerwing.web.parts;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.TitleBlocks;
import dev.ledgerwing.web.desk.Snapshot;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** Fills the model of the parts page; the whole page and the part of it that htmx replaces show the same. */
@Component
class PartsPage {

    private final TitleBlocks titleBlocks;

    PartsPage(TitleBlocks titleBlocks) {
        this.titleBlocks = titleBlocks;
    }

    /**
     * What of the table is looked at.
     *
     * @param find only parts whose name or part code holds this
     * @param from number of the first part, counted from 0
     */
    record Window(String find, int from) {

        static final Window ALL = new Window("", 0);
    }

    /** The table. */
    void show(Snapshot shown, Window window, Figures figures, Model model) {
        model.addAttribute("block", titleBlocks.of(shown, AirframePage.PARTS, figures));
        model.addAttribute("parts", PartsView.of(shown, window.find().strip(), window.from(), figures));
        model.addAttribute("unknown", Verdict.UNKNOWN);
        model.addAttribute("massUnit", figures.smallMassUnit());
        model.addAttribute("lengthUnit", figures.lengthUnit());
    }

    /**
     * The table with a form in it: at the part with this id, or at the top for a new one. A part that somebody removed
     * meanwhile is shown as a new one, so that nothing typed is lost.
     */
    void showForm(Snapshot shown, @Nullable String id, Figures figures, Model model) {
        boolean isThere = id != null && shown.build().line(id).isPresent();
        String editing = isThere ? Objects.requireNonNull(id) : "new";
        show(shown, new Window("", isThere ? PartsView.placeOf(shown, editing) : 0), figures, model);
        model.addAttribute("seen", shown.revision().number());
        model.addAttribute("choices", PartChoices.of(shown.build()));
        model.addAttribute("editing", editing);
        model.addAttribute("gone", id != null && !isThere);
        model.addAttribute("booked", !shown.build().bookings().isEmpty());
    }

    /** The view for a request: the whole page, or the part that htmx replaces. */
    static String view(boolean inPlace) {
        return inPlace ? "parts/show :: airframe" : "parts/show";
    }
}
