package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.radio.RadioStart;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.TitleBlocks;
import dev.ledgerwing.web.desk.Snapshot;
import java.util.List;
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
        return show(shown, figures, WhyTyped.NOTHING, model);
    }

    /** Once more, with what was typed as the reason of a concession. */
    String show(Snapshot shown, Figures figures, WhyTyped why, Model model) {
        model.addAttribute("block", titleBlocks.of(shown, AirframePage.RADIO, figures));
        model.addAttribute("radio", RadioView.of(shown.reviewIn(figures)));
        model.addAttribute("phases", shown.build().phases());
        model.addAttribute("why", why);
        model.addAttribute("starts", RadioStart.isOffered(shown.build()) ? List.of(RadioStart.values()) : List.of());
        return "radio/show";
    }
}
