package dev.ledgerwing.web.sheets;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.report.sheet.OutputSheet;
import dev.ledgerwing.report.sheet.SheetRenderer;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.sheets.SheetDesk.Printed;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;

/** The wiring and outputs sheet of one revision: a page to print, a PDF to keep, and a small picture of it. */
@Controller
@RequestMapping("/airframes/{code}/sheets/{number}")
class OutputSheetController {

    private final SheetDesk desk;
    private final SheetRenderer renderer;

    OutputSheetController(SheetDesk desk, SheetRenderer renderer) {
        this.desk = desk;
        this.renderer = renderer;
    }

    @GetMapping("/outputs.html")
    ResponseEntity<String> page(@PathVariable String code, @PathVariable int number, Figures figures) {
        return SheetDesk.page(renderer.html(sheet(new Seen(code, number), figures), desk.styles()));
    }

    @GetMapping("/outputs.pdf")
    ResponseEntity<byte[]> pdf(@PathVariable String code, @PathVariable int number, Figures figures) {
        Seen seen = new Seen(code, number);
        return SheetDesk.pdf(renderer.pdf(sheet(seen, figures)), seen, "outputs");
    }

    @GetMapping("/outputs.png")
    ResponseEntity<byte[]> picture(@PathVariable String code, @PathVariable int number, Figures figures) {
        return SheetDesk.picture(renderer.pdf(sheet(new Seen(code, number), figures)));
    }

    private OutputSheet sheet(Seen seen, Figures figures) {
        Printed printed = desk.revision(seen, "outputs", figures);
        return OutputSheet.of(printed.review(), printed.head());
    }
}
