package dev.ledgerwing.report.site;

import dev.ledgerwing.report.sheet.PageStyles;
import dev.ledgerwing.report.sheet.PaperFiles;
import dev.ledgerwing.report.sheet.PrintedSheet;
import dev.ledgerwing.report.sheet.SheetRenderer;
import dev.ledgerwing.report.sheet.SheetTemplates;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Makes the files of a static site: {@code index.html}, the sheets of each airframe, and the style sheets and fonts they need. */
public final class StaticSite {

    private static final PageStyles STYLES = PageStyles.inFolder(PaperFiles.FOLDER);
    private static final String INDEX = "index.html";

    private final SheetTemplates templates = new SheetTemplates();
    private final SheetRenderer sheets = new SheetRenderer();

    /** The site of these airframes, no two with the same code; the same airframes give the same bytes. */
    public List<SiteFile> files(List<SiteAirframe> airframes, boolean withPdf) {
        List<SiteFile> files = new ArrayList<>();
        files.add(index(FleetPage.of(airframes, withPdf)));
        airframes.forEach(airframe -> files.addAll(sheets(airframe, withPdf)));
        PaperFiles.FOR_BROWSERS.forEach(
                path -> files.add(new SiteFile(PaperFiles.FOLDER + path, PaperFiles.bytes(path))));
        return files;
    }

    private List<SiteFile> sheets(SiteAirframe airframe, boolean withPdf) {
        String code = airframe.code();
        List<SiteFile> files = new ArrayList<>();
        for (Sheet kind : Sheet.values()) {
            PrintedSheet sheet = kind.of(airframe);
            files.add(page(kind.fileName(code, "html"), sheets.html(sheet, STYLES, kind.ways(code, INDEX))));
            if (withPdf) {
                files.add(new SiteFile(kind.fileName(code, "pdf"), sheets.pdf(sheet)));
            }
        }
        return files;
    }

    private SiteFile index(FleetPage fleet) {
        Map<String, Object> values = Map.of("fleet", fleet, "styles", STYLES);
        return page(INDEX, templates.fill("sheets/fleet", values));
    }

    private static SiteFile page(String path, String html) {
        return new SiteFile(path, html.getBytes(StandardCharsets.UTF_8));
    }
}
