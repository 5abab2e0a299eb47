package dev.ledgerwing.web.power;

import dev.ledgerwing.core.power.PowerStart;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.TitleBlocks;
import dev.ledgerwing.web.desk.Snapshot;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** Fills the model of the power page. */
@Component
class PowerPage {

    private final TitleBlocks titleBlocks;

    PowerPage(TitleBlocks titleBlocks) {
        this.titleBlocks = titleBlocks;
    }

    String show(Snapshot shown, @Nullable String failed, Figures figures, Model model) {
        model.addAttribute("block", titleBlocks.of(shown, AirframePage.POWER, figures));
        model.addAttribute("power", PowerView.of(shown.reviewIn(figures), failed));
        model.addAttribute("starts", PowerStart.isOffered(shown.build()) ? List.of(PowerStart.values()) : List.of());
        return "power/show";
    }
}
