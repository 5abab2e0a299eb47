package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.desk.Readings;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The balance page. */
@Controller
class BalanceController {

    private final Readings readings;
    private final BalancePage page;

    BalanceController(Readings readings, BalancePage page) {
        this.readings = readings;
        this.page = page;
    }

    @GetMapping("/airframes/{code}/balance")
    String show(@PathVariable String code, Figures figures, Model model) {
        return page.show(readings.head(code), figures, model);
    }
}
