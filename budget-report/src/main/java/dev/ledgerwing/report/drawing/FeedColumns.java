package dev.ledgerwing.report.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Where the upright bars of the layers stand. Several in one layer whose ranges overlap stand side by side, each on a track. Layers
 * with long feeds get more room; half of what is left over goes to the last one, for the names of what hangs
 * there.
 */
final class FeedColumns {

    static final double TRACK = 12;
    static final double TURN = 11;
    private static final double FIRST = Board.EDGE + 4;
    private static final double END = 148;
    private static final double BESIDE = 2 * (TURN + 3);

    private final double width;
    private final int last;
    private final Map<String, Integer> tracks;
    private final FeedLayers layers;
    private final double[] starts;

    /**
     * Columns for these layers.
     *
     * @param tracks of a source or rail by its code; what is not named is on the first
     */
    FeedColumns(double width, Map<String, Integer> tracks, FeedLayers layers) {
        this.width = width;
        this.last = Math.max(1, layers.last());
        this.tracks = Map.copyOf(tracks);
        this.layers = layers;
        this.starts = starts();
    }

    private double[] starts() {
        int[] across = new int[last];
        double free = width - Board.EDGE - END - FIRST;
        for (int column = 0; column < last; column++) {
            across[column] = 1;
            free -= ElementCell.LEAST_WIDTH + BESIDE + most(column) * TRACK;
        }
        for (; free >= ElementCell.LEAST_WIDTH; free -= ElementCell.LEAST_WIDTH) {
            across[neediest(across)]++;
        }
        double share = Math.min(free, free / 2) / last;
        double[] places = new double[last + 1];
        places[0] = FIRST;
        for (int column = 0; column < last; column++) {
            places[column + 1] =
                    places[column] + across[column] * ElementCell.LEAST_WIDTH + BESIDE + most(column) * TRACK + share;
        }
        return places;
    }

    /** The layer whose longest feed takes most rows, and of several such one that would take fewer with more room. */
    private int neediest(int[] across) {
        Comparator<Integer> rows = Comparator.comparingInt(column -> rows(column, across[column]));
        Comparator<Integer> saved =
                Comparator.comparingInt(column -> rows(column, across[column]) - rows(column, across[column] + 1));
        List<Integer> columns = IntStream.range(0, last).boxed().toList();
        return columns.stream().max(rows.thenComparing(saved)).orElse(0);
    }

    private int rows(int column, int across) {
        return (layers.longest(column) + across - 1) / across;
    }

    /** How many tracks there are after the first. */
    private int most(int column) {
        return tracks.entrySet().stream()
                .filter(track -> layers.of(track.getKey()) == column)
                .mapToInt(Map.Entry::getValue)
                .max()
                .orElse(0);
    }

    double busX(String code) {
        return starts[layers.of(code)] + tracks.getOrDefault(code, 0) * TRACK;
    }

    /** Where text and elements right of the bars of a layer begin. */
    double left(int column) {
        return starts[column] + most(column) * TRACK + BESIDE / 2;
    }

    /** Where they end. */
    double right(int column) {
        return column >= last ? width - Board.EDGE : starts[column + 1] - BESIDE / 2;
    }

    /** Whether an element has room in every layer that has one after it. */
    boolean isRoomy() {
        return IntStream.range(0, last)
                .allMatch(column -> right(column) - left(column) >= ElementCell.LEAST_WIDTH - 0.01);
    }

    FeedLayers layers() {
        return layers;
    }
}
