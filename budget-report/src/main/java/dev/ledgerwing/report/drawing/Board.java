package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.report.drawing.BalanceView.BandView;
import dev.ledgerwing.report.drawing.BalanceView.CgView;
import dev.ledgerwing.report.drawing.BalanceView.Chord;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is to be drawn and onto what; and how stations are written on it.
 *
 * @param before the same before a change that is previewed; null = nothing is previewed
 */
record Board(Plate plate, BalanceView view, @Nullable BalanceView before, Figures units, Layout layout) {

    static final double EDGE = 8;
    static final double GAP = 6;
    static final double TICK = 5;

    /** From baseline to baseline. */
    double lines() {
        return 1.3 * layout.letters();
    }

    boolean isWide() {
        return layout.isWide();
    }

    /** What is drawn, and what it was before. */
    Stream<BalanceView> views() {
        return Stream.of(view, before).flatMap(Stream::ofNullable);
    }

    /** The band before the change; null = it is still the same, or there was none. */
    @Nullable
    BandView oldBand() {
        BandView old = before == null ? null : before.band();
        return old == null || old.equals(view.band()) ? null : old;
    }

    String length(double mm) {
        return Scale.length(mm, units);
    }

    /** In per cent of the chord; as a length where there is none. */
    String share(double xMm) {
        Chord chord = view.chord();
        return chord == null ? length(xMm) : Scale.percent(chord.percent(xMm));
    }

    /** Of the chord as it was: a wing that moves takes its chord along. */
    String shareBefore(double xMm) {
        Chord chord = before == null ? null : before.chord();
        return chord == null || view.chord() == null ? share(xMm) : Scale.percent(chord.percent(xMm));
    }

    /** {@code 38.5 %, 641.9 mm}. */
    String place(double xMm) {
        return view.chord() == null ? length(xMm) : share(xMm) + ", " + length(xMm);
    }

    /** {@code 38.0 % MAC}. */
    String ofMac(double xMm) {
        return view.chord() == null ? length(xMm) : share(xMm) + " MAC";
    }

    /** {@code 38.0 % MAC, 640.5 mm}. */
    String limit(double xMm) {
        return view.chord() == null ? length(xMm) : ofMac(xMm) + ", " + length(xMm);
    }

    /** Twice the standard uncertainty; empty where it is not known. */
    String plusMinus(CgView cg) {
        Double uncertainty = cg.uncertaintyMm();
        return uncertainty == null ? "" : " ± " + units.lengthNumber(Length.ofMm(2 * uncertainty));
    }
}
