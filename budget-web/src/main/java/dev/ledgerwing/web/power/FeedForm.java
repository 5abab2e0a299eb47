package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.report.drawing.PowerPictures;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Choices;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A feed: where it comes from, where it leads, and what the current passes through.
 *
 * @param code of the feed; null = a new one
 */
record FeedForm(@Nullable String code) implements PowerForm {

    /** The field of the button that only wants to look. */
    private static final String DO = "do";

    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_END = 90;

    @Override
    public String view() {
        return "power/feed";
    }

    @Override
    public void show(Build build, Shown fields) {
        Feed feed = Elements.find(build.power().feeds(), code);
        List<Rail> rails = build.power().rails();
        String onlyRail = rails.size() == 1 ? rails.get(0).code() : "";
        fields.text("name", feed == null ? "" : feed.name())
                .text("from", feed == null ? "" : feed.from())
                .text("to", feed == null ? onlyRail : feed.to());
        ElementFields.show(feed == null ? List.of() : feed.elements(), fields);
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        Feed feed = Elements.find(build.power().feeds(), code);
        Map<String, Object> around = new LinkedHashMap<>();
        around.put("isNew", feed == null);
        around.put("heading", feed == null ? "New feed" : "Feed " + feed.name());
        around.put("sources", Choices.names(build.power().sources()));
        around.put("rails", Choices.names(build.power().rails()));
        around.put("from", Choices.optional(PowerChoices.PLEASE, PowerChoices.ends(build)));
        around.put(
                "to",
                Choices.optional(
                        PowerChoices.PLEASE, Choices.names(build.power().rails())));
        around.put("kinds", PowerChoices.elements());
        around.put("gauges", PowerChoices.gauges());
        around.put("routings", PowerChoices.routings());
        around.put("sharings", PowerChoices.sharings());
        around.put("switchedLoads", PowerChoices.switchedLoads());
        around.put("regulators", PowerChoices.regulators());
        Optional<Build> asTyped = feed(entries.anew(), build)
                .map(typed -> build.withFeeds(Elements.with(build.power().feeds(), typed)));
        around.put("picture", PowerPictures.feeds(asTyped.orElse(build)).html());
        around.put("pictureHeading", asTyped.isPresent() ? "The supply with this feed" : "The supply as recorded");
        return around;
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        Optional<Feed> read = feed(entries, seen);
        boolean onlyLooks = entries.typed().text(DO).equals("LOOK");
        return read.filter(feed -> !onlyLooks).map(wanted -> {
            boolean isThere = Elements.find(seen.power().feeds(), wanted.code()) != null;
            return Deed.fitting(
                    "Feed " + wanted.name() + (isThere ? " edited" : " added"),
                    build -> build.withFeeds(Elements.with(build.power().feeds(), wanted)));
        });
    }

    /** The feed as typed; nothing where something is wrong. */
    private Optional<Feed> feed(Entries entries, Build build) {
        Map<String, String> ends = PowerChoices.ends(build);
        Map<String, String> rails = Choices.names(build.power().rails());
        String typedName = entries.line("name", LONGEST_NAME);
        String from = entries.needed(
                "from", entries.code("from", ends.keySet()), "", "Please choose the source or rail it comes from.");
        String to = entries.needed("to", entries.code("to", rails.keySet()), "", "Please choose the rail it leads to.");
        if (!to.isEmpty() && from.equals(to)) {
            entries.trouble("to", "A rail cannot feed itself: please choose another one.");
        }
        List<FeedElement> elements = ElementFields.elements(entries);
        if (!entries.areFine()) {
            return Optional.empty();
        }
        String name = typedName.isEmpty()
                ? shortened(ends.getOrDefault(from, from)) + " to " + shortened(rails.getOrDefault(to, to))
                : typedName;
        String id =
                code == null ? Elements.freshAddress(name, "feed", build.power().feeds()) : code;
        return Optional.of(new Feed(id, name, from, to, elements));
    }

    private static String shortened(String name) {
        return name.length() <= LONGEST_END ? name : name.substring(0, LONGEST_END - 1) + "…";
    }

    static Deed removal(Feed removed) {
        return Deed.fitting(
                "Feed " + removed.name() + " removed",
                build -> build.withFeeds(Elements.without(build.power().feeds(), removed.code())));
    }
}
