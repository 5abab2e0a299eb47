package dev.ledgerwing.core.file.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What one heading says: {@code Mass [g]}, {@code Weight (oz)}, {@code unit mass / kg}, {@code Each, g}, {@code mass_g}.
 *
 * @param text as written
 * @param meaning null = not understood
 * @param rank how clearly it says so, smaller is clearer
 * @param unit symbol of its unit; null = none given
 * @param strangeUnit what stands where the unit belongs and is none; null = nothing
 */
record HeaderCell(
        String text,
        @Nullable Meaning meaning,
        int rank,
        @Nullable String unit,
        @Nullable String strangeUnit) {

    private static final WordList<Meaning> WORDS = WordList.load("header-words.txt", Meaning.class);
    private static final Pattern BRACKETS = Pattern.compile("[\\[({<]([^\\[\\](){}<>]*)[\\])}>]");
    private static final Pattern LAST_WORD = Pattern.compile("(.*[^/,_\\s])([/,_\\s]+)([^/,_\\s]+)", Pattern.DOTALL);
    private static final Pattern CLOSING_IN = Pattern.compile("\\s(?:in|im)$", Pattern.CASE_INSENSITIVE);
    private static final int LONGEST = 200;

    /** A heading cut into its words and what may be its unit; {@code marked} where brackets or a slash say that it is one. */
    private record Cut(String words, String unit, boolean marked) {}

    static HeaderCell of(String text) {
        if (text.length() > LONGEST) {
            return new HeaderCell(text, null, 0, null, null);
        }
        List<Cut> cuts = cuts(text);
        return cuts.stream()
                .flatMap(cut -> withUnit(text, cut).stream())
                .findFirst()
                .or(() -> known(text, text, null, null))
                .or(() -> cuts.stream()
                        .filter(Cut::marked)
                        .flatMap(cut -> withStrangeUnit(text, cut).stream())
                        .findFirst())
                .orElseGet(() -> new HeaderCell(text, null, 0, null, null));
    }

    /** Whether it says that the column is one to read. */
    boolean isUnderstood() {
        return meaning != null && meaning != Meaning.IGNORED;
    }

    private static List<Cut> cuts(String text) {
        List<Cut> cuts = new ArrayList<>();
        Matcher brackets = BRACKETS.matcher(text);
        while (brackets.find()) {
            String outside = text.substring(0, brackets.start()) + " " + text.substring(brackets.end());
            cuts.add(new Cut(outside, brackets.group(1), true));
        }
        Matcher last = LAST_WORD.matcher(text);
        if (cuts.isEmpty() && last.matches()) {
            String words = CLOSING_IN.matcher(last.group(1)).replaceFirst("");
            cuts.add(new Cut(words, last.group(3), last.group(2).indexOf('/') >= 0));
        }
        return cuts;
    }

    private static Optional<HeaderCell> withUnit(String text, Cut cut) {
        return WORDS.meaning(cut.words)
                .flatMap(meaning -> meaning.unit(cut.unit))
                .flatMap(unit -> known(text, cut.words, unit, null));
    }

    private static Optional<HeaderCell> withStrangeUnit(String text, Cut cut) {
        boolean counts = WORDS.meaning(cut.words).filter(Meaning::hasUnit).isPresent();
        return known(text, cut.words, null, counts && !cut.unit.isBlank() ? cut.unit.strip() : null);
    }

    private static Optional<HeaderCell> known(
            String text, String words, @Nullable String unit, @Nullable String strangeUnit) {
        return WORDS.entry(words)
                .map(entry -> new HeaderCell(
                        text, entry.means(), entry.means() == Meaning.NAME ? entry.rank() : 0, unit, strangeUnit));
    }
}
