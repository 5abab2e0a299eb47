package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.balance.BalanceBand;
import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.MassState;
import dev.ledgerwing.core.balance.Planform;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.LengthUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where to support the airframe on the bench to see where it balances: under both wings at one span station, told from something a
 * ruler can be put on.
 *
 * @param how what to do, in sentences
 * @param measured head of the column of places
 */
public record SupportGuide(List<String> how, String measured, List<Support> supports) {

    /**
     * One place to support it at.
     *
     * @param place from the leading edge, or the datum without a wing
     * @param note what else has to be known
     */
    public record Support(String name, String place, String fromDatum, String percent, String note) {}

    /** How far out along the half span: out of the fuselage's way, and near enough to reach. */
    private static final double OUTBOARD = 0.2;

    public SupportGuide {
        how = List.copyOf(how);
        supports = List.copyOf(supports);
    }

    static SupportGuide of(BalanceStatement statement, Figures units) {
        return new Writer(statement, units).guide();
    }

    private record Writer(BalanceStatement statement, Figures units) {

        SupportGuide guide() {
            Planform wing = statement.shape().wing();
            double spanStation = wing == null ? 0 : spanStation(wing);
            Planform.Chord chord = wing == null || !wing.mirrored()
                    ? null
                    : wing.chordAt(spanStation).orElse(null);
            return new SupportGuide(
                    how(chord == null ? null : spanStation),
                    chord == null
                            ? "From the datum"
                            : "From the leading edge at " + length(spanStation) + " from the centre line",
                    supports(chord));
        }

        private List<String> how(@Nullable Double spanStation) {
            String where = spanStation == null
                    ? "Support it on both sides at the same station, measured aft from the datum: "
                            + statement.build().airframe().datum() + "."
                    : "Put one support under each wing, " + length(spanStation)
                            + " to the left and to the right of the centre line, measured straight back from the leading edge there.";
            return List.of(
                    where,
                    "Propeller off, everything aboard and strapped as in “"
                            + statement.design().loadCase().name()
                            + "”, level. Nose drops: the CG lies ahead of the supports;"
                            + " tail drops: behind them. Held at either limit it has to tip inward.");
        }

        /** Rounded to what is found on a ruler. */
        private double spanStation(Planform wing) {
            double half = wing.spanMm() / 2;
            double roundMm = units.units().lengthUnit() == LengthUnit.IN ? LengthUnit.IN.inMm() : half < 400 ? 10 : 50;
            return Math.max(1, Math.round(OUTBOARD * half / roundMm)) * roundMm;
        }

        private List<Support> supports(Planform.@Nullable Chord chord) {
            BalanceBand band = statement.shape().band();
            Stream<Support> limits = band == null
                    ? Stream.empty()
                    : Stream.of(
                            support("Forward limit: nose must not drop", band.forwardXMm(), chord),
                            support("Middle of the band", (band.forwardXMm() + band.aftXMm()) / 2, chord),
                            support("Aft limit: tail must not drop", band.aftXMm(), chord));
            Optional<Support> now = statement
                    .design()
                    .cg(MassState.BASIC)
                    .map(cg -> support(
                            statement.design().isKnown()
                                    ? "Where the ledger says it balances"
                                    : "Ledger, not everything placed",
                            cg.xMm(),
                            chord));
            return Stream.concat(limits, now.stream()).toList();
        }

        private Support support(String name, double xMm, Planform.@Nullable Chord chord) {
            Double percent = statement.shape().percentMac(xMm);
            double behind = chord == null ? xMm : xMm - chord.leadingEdgeXMm();
            return new Support(
                    name,
                    length(Math.abs(behind)) + side(behind, chord),
                    length(xMm),
                    percent == null ? "" : Figures.percent(percent) + " MAC",
                    chord != null && (behind < 0 || behind > chord.chordMm())
                            ? "there is no wing to support there"
                            : "");
        }

        private static String side(double behind, Planform.@Nullable Chord chord) {
            String way = behind < 0 ? " ahead of" : " behind";
            return way + (chord == null ? " the datum" : " the leading edge");
        }

        private String length(double mm) {
            return units.length(Length.ofMm(mm));
        }
    }
}
