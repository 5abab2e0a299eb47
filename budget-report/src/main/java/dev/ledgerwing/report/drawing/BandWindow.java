package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.BalanceView.BandView;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The stretch of stations that is enlarged: the band, the neutral point and every CG with its uncertainty, and a little more. */
record BandWindow(double lowMm, double highMm) {

    private static final double LEAST_MM = 10;
    private static final double MARGIN = 0.07;
    private static final int ROUNDS = 20;

    /**
     * For one build, or two of them.
     *
     * @param room share of the window's width that the labels of the limits need outward of them; 0 to less than 0.5
     */
    static BandWindow of(BalanceView view, @Nullable BalanceView before, double room) {
        List<Double> places = Stream.of(view, before)
                .flatMap(Stream::ofNullable)
                .flatMapToDouble(BandWindow::places)
                .boxed()
                .toList();
        double low = places.stream().mapToDouble(Double::doubleValue).min().orElse(-LEAST_MM);
        double high = places.stream().mapToDouble(Double::doubleValue).max().orElse(LEAST_MM);
        double more = Math.max(MARGIN * (high - low), (LEAST_MM - (high - low)) / 2);
        BandWindow window = new BandWindow(low - more, high + more);
        BandView band = view.band();
        return band == null ? window : window.withRoom(band, room);
    }

    /** Widened at either end in turn until both limits have their room. */
    private BandWindow withRoom(BandView band, double room) {
        double low = lowMm;
        double high = highMm;
        for (int round = 0; round < ROUNDS; round++) {
            low = Math.min(low, (band.forwardXMm() - room * high) / (1 - room));
            high = Math.max(high, (band.aftXMm() - room * low) / (1 - room));
        }
        return new BandWindow(low, high);
    }

    private static DoubleStream places(BalanceView view) {
        Double neutral = view.neutralPointXMm();
        BandView band = view.band();
        DoubleStream limits =
                band == null ? DoubleStream.empty() : DoubleStream.of(outward(band, 1), outward(band, -1));
        DoubleStream cgs = view.cases().stream()
                .flatMap(one -> one.cgs())
                .flatMapToDouble(cg -> DoubleStream.of(cg.lowMm(), cg.highMm()));
        return Stream.of(limits, cgs, neutral == null ? DoubleStream.empty() : DoubleStream.of(neutral))
                .flatMapToDouble(places -> places);
    }

    /** The labels of the limits stand outward of them. */
    private static double outward(BandView band, int side) {
        double width = band.aftXMm() - band.forwardXMm();
        return (side > 0 ? band.aftXMm() : band.forwardXMm()) + side * 0.35 * width;
    }
}
