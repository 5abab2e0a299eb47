package dev.ledgerwing.report.sheet;

import java.util.List;
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
    public String html(PrintedSheet sheet, PageStyles styles) {
        return html(sheet, styles, List.of());
    }

    /** The same with ways to other pages. */
    public String html(PrintedSheet sheet, PageStyles styles, List<PageLink> links) {
        return templates.fill(sheet.template(), Map.of("sheet", sheet, "styles", styles, "links", links));
    }

    /** The sheet as a PDF file, A4; equal sheets give equal bytes. */
    public byte[] pdf(PrintedSheet sheet) {
        return pdf.of(html(sheet, PageStyles.forPdf(PaperFiles.FOLDER)));
    }
}
