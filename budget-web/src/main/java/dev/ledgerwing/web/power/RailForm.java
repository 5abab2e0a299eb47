package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Element;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A rail that loads hang on.
 *
 * @param code of the rail; null = a new one
 */
record RailForm(@Nullable String code) implements PowerForm {

    @Override
    public String view() {
        return "power/rail";
    }

    @Override
    public void show(Build build, Shown fields) {
        Rail rail = Elements.find(build.power().rails(), code);
        fields.text("name", rail == null ? "" : rail.name())
                .amount("nominal", rail == null ? null : rail.nominalV())
                .amount("min", rail == null ? null : rail.minV())
                .amount("max", rail == null ? null : rail.maxV())
                .tick("redundant", rail != null && rail.redundant());
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        Rail rail = Elements.find(build.power().rails(), code);
        Map<String, Object> around = new LinkedHashMap<>();
        around.put("isNew", rail == null);
        around.put("heading", rail == null ? "New rail" : "Rail " + rail.name());
        around.put("hanging", rail == null ? "" : hanging(build, rail));
        return around;
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        String name = entries.name("name", "Please name the rail.");
        Double nominalV = entries.amount("nominal", PowerBounds.OUTPUT_VOLTAGE);
        Double minV = entries.amount("min", PowerBounds.VOLTAGE);
        Double maxV = entries.amount("max", PowerBounds.VOLTAGE);
        if (minV != null && maxV != null && minV > maxV) {
            entries.trouble("min", "The lowest voltage is the smaller of the two.");
        }
        if (entries.isFine("min")
                && nominalV != null
                && ((minV != null && nominalV < minV) || (maxV != null && nominalV > maxV))) {
            entries.trouble("nominal", "This lies outside what the rail may have.");
        }
        if (!entries.areFine()) {
            return Optional.empty();
        }
        String id = code == null ? Elements.freshAddress(name, "rail", sourcesAndRails(seen)) : code;
        Rail wanted = new Rail(id, name, nominalV, minV, maxV, entries.typed().isTicked("redundant"));
        String title = "Rail " + name + (Elements.find(seen.power().rails(), id) == null ? " added" : " edited");
        return Optional.of(Deed.fitting(
                title, build -> build.withRails(Elements.with(build.power().rails(), wanted))));
    }

    /** A feed names what it comes from, so no rail may have the code of a source. */
    static List<Element> sourcesAndRails(Build build) {
        List<Element> both = new ArrayList<>(build.power().sources());
        both.addAll(build.power().rails());
        return both;
    }

    /** Takes the rail out of the record; refuses while something hangs on it. */
    static Deed removal(Rail removed) {
        return Deed.fitting("Rail " + removed.name() + " removed", build -> {
            String hanging = hanging(build, removed);
            if (!hanging.isEmpty()) {
                throw new IllegalArgumentException("“" + removed.name() + "” stays while these hang on it: " + hanging);
            }
            return build.withRails(Elements.without(build.power().rails(), removed.code()));
        });
    }

    /** The parts that draw from a rail and the feeds that lead to it or from it; empty where there are none. */
    private static String hanging(Build build, Rail rail) {
        Stream<String> parts = build.lines().stream()
                .filter(line ->
                        line.electrical().stream().anyMatch(load -> rail.code().equals(load.rail())))
                .map(PartLine::name);
        Stream<String> feeds = build.power().feeds().stream()
                .filter(feed -> feed.from().equals(rail.code()) || feed.to().equals(rail.code()))
                .map(Feed::name)
                .map(name -> "the feed " + name);
        return String.join(", ", Stream.concat(parts, feeds).toList());
    }
}
