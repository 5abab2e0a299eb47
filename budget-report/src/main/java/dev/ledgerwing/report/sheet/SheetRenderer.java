package dev.ledgerwing.report.sheet;

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
        return html(sheet, paper, false);
    }

    /** The sheet as a PDF file, A4; equal sheets give equal bytes. */
    public byte[] pdf(BuildSheet sheet) {
        return pdf.of(html(sheet, PaperFiles.FOLDER, true));
    }

    private String html(BuildSheet sheet, String paper, boolean forPdf) {
        return templates.fill("sheets/build", Map.of("sheet", sheet, "paper", paper, "pdf", forPdf));
    }
}
