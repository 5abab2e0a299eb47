package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.outputs.BoardSwap;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.TitleBlocks;
import dev.ledgerwing.web.desk.Snapshot;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** Fills the model of the outputs page, and of a look at another flight controller. */
@Component
class OutputsPage {

    private final TitleBlocks titleBlocks;

    OutputsPage(TitleBlocks titleBlocks) {
        this.titleBlocks = titleBlocks;
    }

    String show(Snapshot shown, Figures figures, Model model) {
        model.addAttribute("block", titleBlocks.of(shown, AirframePage.OUTPUTS, figures));
        model.addAttribute("outputs", OutputsView.of(shown.reviewIn(figures)));
        return "outputs/show";
    }

    /** What choosing a board would do to every budget; nothing is changed. */
    String lookAt(String board, Snapshot shown, Figures figures, Model model) {
        BuildReview before = shown.reviewIn(figures);
        BuildReview after = BuildReview.of(BoardSwap.apply(shown.build(), board), figures);
        model.addAttribute("block", titleBlocks.of(shown, AirframePage.OUTPUTS, figures));
        model.addAttribute("trial", TrialView.of(before, after));
        return "outputs/trial";
    }
}
