package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.KeepApart;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.ElementIds;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.PartChoice;
import dev.ledgerwing.web.forms.Shown;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A rule that keeps two parts apart.
 *
 * @param id of the rule; null = a new one
 */
record ApartForm(@Nullable String id, ElementIds ids) implements BalanceForm {

    @Override
    public String view() {
        return "balance/apart";
    }

    @Override
    public void show(Build build, Shown fields) {
        KeepApart rule = Elements.find(build.keepApart(), id);
        fields.text("first", rule == null ? "" : rule.first())
                .text("second", rule == null ? "" : rule.second())
                .length("atLeast", rule == null ? null : rule.atLeast());
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        KeepApart rule = Elements.find(build.keepApart(), id);
        Map<String, Object> around = new LinkedHashMap<>();
        around.put("isNew", rule == null);
        around.put("heading", rule == null ? "New rule: keep two parts apart" : rule.name());
        around.put("lines", PartChoice.list(build));
        return around;
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        String first = part("first", seen, entries);
        String second = part("second", seen, entries);
        if (entries.areFine() && first.equals(second)) {
            entries.trouble("second", "Please choose another part: nothing can be kept apart from itself.");
        }
        Length atLeast = entries.needed(
                "atLeast", entries.extent("atLeast"), Length.ZERO, "Please give how far apart they must be.");
        if (!entries.areFine()) {
            return Optional.empty();
        }
        String name = shortened(PartChoice.name(seen, first)) + " from " + shortened(PartChoice.name(seen, second));
        KeepApart wanted = new KeepApart(id == null ? ids.next() : id, name, first, second, atLeast);
        boolean isThere = Elements.find(seen.keepApart(), wanted.id()) != null;
        return Optional.of(Deed.fitting(
                "Rule to keep " + name + (isThere ? " edited" : " added"),
                build -> build.withKeepApart(Elements.with(build.keepApart(), wanted))));
    }

    private static String part(String field, Build seen, Entries entries) {
        String chosen = entries.typed().text(field);
        if (seen.line(chosen).isEmpty()) {
            entries.trouble(field, "Please choose a part.");
        }
        return chosen;
    }

    /** Two names and a word between them fit into one. */
    private static String shortened(String name) {
        return name.length() <= 90 ? name : name.substring(0, 89) + "…";
    }
}
