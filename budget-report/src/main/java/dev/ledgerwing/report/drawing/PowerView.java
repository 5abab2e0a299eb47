package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a feed diagram shows: texts and shares are ready, nothing in it needs computing.
 *
 * @param failure what has failed, in words; empty = nothing has
 * @param notes what cannot be drawn, a sentence each
 */
public record PowerView(
        String airframe,
        List<SourceMark> sources,
        List<RailMark> rails,
        List<FeedMark> feeds,
        String failure,
        List<String> notes) {

    /** How something stands when something has failed. */
    public enum State {
        LIT,
        DARK,
        FAILED
    }

    /**
     * Demand against rating.
     *
     * @param percent of the rating; null = not known
     * @param reservePercent the share of the rating that must stay free
     * @param verdict null = nothing has been solved yet
     * @param rating in words where there is one; empty = not given
     */
    public record LoadMark(
            @Nullable Double percent,
            double reservePercent,
            @Nullable Verdict verdict,
            String rating) {}

    /** Where current comes from. */
    public record SourceMark(
            String code, String name, PowerSource.Kind kind, List<String> facts, LoadMark load, State state) {

        public SourceMark {
            facts = List.copyOf(facts);
        }
    }

    /**
     * A rail and what hangs on it.
     *
     * @param verdict null = nothing has been solved yet
     */
    public record RailMark(
            String code,
            String name,
            List<String> facts,
            @Nullable Verdict verdict,
            List<String> loads,
            State state) {

        public RailMark {
            facts = List.copyOf(facts);
            loads = List.copyOf(loads);
        }
    }

    /** A way with what the current passes through. */
    public record FeedMark(String code, String name, String from, String to, List<ElementMark> elements, State state) {

        public FeedMark {
            elements = List.copyOf(elements);
        }
    }

    /**
     * One thing on the way.
     *
     * @param failure how it has failed: {@code open}; empty = it has not
     */
    public record ElementMark(String name, FeedElement.Kind kind, LoadMark load, State state, String failure) {}

    public PowerView {
        sources = List.copyOf(sources);
        rails = List.copyOf(rails);
        feeds = List.copyOf(feeds);
        notes = List.copyOf(notes);
    }

    boolean isEmpty() {
        return sources.isEmpty() && rails.isEmpty() && feeds.isEmpty();
    }

    Map<String, RailMark> railsByCode() {
        return rails.stream().collect(Collectors.toMap(RailMark::code, Function.identity()));
    }

    Map<String, SourceMark> sourcesByCode() {
        return sources.stream().collect(Collectors.toMap(SourceMark::code, Function.identity()));
    }

    /** The name of a source or a rail. */
    String nameOf(String code) {
        SourceMark source = sourcesByCode().get(code);
        RailMark rail = railsByCode().get(code);
        return source != null ? source.name() : rail != null ? rail.name() : code;
    }

    List<FeedMark> from(String code) {
        return feeds.stream().filter(feed -> feed.from().equals(code)).toList();
    }

    List<FeedMark> to(String code) {
        return feeds.stream().filter(feed -> feed.to().equals(code)).toList();
    }
}
