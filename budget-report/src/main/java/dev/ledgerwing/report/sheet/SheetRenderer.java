package dev.ledgerwing.report.sheet;

import java.util.HashMap;
import java.util.Map;

/**
 * Makes pages of sheets: HTML for a browser, PDF for paper. Safe for use by several threads; make one and keep it.
 *
 * <p>An HTML page links to the style sheets and fonts of {@link PaperFiles}. In a web server that serves the class path folder
 * {@code META-INF/resources} they are at {@code /paper/}. Who lets browsers keep them gives them addresses that change with their
 * content: {@link PageStyles#at}.
 */
public final class SheetRenderer {

    private final SheetTemplates templates = new SheetTemplates();
    private final SheetPdf pdf = new SheetPdf();

    /** The sheet as an HTML page. */
    public String html(BuildSheet sheet, PageStyles styles) {
        return html(sheet, Map.of("styles", styles));
    }

    /** The same with a way back to the page at {@code home}. */
    public String html(BuildSheet sheet, PageStyles styles, String home) {
        return html(sheet, Map.of("styles", styles, "home", home));
    }

    /** The sheet as a PDF file, A4; equal sheets give equal bytes. */
    public byte[] pdf(BuildSheet sheet) {
        return pdf.of(html(sheet, PageStyles.forPdf(PaperFiles.FOLDER)));
    }

    private String html(BuildSheet sheet, Map<String, Object> place) {
        Map<String, Object> values = new HashMap<>(place);
        values.put("sheet", sheet);
        return templates.fill("sheets/build", values);
    }
}
