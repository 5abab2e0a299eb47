package dev.ledgerwing.web.tables;

import dev.ledgerwing.core.file.table.ColumnMeaning;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.ImpactStrip;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.support.Refusal;
import dev.ledgerwing.web.team.Member;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Shows how a table was understood, lets that be changed, and imports it as it was shown. */
@Controller
@RequestMapping("/airframes/{code}/import/{id}")
class PreviewController {

    private static final String FORM = "form";

    private final Readings readings;
    private final Uploads uploads;
    private final Imports imports;
    private final PreviewPage page;

    PreviewController(Readings readings, Uploads uploads, Imports imports, PreviewPage page) {
        this.readings = readings;
        this.uploads = uploads;
        this.imports = imports;
        this.page = page;
    }

    @GetMapping
    String show(
            @PathVariable String code,
            @PathVariable String id,
            @RequestParam(defaultValue = "") String columns,
            Member member,
            Model model,
            HttpServletResponse response) {
        Optional<Upload> upload = uploads.find(id, code, member);
        if (upload.isEmpty() || upload.get().imported().isPresent()) {
            return gone(code, upload.isPresent(), member, model, response);
        }
        if (!model.containsAttribute(FORM)) {
            model.addAttribute(FORM, ImportForm.empty());
        }
        ReadTable table = ReadTable.of(upload.get().bytes(), choices(columns));
        return page.preview(readings.head(code), upload.get(), table, member.figures(), model);
    }

    /** Reads the table again with the columns as they are chosen now. */
    @PostMapping("/columns")
    String readAgain(
            @PathVariable String code,
            @PathVariable String id,
            @ModelAttribute(FORM) ImportForm form,
            BindingResult problems,
            Member member,
            Model model,
            RedirectAttributes after,
            HttpServletResponse response) {
        Optional<Upload> found = uploads.find(id, code, member);
        if (found.isEmpty()) {
            return gone(code, false, member, model, response);
        }
        Upload upload = found.get();
        ReadTable table = ReadTable.of(upload.bytes(), choices(form.columns()));
        after.addFlashAttribute(FORM, form);
        return redirect(upload, table.choices().and(changes(table, form)));
    }

    @PostMapping
    String apply(
            @PathVariable String code,
            @PathVariable String id,
            @Valid @ModelAttribute(FORM) ImportForm form,
            BindingResult problems,
            Member member,
            Model model,
            RedirectAttributes after,
            HttpServletResponse response) {
        Optional<Upload> found = uploads.find(id, code, member);
        if (found.isEmpty()) {
            return gone(code, false, member, model, response);
        }
        Upload upload = found.get();
        ReadTable table = ReadTable.of(upload.bytes(), choices(form.columns()));
        List<ColumnMeaning> changes = changes(table, form);
        if (!changes.isEmpty()) {
            after.addFlashAttribute(FORM, form);
            after.addFlashAttribute(
                    "notice", "Columns were changed, so nothing was imported yet: this is how the table reads now.");
            return redirect(upload, table.choices().and(changes));
        }
        if (table.reading().isUsable() && !problems.hasErrors()) {
            List<String> sentences = new ArrayList<>();
            Optional<ImpactStrip> strip = imports.apply(upload, table.reading(), form, member, sentences);
            if (strip.isPresent()) {
                after.addFlashAttribute("strip", strip.get());
                return "redirect:" + AirframePage.PARTS.address(code);
            }
            sentences.forEach(sentence -> problems.reject("desk", sentence));
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return page.preview(readings.head(code), upload, table, member.figures(), model);
    }

    private static List<ColumnMeaning> changes(ReadTable table, ImportForm form) {
        return ColumnView.changes(table.columns(), form.meanings(), form.units());
    }

    private static ColumnChoices choices(String columns) {
        return ColumnChoices.parse(columns)
                .orElseThrow(() -> new Refusal(
                        HttpStatus.BAD_REQUEST,
                        "The address of this page has a slip. Go back to the import and retry."));
    }

    private static String redirect(Upload upload, ColumnChoices choices) {
        String address = "redirect:" + PreviewPage.address(upload);
        return choices.columns().isEmpty() ? address : address + "?columns=" + choices.text();
    }

    private String gone(String code, boolean imported, Member member, Model model, HttpServletResponse response) {
        response.setStatus(HttpStatus.NOT_FOUND.value());
        model.addAttribute(
                "gone",
                imported
                        ? "This table was imported already. To import it once more, give it again."
                        : "This table is no longer here: tables are kept for an hour, and only until the server stops."
                                + " Nothing was imported. Please give it again.");
        return page.give(readings.head(code), member.figures(), model);
    }
}
