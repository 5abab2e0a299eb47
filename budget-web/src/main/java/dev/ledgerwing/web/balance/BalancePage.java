package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.TitleBlocks;
import dev.ledgerwing.web.desk.Snapshot;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** Fills the model of the balance page. */
@Component
class BalancePage {

    private final TitleBlocks titleBlocks;

    BalancePage(TitleBlocks titleBlocks) {
        this.titleBlocks = titleBlocks;
    }

    String show(Snapshot shown, Figures figures, Model model) {
        Build build = shown.build();
        model.addAttribute("block", titleBlocks.of(shown, AirframePage.BALANCE, figures));
        model.addAttribute("balance", BalanceView.of(shown.reviewIn(figures)));
        model.addAttribute("lengthUnit", figures.lengthUnit());
        model.addAttribute("massUnit", figures.smallMassUnit());
        model.addAttribute("placing", PlacingView.of(build, figures));
        model.addAttribute("weighIns", WeighInRow.of(build, figures));
        return "balance/show";
    }
}
