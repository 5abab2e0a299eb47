package dev.ledgerwing.web.parts;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.desk.Readings;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The parts table. */
@Controller
@RequestMapping("/airframes/{code}")
class PartsController {

    private final Readings readings;
    private final PartsPage page;

    PartsController(Readings readings, PartsPage page) {
        this.readings = readings;
        this.page = page;
    }

    @GetMapping
    String open(@PathVariable String code) {
        return "redirect:/airframes/" + readings.head(code).build().airframe().code() + "/parts";
    }

    @GetMapping("/parts")
    String show(
            @PathVariable String code,
            @RequestParam(defaultValue = "") String find,
            @RequestParam(defaultValue = "0") int from,
            @RequestHeader(name = "HX-Request", defaultValue = "false") boolean inPlace,
            Figures figures,
            Model model) {
        page.show(readings.head(code), new PartsPage.Window(find, from), figures, model);
        return PartsPage.view(inPlace);
    }
}
