package dev.ledgerwing.core.file.table;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** How words of a table are compared: without case, with every run of punctuation and space as one space. */
final class Words {

    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}\\p{M}#∑]+");

    private Words() {}

    static String plain(String text) {
        String lower = Normalizer.normalize(text, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
        return BETWEEN.matcher(lower).replaceAll(" ").strip();
    }
}
