package dev.ledgerwing.report.sheet;

import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Addresses of the style sheets of a page.
 *
 * @param sheet how it is printed
 * @param screen what a browser's screen has on top of that; null = none
 * @param pdf what the PDF renderer has on top of that; null = none
 */
public record PageStyles(
        String sheet, @Nullable String screen, @Nullable String pdf) {

    /** For a browser, with the paper files in the folder at {@code address}, which ends in a slash. */
    public static PageStyles inFolder(String address) {
        return at(path -> address + path);
    }

    /** For a browser, each of the {@link PaperFiles} at the address that {@code address} gives for its path. */
    public static PageStyles at(UnaryOperator<String> address) {
        return new PageStyles(address.apply("sheet.css"), address.apply("screen.css"), null);
    }

    static PageStyles forPdf(String folder) {
        return new PageStyles(folder + "sheet.css", null, folder + "pdf.css");
    }
}
