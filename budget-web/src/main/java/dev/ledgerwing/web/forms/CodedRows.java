package dev.ledgerwing.web.forms;

import dev.ledgerwing.core.build.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Rows of elements that are edited together. A code is made of the first name and stays when the name changes; an element goes
 * only if its row was taken out, so whatever was not in the form stays.
 *
 * @param list the list that the rows belong to
 * @param seen the elements of the record that the form was made from
 */
public record CodedRows<E extends Element>(String list, Typed typed, List<E> seen) {

    private static final Pattern CODE = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");

    public int count() {
        return typed.rows(list);
    }

    public String row(int index) {
        return list + "." + index;
    }

    /** The code of each row; empty for one without a name yet. */
    public List<String> codes() {
        List<String> codes = new ArrayList<>();
        for (int i = 0; i < count(); i++) {
            String given = typed.text(row(i) + ".code");
            boolean known = CODE.matcher(given).matches() || Elements.find(seen, given) != null;
            codes.add(known && !codes.contains(given) ? given : "");
        }
        for (int i = 0; i < count(); i++) {
            String name = typed.text(row(i) + ".name");
            if (codes.get(i).isEmpty() && !name.isEmpty()) {
                codes.set(i, fresh(name, codes));
            }
        }
        return codes;
    }

    private String fresh(String name, List<String> taken) {
        String code = Elements.freshCode(name, list, seen);
        for (int i = 2; taken.contains(code); i++) {
            code = Elements.freshCode(name + " " + i, list, seen);
        }
        return code;
    }

    /** The elements whose rows were taken out. */
    public List<E> gone() {
        List<String> gone = typed.gone(list);
        List<String> codes = codes();
        return seen.stream()
                .filter(each -> gone.contains(each.id()) && !codes.contains(each.id()))
                .toList();
    }

    public List<String> goneCodes() {
        return gone().stream().map(Element::id).toList();
    }

    /** The elements as typed, and behind them those that were not in the form. */
    public List<E> withOthers(List<E> wanted) {
        List<E> all = new ArrayList<>(wanted);
        List<String> gone = goneCodes();
        seen.stream()
                .filter(each -> !gone.contains(each.id()) && Elements.find(wanted, each.id()) == null)
                .forEach(all::add);
        return all;
    }
}
