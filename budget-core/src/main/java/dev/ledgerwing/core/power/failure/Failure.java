package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.network.ElementAt;
import dev.ledgerwing.core.power.network.PowerNetwork;
import dev.ledgerwing.core.power.network.PowerWords;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One thing that fails.
 *
 * @param code of the source or rail, or of the feed that the element is in
 * @param at the element; null for a source or rail
 * @param name of the source, element or rail
 * @param words what happened, as the beginning of a sentence: {@code The fuse “Main fuse” in “Main feed” fails open}
 */
public record Failure(Kind kind, String code, @Nullable ElementAt at, String name, String words) {

    /** How things fail. */
    public enum Kind {
        SOURCE_OUT,
        /** Of several side by side, one. */
        ELEMENT_OPEN,
        RAIL_SHORTED
    }

    /** Every source, every element and every rail, in the order of the record. */
    static List<Failure> all(PowerNetwork network) {
        return Stream.of(
                        network.sources().stream().map(Failure::sourceOut),
                        network.feeds().stream().flatMap(Failure::elementsOpen),
                        network.build().power().rails().stream().map(Failure::railShorted))
                .flatMap(failures -> failures)
                .toList();
    }

    private static Failure sourceOut(PowerSource source) {
        return new Failure(
                Kind.SOURCE_OUT,
                source.code(),
                null,
                source.name(),
                PowerWords.quoted(source.name()) + " gives nothing");
    }

    private static Stream<Failure> elementsOpen(Feed feed) {
        return IntStream.range(0, feed.elements().size()).mapToObj(i -> elementOpen(feed, i));
    }

    private static Failure elementOpen(Feed feed, int index) {
        FeedElement element = feed.elements().get(index);
        String one = element.count() == 1 ? "" : ", one of " + element.count() + ",";
        String words = "The " + PowerWords.word(element.kind()) + " " + PowerWords.quoted(element.name()) + " in "
                + PowerWords.quoted(feed.name()) + one + " fails open";
        return new Failure(Kind.ELEMENT_OPEN, feed.code(), new ElementAt(feed.code(), index), element.name(), words);
    }

    private static Failure railShorted(Rail rail) {
        return new Failure(
                Kind.RAIL_SHORTED, rail.code(), null, rail.name(), PowerWords.quoted(rail.name()) + " is shorted");
    }
}
