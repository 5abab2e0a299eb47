package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.TitleBlocks;
import dev.ledgerwing.web.desk.Snapshot;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** Fills the model of the radio page. */
@Component
class RadioPage {

    private final TitleBlocks titleBlocks;

    RadioPage(TitleBlocks titleBlocks) {
        this.titleBlocks = titleBlocks;
    }

    String show(Snapshot shown, Figures figures, Model model) {
        model.addAttribute("block", titleBlocks.of(shown, AirframePage.RADIO, figures));
        return "radio/show";
    }
}
