package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.FeedElement.Sharing;
import dev.ledgerwing.core.build.FeedElement.SwitchedLoad;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The rows of what current passes through on its way along a feed, each with the fields of its kind. */
final class ElementFields {

    static final String LIST = "element";

    private ElementFields() {}

    static void show(List<FeedElement> elements, Shown fields) {
        for (int i = 0; i < elements.size(); i++) {
            show(elements.get(i), LIST + "." + i, fields);
        }
    }

    private static void show(FeedElement element, String row, Shown fields) {
        Sharing sharing = element.sharing();
        SwitchedLoad switched = element.switchedLoad();
        Regulator regulator = element.regulator();
        fields.text(row + ".kind", element.kind().name())
                .text(row + ".name", element.name())
                .amount(row + ".rating", element.ratingA())
                .amount(row + ".peak", element.peakRatingA())
                .text(row + ".count", Integer.toString(element.count()))
                .text(row + ".sharing", sharing == null ? "" : sharing.name())
                .amount(row + ".resistance", element.milliohm())
                .amount(row + ".forward", element.forwardV())
                .text(row + ".switched", switched == null ? "" : switched.name());
        if (element.kind() == Kind.WIRE) {
            new WireFields(row).show(element.wire(), fields);
        }
        if (regulator != null) {
            new RegulatorFields(row).show(regulator, fields);
        }
    }

    /** The elements as typed; fewer where something is wrong. */
    static List<FeedElement> elements(Entries entries) {
        List<FeedElement> elements = new ArrayList<>();
        int rows = entries.typed().rows(LIST);
        if (rows > PowerBounds.MOST_ELEMENTS) {
            entries.trouble("", "A feed has at most " + PowerBounds.MOST_ELEMENTS + " elements.");
        }
        for (int i = 0; i < rows; i++) {
            FeedElement element = element(LIST + "." + i, entries);
            if (element != null) {
                elements.add(element);
            }
        }
        return elements;
    }

    private static @Nullable FeedElement element(String row, Entries entries) {
        Kind kind = entries.choice(row + ".kind", Kind.values());
        String typed = entries.line(row + ".name", 200);
        Ratings ratings = Ratings.of(row, entries);
        SideBySide beside = SideBySide.of(row, entries);
        Double milliohm = entries.amount(row + ".resistance", PowerBounds.RESISTANCE);
        Double forwardV = kind == Kind.DIODE ? entries.amount(row + ".forward", PowerBounds.FORWARD_VOLTAGE) : null;
        SwitchedLoad switched = kind == Kind.SWITCH ? switched(row, entries) : null;
        WireRun wire = kind == Kind.WIRE ? new WireFields(row).run(entries) : null;
        Regulator regulator = kind == Kind.REGULATOR ? new RegulatorFields(row).regulator(entries) : null;
        return entries.areFine()
                ? new FeedElement(
                        typed.isEmpty() ? usualName(kind) : typed,
                        kind,
                        ratings.ratingA(),
                        ratings.peakA(),
                        beside.count(),
                        beside.sharing(),
                        milliohm,
                        forwardV,
                        switched,
                        wire,
                        regulator)
                : null;
    }

    /** What an element is called that was given no name. */
    static String usualName(Kind kind) {
        String word = PowerWords.word(kind);
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private static @Nullable SwitchedLoad switched(String row, Entries entries) {
        return entries.typed().text(row + ".switched").isEmpty()
                ? null
                : entries.choice(row + ".switched", SwitchedLoad.values());
    }

    private record Ratings(
            @Nullable Double ratingA, @Nullable Double peakA) {

        static Ratings of(String row, Entries entries) {
            Double ratingA = entries.amount(row + ".rating", PowerBounds.RATING);
            Double peakA = entries.amount(row + ".peak", PowerBounds.PEAK_RATING);
            if (ratingA != null && peakA != null && ratingA > peakA) {
                entries.trouble(row + ".peak", "For moments it carries at least as much as for as long as it lasts.");
            }
            return new Ratings(ratingA, peakA);
        }
    }

    private record SideBySide(int count, @Nullable Sharing sharing) {

        static SideBySide of(String row, Entries entries) {
            Integer count = entries.whole(row + ".count", 1, PowerBounds.MOST_SIDE_BY_SIDE);
            Sharing sharing = entries.typed().text(row + ".sharing").isEmpty()
                    ? null
                    : entries.choice(row + ".sharing", Sharing.values());
            if (count != null && count > 1 && sharing == null && entries.isFine(row + ".sharing")) {
                entries.trouble(row + ".sharing", "Please choose how several of them share the current.");
            }
            return new SideBySide(count == null ? 1 : count, sharing);
        }
    }
}
