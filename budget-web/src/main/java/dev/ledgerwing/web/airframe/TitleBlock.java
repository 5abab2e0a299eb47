package dev.ledgerwing.web.airframe;

import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The ruled cells at the head of an airframe's pages, ready to be shown. */
public record TitleBlock(
        String code, String name, String stage, int number, String moment, String author, List<Tile> tiles) {

    /**
     * A cell that leads to a page.
     *
     * @param verdict null where the page judges nothing
     * @param headline the verdict in words, or the main figure
     */
    public record Tile(
            String label, String address, @Nullable Verdict verdict, String headline, String figure, boolean current) {}
}
