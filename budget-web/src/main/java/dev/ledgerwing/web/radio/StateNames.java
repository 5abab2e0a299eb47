package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.StateRenaming;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * The states of a function as typed, beside those it had. As many new names as old ones are gone: each takes the place of the one
 * that stood there. Otherwise it cannot be told which state has got which name.
 *
 * @param gone those that are not there any more
 * @param fresh those that were not there before
 */
record StateNames(List<String> typed, List<String> gone, List<String> fresh) {

    private static final Pattern LINES = Pattern.compile("\\R");

    static StateNames of(String text, List<String> had) {
        List<String> typed = split(text);
        return new StateNames(
                typed,
                had.stream().filter(state -> !typed.contains(state)).toList(),
                typed.stream().filter(state -> !had.contains(state)).toList());
    }

    /** One name a line, or all on one line with commas; names in lines of their own may have commas in them. */
    static List<String> split(String text) {
        String separator = LINES.matcher(text).find() ? "\\R" : ",";
        return Arrays.stream(text.split(separator, -1))
                .map(String::strip)
                .filter(state -> !state.isEmpty())
                .toList();
    }

    /** How they are shown so that {@link #split} reads them again. */
    static String joined(List<String> states) {
        return String.join("\n", states);
    }

    boolean areOnlyRenamed() {
        return gone.size() == fresh.size();
    }

    StateRenaming renaming() {
        if (!areOnlyRenamed() || gone.isEmpty()) {
            return StateRenaming.NONE;
        }
        Map<String, String> names = new LinkedHashMap<>();
        for (int i = 0; i < gone.size(); i++) {
            names.put(gone.get(i), fresh.get(i));
        }
        return new StateRenaming(names);
    }
}
