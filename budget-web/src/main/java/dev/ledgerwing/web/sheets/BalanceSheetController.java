package dev.ledgerwing.web.sheets;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.report.sheet.BalanceSheet;
import dev.ledgerwing.report.sheet.SheetRenderer;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.sheets.SheetDesk.Printed;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;

/** The mass and balance sheet of one revision: a page to print, a PDF to keep, and a small picture of it. */
@Controller
@RequestMapping("/airframes/{code}/sheets/{number}")
class BalanceSheetController {

    private final SheetDesk desk;
    private final SheetRenderer renderer;

    BalanceSheetController(SheetDesk desk, SheetRenderer renderer) {
        this.desk = desk;
        this.renderer = renderer;
    }

    @GetMapping("/balance.html")
    ResponseEntity<String> page(@PathVariable String code, @PathVariable int number, Figures figures) {
        return SheetDesk.page(renderer.html(sheet(new Seen(code, number), figures), desk.styles()));
    }

    @GetMapping("/balance.pdf")
    ResponseEntity<byte[]> pdf(@PathVariable String code, @PathVariable int number, Figures figures) {
        Seen seen = new Seen(code, number);
        return SheetDesk.pdf(renderer.pdf(sheet(seen, figures)), seen, "balance");
    }

    @GetMapping("/balance.png")
    ResponseEntity<byte[]> picture(@PathVariable String code, @PathVariable int number, Figures figures) {
        return SheetDesk.picture(renderer.pdf(sheet(new Seen(code, number), figures)));
    }

    private BalanceSheet sheet(Seen seen, Figures figures) {
        Printed printed = desk.revision(seen, "balance", figures);
        return BalanceSheet.of(printed.review(), printed.head());
    }
}
