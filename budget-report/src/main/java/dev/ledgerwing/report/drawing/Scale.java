package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.LengthUnit;

/** Stations along one axis of a drawing: {@code lowMm} stands at {@code start}, and each millimetre takes {@code perMm}. */
record Scale(double start, double lowMm, double perMm) {

    double at(double mm) {
        return start + (mm - lowMm) * perMm;
    }

    double mmAt(double place) {
        return lowMm + (place - start) / perMm;
    }

    /** Marks in the unit of the figures from one place to another, at least {@code least} apart on the drawing. */
    Ticks ticks(double from, double to, double least, Figures units) {
        double unitMm = unitMm(units);
        return Ticks.between(mmAt(from) / unitMm, mmAt(to) / unitMm, least / (perMm * unitMm));
    }

    /** Where a mark of {@link #ticks} stands. */
    double atMark(double mark, Figures units) {
        return at(mark * unitMm(units));
    }

    private static double unitMm(Figures units) {
        LengthUnit unit = units.units().lengthUnit();
        return unit.inMm();
    }

    /** One place always, so that figures below each other can be compared at a glance. */
    static String percent(double percent) {
        return Figures.fixed(percent, 1) + "\u2009%";
    }

    static String length(double mm, Figures units) {
        return units.length(Length.ofMm(mm));
    }
}
