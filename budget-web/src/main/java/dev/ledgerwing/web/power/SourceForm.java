package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.PowerSource.Kind;
import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.core.build.SupplyDeeds;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Choices;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A battery, solar cells or a supply from outside.
 *
 * @param code of the source; null = a new one
 */
record SourceForm(@Nullable String code, Kind kind) implements PowerForm {

    @Override
    public String view() {
        return "power/source";
    }

    /** The kind spelt in an address: {@code battery}; nothing for any other text. */
    static Optional<Kind> kind(String text) {
        for (Kind kind : Kind.values()) {
            if (inAddress(kind).equals(text)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    private static String inAddress(Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    static String word(Kind kind) {
        return switch (kind) {
            case BATTERY -> "battery";
            case SOLAR -> "solar cells";
            case EXTERNAL -> "supply from outside";
        };
    }

    private static Map<String, String> kinds() {
        Map<String, String> kinds = new LinkedHashMap<>();
        for (Kind each : Kind.values()) {
            kinds.put(inAddress(each), word(each));
        }
        return kinds;
    }

    @Override
    public void show(Build build, Shown fields) {
        PowerSource source = Elements.find(build.power().sources(), code);
        fields.text("name", source == null ? "" : source.name()).text("part", source == null ? "" : source.part());
        switch (kind) {
            case BATTERY -> PackFields.show(source == null ? null : source.pack(), fields);
            case SOLAR -> ArrayFields.show(source == null ? null : source.array(), fields);
            case EXTERNAL ->
                fields.amount("output", source == null ? null : source.outputV())
                        .amount("rating", source == null ? null : source.ratingA());
        }
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        PowerSource source = Elements.find(build.power().sources(), code);
        Map<String, Object> around = new LinkedHashMap<>();
        around.put("isNew", source == null);
        around.put("kind", inAddress(kind));
        around.put("kinds", kinds());
        around.put("heading", source == null ? "New source: " + word(kind) : "Source " + source.name());
        around.put("parts", Choices.optional("none of the ledger", Choices.names(build.lines())));
        around.put("chemistries", PowerChoices.chemistries());
        around.put("connections", PowerChoices.connections());
        around.put(
                "functions",
                Choices.optional("nothing", Choices.names(build.radio().functions())));
        around.put("feeds", source == null ? List.of() : feeds(build, source.code()));
        return around;
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        String name = entries.name("name", "Please name the source.");
        String part = entries.code("part", Choices.names(seen.lines()).keySet());
        Pack pack = kind == Kind.BATTERY ? PackFields.pack(entries) : null;
        SolarArray array = kind == Kind.SOLAR ? ArrayFields.array(entries, seen) : null;
        Double outputV = kind == Kind.EXTERNAL ? entries.amount("output", PowerBounds.OUTPUT_VOLTAGE) : null;
        Double ratingA = kind == Kind.EXTERNAL ? entries.amount("rating", PowerBounds.RATING) : null;
        if (!entries.areFine()) {
            return Optional.empty();
        }
        String id = code == null ? Elements.freshAddress(name, inAddress(kind), RailForm.sourcesAndRails(seen)) : code;
        PowerSource wanted = new PowerSource(id, name, kind, part, pack, array, outputV, ratingA);
        boolean isThere = Elements.find(seen.power().sources(), id) != null;
        return Optional.of(Deed.fitting(
                "Source " + name + (isThere ? " edited" : " added"),
                build -> build.withSources(Elements.with(build.power().sources(), wanted))));
    }

    private static List<String> feeds(Build build, String source) {
        return build.power().feeds().stream()
                .filter(feed -> feed.from().equals(source))
                .map(Feed::name)
                .toList();
    }

    /** Takes the source out of the record, and the feeds that begin at it. */
    static Deed removal(Build seen, PowerSource removed) {
        int feeds = feeds(seen, removed.code()).size();
        String with = feeds == 0 ? "" : feeds == 1 ? " with its feed" : " with its " + feeds + " feeds";
        return Deed.fitting(
                "Source " + removed.name() + " removed" + with,
                build -> SupplyDeeds.withoutSource(build, removed.code()));
    }
}
