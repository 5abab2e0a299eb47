package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.report.drawing.PartMark.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What stands in words below the masses along the stations. Each part gives the place below it.
 *
 * @param drawn the parts that are drawn, heaviest first
 */
record StripNotes(Board board, List<PartMark> drawn) {

    private static final int MOST_NAMED_MISSING = 12;

    /** The numbered parts, in columns from top to bottom. */
    double list(double top, int numbered) {
        int columns = board.isWide() ? 2 : 1;
        int rows = (numbered + columns - 1) / columns;
        double width = (board.layout().width() - 2 * Board.EDGE) / columns;
        for (int index = 0; index < numbered; index++) {
            PartMark part = drawn.get(index);
            int column = index / rows;
            double left = Board.EDGE + column * width;
            double base = top + (index % rows + 1) * board.lines();
            String figures =
                    board.units().mass(Objects.requireNonNull(part.mass())) + " at " + board.length(part.xMmOrZero());
            double right = left + width - (columns > 1 ? 2 * Board.EDGE : 0);
            double room =
                    width - 2 * Board.EDGE - 24 - board.plate().smallLetters().width(figures) - 8;
            board.plate().small(new Spot(left + 16, base), Anchor.END, Integer.toString(index + 1));
            board.plate()
                    .small(
                            new Spot(left + 24, base),
                            Anchor.START,
                            board.plate().smallLetters().cut(part.name(), room));
            board.plate().small(new Spot(right, base), Anchor.END, figures);
        }
        return numbered == 0 ? top : top + rows * board.lines() + 4;
    }

    /** What the circles mean. */
    double key(double top) {
        double base = top + board.lines();
        double middle = base - 0.3 * board.layout().letters();
        double at = Board.EDGE;
        at = keyText(new Spot(at, base), "area: mass");
        for (Kind kind : List.of(Kind.MOVABLE, Kind.EXTRA)) {
            if (drawn.stream().anyMatch(part -> part.kind() == kind)) {
                board.plate().circle(new Spot(at + 5, middle), 5, PartMark.pen(kind));
                at = keyText(new Spot(at + 14, base), kind == Kind.MOVABLE ? "may be moved" : "carried in this case");
            }
        }
        return base + 3;
    }

    private double keyText(Spot at, String text) {
        board.plate().small(at, Anchor.START, text);
        return at.x() + board.plate().smallLetters().width(text) + 14;
    }

    double missing(double top) {
        double at = top;
        for (String sentence : sentences()) {
            for (String line : board.plate()
                    .smallLetters()
                    .wrapped(sentence, board.layout().width() - 2 * Board.EDGE, 6)) {
                at += board.lines();
                board.plate().small(new Spot(Board.EDGE, at), Anchor.START, line);
            }
        }
        return at + 2;
    }

    private List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        List<PartMark> missing =
                board.view().parts().stream().filter(part -> !part.isPlaced()).toList();
        if (!missing.isEmpty()) {
            sentences.add("Not drawn, station or mass not known: " + names(missing) + ".");
        }
        List<PartMark> light = board.view()
                .placed()
                .filter(part -> part.gramsOrZero() > 0 && !drawn.contains(part))
                .toList();
        if (!light.isEmpty()) {
            Mass together =
                    light.stream().map(PartMark::mass).filter(Objects::nonNull).reduce(Mass.ZERO, Mass::plus);
            sentences.add("The " + light.size() + " lightest lines, "
                    + board.units().mass(together) + " together, are not drawn.");
        }
        return sentences;
    }

    private static String names(List<PartMark> parts) {
        String named = String.join(
                "; ",
                parts.stream().limit(MOST_NAMED_MISSING).map(PartMark::name).toList());
        int more = parts.size() - MOST_NAMED_MISSING;
        return named + (more > 0 ? "; and " + more + " more" : "");
    }
}
