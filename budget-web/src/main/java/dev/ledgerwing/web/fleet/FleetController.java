package dev.ledgerwing.web.fleet;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.support.Moments;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The first page after signing in. */
@Controller
class FleetController {

    private static final int EVENTS = 8;

    private final Readings readings;
    private final Moments moments;

    FleetController(Readings readings, Moments moments) {
        this.readings = readings;
        this.moments = moments;
    }

    @GetMapping("/")
    String show(Figures figures, Model model) {
        model.addAttribute("fleet", FleetView.of(readings.fleet(), readings.lately(EVENTS), figures, moments));
        return "fleet/show";
    }
}
