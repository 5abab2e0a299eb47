package dev.ledgerwing.web.forms;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rows of things that are aboard, or on the scales, and are no part of the build. */
public final class ExtraFields {

    private static final String LIST = "extra";
    private static final List<String> FIELDS = List.of("name", "mass", "x", "y", "z");

    private ExtraFields() {}

    public static void show(List<ExtraItem> items, Shown fields) {
        for (int i = 0; i < items.size(); i++) {
            ExtraItem item = items.get(i);
            String row = LIST + "." + i;
            fields.text(row + ".name", item.name())
                    .mass(row + ".mass", item.mass())
                    .text(row + ".basis", item.basis().name())
                    .station(row, item.station());
        }
    }

    /** The items as typed; {@code unless} is the basis of a row that gives none. */
    public static List<ExtraItem> items(Entries entries, Basis unless) {
        List<ExtraItem> items = new ArrayList<>();
        for (int i = 0; i < entries.typed().rows(LIST); i++) {
            String row = LIST + "." + i;
            if (!entries.typed().isBlank(row, FIELDS)) {
                String name = entries.name(row + ".name", "Please name it.");
                Mass mass = entries.mass(row + ".mass");
                Basis basis = entries.typed().text(row + ".basis").isEmpty()
                        ? unless
                        : entries.choice(row + ".basis", Basis.values());
                Station station = entries.station(row);
                if (entries.areFine()) {
                    items.add(new ExtraItem(name, mass, basis, station));
                }
            }
        }
        return items;
    }

    public static Map<String, String> bases() {
        Map<String, String> bases = new LinkedHashMap<>();
        for (Basis basis : Basis.values()) {
            bases.put(basis.name(), basis.word());
        }
        return bases;
    }
}
