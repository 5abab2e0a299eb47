package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Snapshot;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;

/** The mass page, with and without its form. */
@Controller
@RequestMapping("/airframes/{code}/mass")
class MassController {

    static final String IN_PLACE = "HX-Request";

    private final Readings readings;
    private final MassPage page;

    MassController(Readings readings, MassPage page) {
        this.readings = readings;
        this.page = page;
    }

    @GetMapping
    String show(
            @PathVariable String code,
            @RequestHeader(name = IN_PLACE, defaultValue = "false") boolean inPlace,
            Figures figures,
            Model model) {
        page.show(readings.head(code), figures, model);
        return MassPage.view(inPlace);
    }

    @GetMapping("/budget")
    String showForm(
            @PathVariable String code,
            @RequestHeader(name = IN_PLACE, defaultValue = "false") boolean inPlace,
            Figures figures,
            Model model) {
        Snapshot head = readings.head(code);
        BudgetForm form = BudgetForm.of(head, figures.units());
        model.addAttribute("form", form);
        page.showForm(head, form, figures, model);
        return MassPage.view(inPlace);
    }
}
