package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What parts need of the flight controller: one of them, or all that are likely to need something.
 *
 * @param line id of the one part; null = all
 */
record NeedsForm(@Nullable String line) implements OutputsForm {

    private static final Set<Category> LIKELY =
            EnumSet.of(Category.PROPULSION, Category.AVIONICS, Category.RADIO, Category.SERVO, Category.PAYLOAD);
    /** More rows than this a form does not hold; some are left to add to. */
    private static final int MOST_ROWS = 50;

    @Override
    public String view() {
        return "outputs/needs";
    }

    @Override
    public void show(Build build, Shown fields) {
        List<PartLine> parts = parts(build);
        for (int i = 0; i < parts.size(); i++) {
            NeedFields.show(parts.get(i), i, fields);
        }
    }

    /** Those that need something before those that might; a part that the form leaves out stays as it is. */
    private List<PartLine> parts(Build build) {
        if (line != null) {
            return build.line(line).stream().toList();
        }
        return build.lines().stream()
                .filter(part -> needsSomething(part) || LIKELY.contains(part.category()))
                .sorted(Comparator.comparing((PartLine part) -> !needsSomething(part)))
                .limit(MOST_ROWS)
                .toList();
    }

    static boolean needsSomething(PartLine part) {
        return !part.needs().equals(PortNeeds.NONE);
    }

    /** Parts that might need something by what they are, and say nothing of it. */
    static List<PartLine> silent(Build build) {
        return build.lines().stream()
                .filter(part -> !needsSomething(part) && LIKELY.contains(part.category()))
                .filter(part -> !part.id().equals(build.outputs().fitted().part()))
                .toList();
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        Map<String, String> names = OutputChoices.names(build.lines());
        Map<String, Object> around = new LinkedHashMap<>();
        around.put("isOne", line != null);
        around.put(
                "heading", line == null ? "What parts need" : names.getOrDefault(line, "A part") + ": what it needs");
        around.put("names", names);
        around.put(
                "pieces",
                build.lines().stream()
                        .collect(LinkedHashMap::new, (map, part) -> map.put(part.id(), part.quantity()), Map::putAll));
        around.put("parts", OutputChoices.optional(OutputChoices.PLEASE, names));
        return around;
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        Map<String, PortNeeds> needs = NeedFields.needs(entries, seen);
        if (!entries.areFine()) {
            return Optional.empty();
        }
        return Optional.of(Deed.fitting(
                title(needs, seen),
                build -> build.withLines(build.lines().stream()
                        .map(part -> needs.containsKey(part.id())
                                ? part.withNeeds(needs.getOrDefault(part.id(), PortNeeds.NONE))
                                : part)
                        .toList())));
    }

    private static String title(Map<String, PortNeeds> needs, Build seen) {
        List<PartLine> changed = seen.lines().stream()
                .filter(part -> needs.containsKey(part.id()) && !part.needs().equals(needs.get(part.id())))
                .toList();
        return changed.size() == 1
                ? "What " + changed.get(0).name() + " needs of the flight controller"
                : "What " + changed.size() + " parts need of the flight controller";
    }
}
