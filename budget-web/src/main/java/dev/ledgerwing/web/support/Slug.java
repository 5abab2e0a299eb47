package dev.ledgerwing.web.support;

import java.text.Normalizer;
import java.util.Locale;

/** Makes a code for addresses and files out of a name. */
public final class Slug {

    private Slug() {}

    /** Lower-case letters, digits and hyphens, at most {@code longest}; empty where the name has none to give. */
    public static String of(String name, int longest) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", "-");
        String cut = plain.startsWith("-") ? plain.substring(1) : plain;
        return cut.substring(0, Math.min(longest, cut.length())).replaceAll("-$", "");
    }
}
