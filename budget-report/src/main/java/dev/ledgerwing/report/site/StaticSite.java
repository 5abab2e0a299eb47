package dev.ledgerwing.report.site;

import dev.ledgerwing.report.sheet.BuildSheet;
import dev.ledgerwing.report.sheet.PageStyles;
import dev.ledgerwing.report.sheet.PaperFiles;
import dev.ledgerwing.report.sheet.SheetRenderer;
import dev.ledgerwing.report.sheet.SheetTemplates;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Makes the files of a static site: {@code index.html}, a build sheet for each airframe, and the style sheets and fonts they need. */
public final class StaticSite {

    private static final PageStyles STYLES = PageStyles.inFolder(PaperFiles.FOLDER);
    private static final String INDEX = "index.html";

    private final SheetTemplates templates = new SheetTemplates();
    private final SheetRenderer sheets = new SheetRenderer();

    /** The site of these airframes, no two with the same code; the same airframes give the same bytes. */
    public List<SiteFile> files(List<SiteAirframe> airframes, boolean withPdf) {
        List<SiteFile> files = new ArrayList<>();
        files.add(index(FleetPage.of(airframes, withPdf)));
        for (SiteAirframe airframe : airframes) {
            BuildSheet sheet = BuildSheet.of(airframe.review(), airframe.head());
            files.add(page(sheetName(airframe.code(), "html"), sheets.html(sheet, STYLES, INDEX)));
            if (withPdf) {
                files.add(new SiteFile(sheetName(airframe.code(), "pdf"), sheets.pdf(sheet)));
            }
        }
        PaperFiles.FOR_BROWSERS.forEach(
                path -> files.add(new SiteFile(PaperFiles.FOLDER + path, PaperFiles.bytes(path))));
        return files;
    }

    /** File name of a build sheet; never one of another file of the site, whatever the airframe's code. */
    static String sheetName(String code, String ending) {
        return code + "-build." + ending;
    }

    private SiteFile index(FleetPage fleet) {
        Map<String, Object> values = Map.of("fleet", fleet, "styles", STYLES);
        return page(INDEX, templates.fill("sheets/fleet", values));
    }

    private static SiteFile page(String path, String html) {
        return new SiteFile(path, html.getBytes(StandardCharsets.UTF_8));
    }
}
