package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Assembly.MovesWith;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Finds the assembly that goes by a name, or adds it with a code made from the name. */
final class AssemblyCodes {

    private static final WordList<MovesWith> MOVERS = WordList.load("mover-words.txt", MovesWith.class);
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern OTHERS = Pattern.compile("[^a-z0-9]+");
    private static final Pattern EDGE_HYPHENS = Pattern.compile("^-+|-+$");
    private static final Pattern SPACE = Pattern.compile(" ");
    private static final int LONGEST_CODE = 40;
    private static final int ROOM_FOR_NUMBER = 6;

    private final List<Assembly> assemblies;
    private final Map<String, String> codeByName = new HashMap<>();
    private final Set<String> taken = new HashSet<>();

    AssemblyCodes(List<Assembly> existing) {
        this.assemblies = new ArrayList<>(existing);
        existing.forEach(assembly -> taken.add(assembly.code()));
        existing.forEach(assembly -> codeByName.putIfAbsent(key(assembly.name()), assembly.code()));
        taken.forEach(code -> codeByName.putIfAbsent(code, code));
    }

    /** The code of the assembly called {@code name}, upper and lower case alike. */
    String codeFor(String name) {
        return codeByName.computeIfAbsent(key(name), key -> add(name));
    }

    List<Assembly> all() {
        return List.copyOf(assemblies);
    }

    private String add(String name) {
        String slug = slug(name);
        String code = slug;
        for (int number = 2; !taken.add(code); number++) {
            code = slug.substring(0, Math.min(slug.length(), LONGEST_CODE - ROOM_FOR_NUMBER)) + "-" + number;
        }
        assemblies.add(new Assembly(code, name, mover(name)));
        return code;
    }

    static String slug(String name) {
        String spelt = name.toLowerCase(Locale.ROOT)
                .replace("ä", "ae")
                .replace("ö", "oe")
                .replace("ü", "ue")
                .replace("ß", "ss");
        String bare =
                MARKS.matcher(Normalizer.normalize(spelt, Normalizer.Form.NFD)).replaceAll("");
        String hyphens = trimmed(OTHERS.matcher(bare).replaceAll("-"));
        String slug = trimmed(hyphens.substring(0, Math.min(hyphens.length(), LONGEST_CODE)));
        return slug.isEmpty() ? "assembly" : slug;
    }

    private static String trimmed(String text) {
        return EDGE_HYPHENS.matcher(text).replaceAll("");
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    /** What the whole name says, else its first telling word; what says nothing sits in the fuselage. */
    private static MovesWith mover(String name) {
        return MOVERS.meaning(name)
                .orElseGet(() -> SPACE.splitAsStream(Words.plain(name))
                        .flatMap(word -> MOVERS.meaning(word).stream())
                        .findFirst()
                        .orElse(MovesWith.FUSELAGE));
    }
}
