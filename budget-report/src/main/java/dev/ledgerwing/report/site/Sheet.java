package dev.ledgerwing.report.site;

import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.report.sheet.BalanceSheet;
import dev.ledgerwing.report.sheet.BuildSheet;
import dev.ledgerwing.report.sheet.OutputSheet;
import dev.ledgerwing.report.sheet.PageLink;
import dev.ledgerwing.report.sheet.PowerSheet;
import dev.ledgerwing.report.sheet.PrintedSheet;
import dev.ledgerwing.report.sheet.RadioSheet;
import dev.ledgerwing.report.sheet.SheetHead;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/** The sheets of each airframe of the site, in the order they are listed. */
enum Sheet {
    BUILD("build sheet", "Build sheet", BuildSheet::of),
    BALANCE("balance sheet", "Mass and balance sheet", BalanceSheet::of),
    POWER("power sheet", "Power sheet", PowerSheet::of),
    RADIO("radio sheet", "Radio sheet", RadioSheet::of),
    OUTPUTS("outputs sheet", "Wiring and outputs sheet", OutputSheet::of);

    private final String words;
    private final String title;
    private final BiFunction<BuildReview, SheetHead, PrintedSheet> made;

    Sheet(String words, String title, BiFunction<BuildReview, SheetHead, PrintedSheet> made) {
        this.words = words;
        this.title = title;
        this.made = made;
    }

    PrintedSheet of(SiteAirframe airframe) {
        return made.apply(airframe.review(), airframe.head());
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
