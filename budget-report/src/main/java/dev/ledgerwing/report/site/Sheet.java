package dev.ledgerwing.report.site;

import dev.ledgerwing.report.sheet.PageLink;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The sheets of each airframe of the site, in the order they are listed. */
enum Sheet {
    BUILD("build sheet", "Build sheet"),
    BALANCE("balance sheet", "Mass and balance sheet"),
    POWER("power sheet", "Power sheet");

    private final String words;
    private final String title;

    Sheet(String words, String title) {
        this.words = words;
        this.title = title;
    }

    /** Name of its file; never one of another file of the site, whatever the airframe's code. */
    String fileName(String code, String ending) {
        return code + "-" + name().toLowerCase(Locale.ROOT) + "." + ending;
    }

    SheetLinks links(String code, boolean withPdf) {
        return new SheetLinks(words, fileName(code, "html"), withPdf ? fileName(code, "pdf") : null);
    }

    /** The ways from this sheet of an airframe to the fleet and to its other sheets. */
    List<PageLink> ways(String code, String index) {
        return Stream.concat(
                        Stream.of(new PageLink(index, "Fleet")),
                        Arrays.stream(values())
                                .filter(other -> other != this)
                                .map(other -> new PageLink(other.fileName(code, "html"), other.title)))
                .toList();
    }
}
