package dev.ledgerwing.web.tables;

import java.util.regex.Pattern;

/** Makes the name of a file that somebody sends fit for a sentence. */
final class FileName {

    private static final int LONGEST = 80;
    private static final Pattern FOLDERS = Pattern.compile("^.*[/\\\\]", Pattern.DOTALL);
    private static final Pattern UNSEEN = Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Cs}\\p{Cn}\\p{Zl}\\p{Zp}]");

    private FileName() {}

    /** The name without folders and without what cannot be seen; empty where nothing is left. */
    static String of(String sent) {
        String bare = FOLDERS.matcher(sent).replaceFirst("");
        String seen = UNSEEN.matcher(bare).replaceAll("").strip();
        return Excerpt.of(seen, LONGEST);
    }
}
