package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.PartChoice;
import dev.ledgerwing.web.forms.Shown;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A space that some parts must stay inside.
 *
 * @param code of the bay; null = a new one
 */
record BayForm(@Nullable String code) implements BalanceForm {

    @Override
    public String view() {
        return "balance/bay";
    }

    @Override
    public void show(Build build, Shown fields) {
        Bay bay = Elements.find(build.bays(), code);
        fields.text("name", bay == null ? "" : bay.name())
                .length("fromX", bay == null ? null : bay.fromX())
                .length("toX", bay == null ? null : bay.toX())
                .length("fromY", bay == null ? null : bay.fromY())
                .length("toY", bay == null ? null : bay.toY())
                .length("fromZ", bay == null ? null : bay.fromZ())
                .length("toZ", bay == null ? null : bay.toZ())
                .ticks("holds", bay == null ? List.of() : bay.holds());
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        Bay bay = Elements.find(build.bays(), code);
        Map<String, Object> around = new LinkedHashMap<>();
        around.put("isNew", bay == null);
        around.put("heading", bay == null ? "New bay" : "Bay " + bay.name());
        around.put("parts", PartChoice.groups(build, line -> true));
        return around;
    }

    /** A range along one axis; both ends null where it is not limited. */
    private record Range(@Nullable Length from, @Nullable Length to) {}

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        String name = entries.name("name", "Please name the bay.");
        Range x = range("X", entries);
        Range y = range("Y", entries);
        Range z = range("Z", entries);
        Length front = entries.needed("fromX", x.from(), Length.ZERO, "Please give the front of the bay.");
        Length back = entries.needed("toX", x.to(), Length.ZERO, "Please give the back of the bay.");
        if (!entries.areFine()) {
            return Optional.empty();
        }
        String id = code == null ? Elements.freshCode(name, "bay", seen.bays()) : code;
        Bay wanted = new Bay(
                id,
                name,
                front,
                back,
                y.from(),
                y.to(),
                z.from(),
                z.to(),
                entries.typed().all("holds"));
        String title = "Bay " + name + (Elements.find(seen.bays(), id) == null ? " added" : " edited");
        return Optional.of(Deed.fitting(title, build -> build.withBays(Elements.with(build.bays(), wanted))));
    }

    private static Range range(String axis, Entries entries) {
        String fromField = "from" + axis;
        String toField = "to" + axis;
        Length from = entries.coordinate(fromField);
        Length to = entries.coordinate(toField);
        if (from != null && to != null && from.compareTo(to) >= 0) {
            entries.trouble(fromField, "This side must have the smaller number of the two.");
        } else if (!axis.equals("X") && (from == null) != (to == null)) {
            String missing = from == null ? fromField : toField;
            if (entries.isFine(missing)) {
                entries.trouble(missing, "Please give both sides, or neither.");
            }
        }
        return new Range(from, to);
    }
}
