package dev.ledgerwing.web.forms;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.util.MultiValueMap;

/**
 * What stands in the fields of a form, as text. Fields of a list are called {@code list.0.field}, {@code list.1.field} and so on.
 *
 * @param texts by the names of the fields; several where several boxes are ticked, none where a field is not there
 */
public record Typed(Map<String, List<String>> texts) {

    /** More rows than the record holds anywhere; what goes beyond was not sent by a page of ours. */
    private static final int MOST_ROWS = 60;

    public Typed {
        texts = Map.copyOf(texts);
    }

    public static Typed of(MultiValueMap<String, String> sent) {
        Map<String, List<String>> texts = new HashMap<>();
        sent.forEach((field, values) -> texts.put(
                field, values.stream().map(each -> each == null ? "" : each).toList()));
        return new Typed(texts);
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
        int rows = rows(list);
        if (rows >= MOST_ROWS) {
            return this;
        }
        Map<String, List<String>> changed = new HashMap<>(texts);
        changed.put(list + "." + rows + ".new", List.of(""));
        return new Typed(changed);
    }

    /** Without one row of a list; those behind it move up. */
    public Typed withoutRow(String list, int removed) {
        Map<String, List<String>> changed = new HashMap<>();
        texts.forEach((field, values) -> {
            int row = rowOf(field, list);
            if (row < 0 || row < removed) {
                changed.put(field, values);
            } else if (row > removed) {
                changed.put(list + "." + (row - 1) + field.substring(field.indexOf('.', list.length() + 1)), values);
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

    /** What was typed, on top of what others have stored since: a field left as {@code base} showed it takes what {@code head} shows. */
    Typed onTopOf(Typed base, Typed head) {
        Set<String> fields = new HashSet<>(texts.keySet());
        fields.addAll(base.texts.keySet());
        fields.addAll(head.texts.keySet());
        Map<String, List<String>> both = new HashMap<>();
        for (String field : fields) {
            List<String> stand = all(field).equals(base.all(field)) ? head.all(field) : all(field);
            both.put(field, new ArrayList<>(stand));
        }
        both.values().removeIf(List::isEmpty);
        return new Typed(both);
    }

    Typed with(String field, String text) {
        Map<String, List<String>> changed = new HashMap<>(texts);
        changed.put(field, List.of(text));
        return new Typed(changed);
    }
}
