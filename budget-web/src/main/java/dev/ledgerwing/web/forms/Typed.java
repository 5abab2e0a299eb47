package dev.ledgerwing.web.forms;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.util.MultiValueMap;

/**
 * What stands in the fields of a form, as text. Fields of a list are called {@code list.0.field}, {@code list.1.field} and so on.
 *
 * @param texts by the names of the fields; several where several boxes are ticked, none where a field is not there
 */
public record Typed(Map<String, List<String>> texts) {

    /** More rows than the record holds anywhere; what goes beyond was not sent by a page of ours. */
    private static final int MOST_ROWS = 60;

    private static final String GONE = ".gone";
    private static final Pattern OF_A_ROW = Pattern.compile("(.+?)\\.\\d{1,2}\\..+");

    public Typed {
        texts = Map.copyOf(texts);
    }

    public static Typed of(MultiValueMap<String, String> sent) {
        Map<String, List<String>> texts = new HashMap<>();
        sent.forEach((field, values) ->
                texts.put(field, values.stream().map(Typed::asShown).toList()));
        return new Typed(texts);
    }

    /** Browsers send two characters for the end of a line; what was left untouched must still be what was shown. */
    private static String asShown(@Nullable String sent) {
        return sent == null ? "" : sent.replace("\r\n", "\n");
    }

    /** What stands in a field, without surrounding space; empty where nothing does. */
    public String text(String field) {
        List<String> all = all(field);
        return all.isEmpty() ? "" : all.get(0).strip();
    }

    public List<String> all(String field) {
        return texts.getOrDefault(field, List.of());
    }

    /** Whether a box is ticked, or that value of it. */
    public boolean isTicked(String field) {
        return !all(field).isEmpty();
    }

    public boolean isTicked(String field, String value) {
        return all(field).contains(value);
    }

    /** How many rows a list has, counting those in between that are missing. */
    public int rows(String list) {
        return texts.keySet().stream()
                .mapToInt(field -> rowOf(field, list) + 1)
                .max()
                .orElse(0);
    }

    /** Whether nothing was typed in any of these fields of a row. */
    public boolean isBlank(String row, List<String> fields) {
        return fields.stream().allMatch(field -> text(row + "." + field).isEmpty());
    }

    /** With one more empty row at the end of a list. */
    public Typed withRow(String list) {
        return withRow(list, "new", "");
    }

    /** With one more row at the end of a list, of which one field is filled in. */
    public Typed withRow(String list, String field, String text) {
        int rows = rows(list);
        return rows >= MOST_ROWS ? this : with(list + "." + rows + "." + field, text);
    }

    /** With a row and the one behind it in each other's place. */
    public Typed withRowsSwapped(String list, int earlier) {
        if (earlier < 0 || earlier + 1 >= rows(list)) {
            return this;
        }
        Map<String, List<String>> changed = new HashMap<>();
        texts.forEach((field, values) -> {
            int row = rowOf(field, list);
            int other = row == earlier ? earlier + 1 : row == earlier + 1 ? earlier : row;
            changed.put(other == row ? field : inRow(field, list, other), values);
        });
        return new Typed(changed);
    }

    private static String inRow(String field, String list, int row) {
        return list + "." + row + field.substring(field.indexOf('.', list.length() + 1));
    }

    /** Without one row of a list; those behind it move up. The code of an element that stood in it is kept as {@code list.gone}. */
    public Typed withoutRow(String list, int removed) {
        String code = text(list + "." + removed + ".code");
        Typed left = withoutFields(list, removed);
        return code.isEmpty() ? left : left.withMore(list + GONE, code);
    }

    /** The codes of the elements whose rows were taken out of a list. */
    public List<String> gone(String list) {
        return all(list + GONE);
    }

    private Typed withMore(String field, String text) {
        Map<String, List<String>> changed = new HashMap<>(texts);
        List<String> all = new ArrayList<>(all(field));
        all.add(text);
        changed.put(field, all);
        return new Typed(changed);
    }

    private Typed withoutFields(String list, int removed) {
        Map<String, List<String>> changed = new HashMap<>();
        texts.forEach((field, values) -> {
            int row = rowOf(field, list);
            if (row < 0 || row < removed) {
                changed.put(field, values);
            } else if (row > removed) {
                changed.put(inRow(field, list, row - 1), values);
            }
        });
        return new Typed(changed);
    }

    /** The row of a list that a field belongs to; -1 = it is not of that list. */
    private static int rowOf(String field, String list) {
        int end = field.startsWith(list + ".") ? field.indexOf('.', list.length() + 1) : -1;
        if (end < 0) {
            return -1;
        }
        String number = field.substring(list.length() + 1, end);
        int row = number.matches("\\d{1,2}") ? Integer.parseInt(number) : -1;
        return row < MOST_ROWS ? row : -1;
    }

    /**
     * What was typed, on top of what others have stored since: a field left as {@code base} showed it takes what {@code head}
     * shows. Rows stay together: a list in which anything was typed stays as it was typed, or its rows would be mixed up.
     */
    Typed onTopOf(Typed base, Typed head) {
        Set<String> fields = new HashSet<>(texts.keySet());
        fields.addAll(base.texts.keySet());
        fields.addAll(head.texts.keySet());
        Map<String, List<String>> both = new HashMap<>();
        Set<String> changedLists = changedLists(fields, base);
        for (String field : fields) {
            boolean untouched = all(field).equals(base.all(field)) && !changedLists.contains(listOf(field));
            both.put(field, new ArrayList<>(untouched ? head.all(field) : all(field)));
        }
        both.values().removeIf(List::isEmpty);
        return new Typed(both);
    }

    private Set<String> changedLists(Set<String> fields, Typed base) {
        return fields.stream()
                .filter(field -> !all(field).equals(base.all(field)))
                .map(Typed::listOf)
                .filter(list -> !list.isEmpty())
                .collect(Collectors.toSet());
    }

    /** The list that a field belongs to; empty where it is in none. */
    private static String listOf(String field) {
        Matcher row = OF_A_ROW.matcher(field);
        return row.matches() ? row.group(1) : "";
    }

    Typed with(String field, String text) {
        Map<String, List<String>> changed = new HashMap<>(texts);
        changed.put(field, List.of(text));
        return new Typed(changed);
    }
}
