package dev.ledgerwing.web.tables;

import dev.ledgerwing.core.file.table.PartsTable;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Snapshot;
import java.nio.charset.StandardCharsets;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** Gives the parts out as a table that the import reads back. */
@Controller
class ExportController {

    private static final MediaType CSV = new MediaType("text", "csv", StandardCharsets.UTF_8);

    private final Readings readings;

    ExportController(Readings readings) {
        this.readings = readings;
    }

    @GetMapping("/airframes/{code}/parts.csv")
    ResponseEntity<byte[]> table(@PathVariable String code) {
        Snapshot head = readings.head(code);
        String name = head.build().airframe().code() + "-parts-revision-"
                + head.revision().number() + ".csv";
        return ResponseEntity.ok()
                .contentType(CSV)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename(name).build().toString())
                .body(PartsTable.write(head.build()));
    }
}
