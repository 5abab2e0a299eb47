package dev.ledgerwing.report.sheet;

import java.util.HashMap;
import java.util.Map;

/**
 * Makes pages of sheets: HTML for a browser, PDF for paper. Safe for use by several threads; make one and keep it.
 *
 * <p>An HTML page links to the style sheets and fonts of {@link PaperFiles}. In a web server that serves the class path folder
 * {@code META-INF/resources} they are at {@code /paper/}.
 */
public final class SheetRenderer {

    private final SheetTemplates templates = new SheetTemplates();
    private final SheetPdf pdf = new SheetPdf();

    /**
     * The sheet as an HTML page.
     *
     * @param paper address of the folder with the style sheets, ending in a slash: {@code /paper/}
     */
    public String html(BuildSheet sheet, String paper) {
        return html(sheet, Map.of("paper", paper, "pdf", false));
    }

    /** The same with a way back to the page at {@code home}. */
    public String html(BuildSheet sheet, String paper, String home) {
        return html(sheet, Map.of("paper", paper, "pdf", false, "home", home));
    }

    /** The sheet as a PDF file, A4; equal sheets give equal bytes. */
    public byte[] pdf(BuildSheet sheet) {
        return pdf.of(html(sheet, Map.of("paper", PaperFiles.FOLDER, "pdf", true)));
    }

    private String html(BuildSheet sheet, Map<String, Object> place) {
        Map<String, Object> values = new HashMap<>(place);
        values.put("sheet", sheet);
        return templates.fill("sheets/build", values);
    }
}
