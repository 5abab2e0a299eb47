package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.desk.Readings;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;

/** The radio page. */
@Controller
@RequestMapping("/airframes/{code}/radio")
class RadioController {

    private final Readings readings;
    private final RadioPage page;

    RadioController(Readings readings, RadioPage page) {
        this.readings = readings;
        this.page = page;
    }

    @GetMapping
    String show(@PathVariable String code, Figures figures, Model model) {
        return page.show(readings.head(code), figures, model);
    }
}
