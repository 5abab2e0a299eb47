package dev.ledgerwing.report.drawing;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What the drawings of balance show of one build, in millimetres: x aft from the datum, y to the right.
 *
 * @param wing its panels on every side there is, {@code tail} the same
 * @param chord the mean aerodynamic chord; null = no wing is entered
 * @param band the band that judges: the declared one, else the estimated one; null = none
 * @param bandFromNeutral the estimated band where another one judges; null = none
 * @param neutralPointXMm an estimate; null = not known
 */
public record BalanceView(
        String airframe,
        List<PlanPanel> wing,
        List<PlanPanel> tail,
        @Nullable Chord chord,
        @Nullable BandView band,
        @Nullable BandView bandFromNeutral,
        @Nullable Double neutralPointXMm,
        List<CaseView> cases,
        List<PartMark> parts) {

    /** A point from above. */
    public record PlanPoint(double xMm, double yMm) {}

    /** One side of one panel, from above: its corners in order. */
    public record PlanPanel(List<PlanPoint> corners) {

        public PlanPanel {
            corners = List.copyOf(corners);
        }
    }

    /**
     * The mean aerodynamic chord.
     *
     * @param yMm how far it lies from the centre line
     * @param mirrored whether it stands on the left too
     */
    public record Chord(double leadingEdgeXMm, double lengthMm, double yMm, boolean mirrored) {

        double percent(double xMm) {
            return 100 * (xMm - leadingEdgeXMm) / lengthMm;
        }

        double xMm(double percent) {
            return leadingEdgeXMm + percent / 100 * lengthMm;
        }
    }

    /**
     * A band along x.
     *
     * @param estimated whether it follows from the neutral point and the wanted static margin; else somebody declared it
     */
    public record BandView(double forwardXMm, double aftXMm, boolean estimated) {}

    /**
     * A centre of gravity.
     *
     * @param uncertaintyMm standard uncertainty of x; null = not known
     */
    public record CgView(double xMm, double yMm, @Nullable Double uncertaintyMm) {

        double lowMm() {
            return xMm - reachMm();
        }

        double highMm() {
            return xMm + reachMm();
        }

        private double reachMm() {
            return uncertaintyMm == null ? 0 : 2 * uncertaintyMm;
        }
    }

    /**
     * One load case.
     *
     * @param unplaced how many things aboard have no known mass or station: the CG is that of the others
     * @param verdict of its CG: {@code holds}, {@code tight}, {@code breaks} or {@code unknown}
     * @param basic at basic mass, {@code predicted} at predicted mass; null = not known
     */
    public record CaseView(
            String code,
            String name,
            boolean flight,
            boolean design,
            int unplaced,
            String verdict,
            @Nullable CgView basic,
            @Nullable CgView predicted) {

        boolean isKnown() {
            return unplaced == 0;
        }

        Stream<CgView> cgs() {
            return Stream.of(basic, predicted).flatMap(Stream::ofNullable);
        }
    }

    public BalanceView {
        wing = List.copyOf(wing);
        tail = List.copyOf(tail);
        cases = List.copyOf(cases);
        parts = List.copyOf(parts);
    }

    @Nullable
    CaseView loadCase(String code) {
        return cases.stream().filter(one -> one.code().equals(code)).findFirst().orElse(null);
    }

    /** Whether there is a shape to be drawn from above. */
    boolean hasPlan() {
        return !wing.isEmpty() || !tail.isEmpty();
    }

    Stream<PlanPoint> corners() {
        return Stream.concat(wing.stream(), tail.stream()).flatMap(panel -> panel.corners().stream());
    }

    /** The parts whose station is known. */
    Stream<PartMark> placed() {
        return parts.stream().filter(PartMark::isPlaced);
    }

    /** Every station along x that a drawing of the whole airframe has to reach. */
    DoubleStream reachXMm() {
        return DoubleStream.concat(corners().mapToDouble(PlanPoint::xMm), placed().mapToDouble(PartMark::xMmOrZero));
    }
}
