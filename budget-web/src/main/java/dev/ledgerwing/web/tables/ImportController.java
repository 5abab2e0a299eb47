package dev.ledgerwing.web.tables;

import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.team.Member;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/** Takes a parts table, as a file or as rows pasted from a spreadsheet. Nothing is stored in the airframe yet. */
@Controller
@RequestMapping("/airframes/{code}/import")
class ImportController {

    private static final String PASTED = "pasted rows";

    private final Readings readings;
    private final Uploads uploads;
    private final PreviewPage page;

    ImportController(Readings readings, Uploads uploads, PreviewPage page) {
        this.readings = readings;
        this.uploads = uploads;
        this.page = page;
    }

    @GetMapping
    String show(@PathVariable String code, Member member, Model model) {
        return page.give(readings.head(code), member.figures(), model);
    }

    @PostMapping(consumes = MediaType.MULTIPART_FORM_DATA_VALUE)
    String take(
            @PathVariable String code,
            @RequestParam(required = false) @Nullable MultipartFile file,
            Member member,
            Model model,
            HttpServletResponse response)
            throws IOException {
        String name = file == null ? "" : FileName.of(Objects.requireNonNullElse(file.getOriginalFilename(), ""));
        if (file == null || (name.isEmpty() && file.isEmpty())) {
            model.addAttribute("fileProblem", "Please choose a file.");
            return refused(readings.head(code), member, model, response);
        }
        Upload upload = new Upload(code, name.isEmpty() ? "a file" : name, file.getBytes());
        return taken(upload, "fileProblem", member, model, response);
    }

    @PostMapping
    String takeRows(
            @PathVariable String code,
            @RequestParam(defaultValue = "") String rows,
            Member member,
            Model model,
            HttpServletResponse response) {
        model.addAttribute("rows", rows);
        if (rows.isBlank()) {
            model.addAttribute("rowsProblem", "Please paste the rows, with the row of headings.");
            return refused(readings.head(code), member, model, response);
        }
        Upload upload = new Upload(code, PASTED, rows.getBytes(StandardCharsets.UTF_8));
        return taken(upload, "rowsProblem", member, model, response);
    }

    private String taken(Upload upload, String field, Member member, Model model, HttpServletResponse response) {
        Snapshot head = readings.head(upload.airframe());
        Optional<String> trouble = ReadTable.hopeless(upload.bytes());
        if (trouble.isPresent()) {
            model.addAttribute(field, trouble.get());
            return refused(head, member, model, response);
        }
        uploads.keep(upload, member);
        return "redirect:" + PreviewPage.address(upload);
    }

    private String refused(Snapshot head, Member member, Model model, HttpServletResponse response) {
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return page.give(head, member.figures(), model);
    }
}
