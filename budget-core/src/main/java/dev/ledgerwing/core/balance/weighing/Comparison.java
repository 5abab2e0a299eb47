package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.balance.Axis;
import java.util.Optional;

/**
 * The scales held against the ledger.
 *
 * @param scales what the scales say
 * @param ledger what lines and bookings of assemblies say of the same; what the weigh-in itself books is not among it
 * @param ledgerErrorsKnown whether it is known how sure the ledger was; not of a day gone by, since lines were revised
 */
public record Comparison(JointMass scales, JointMass ledger, boolean ledgerErrorsKnown) {

    /** A missing mass is placed only when it stands out by this many standard uncertainties. Ledgerwing's own choice. */
    private static final double PLACED_FROM = 5;

    /** One coordinate of the CG, by the scales and by the ledger. */
    public record Centre(Coordinate scales, Coordinate ledger, Significance significance) {

        public double differenceMm() {
            return scales.mm() - ledger.mm();
        }
    }

    /** What the scales say more than the ledger, in grams. */
    public double massDifferenceG() {
        return scales.massG() - ledger.massG();
    }

    public Significance mass() {
        return significance(massDifferenceG(), scales.massUncertaintyG(), ledger.massUncertaintyG());
    }

    /** Empty where one of the two does not know. */
    public Optional<Centre> centre(Axis axis) {
        return scales.centre(axis)
                .flatMap(said -> ledger.centre(axis)
                        .map(booked -> new Centre(
                                said,
                                booked,
                                significance(said.mm() - booked.mm(), said.uncertaintyMm(), booked.uncertaintyMm()))));
    }

    private Significance significance(double difference, double ofScales, double ofLedger) {
        Significance full = Significance.of(difference, ofScales, ofLedger);
        return ledgerErrorsKnown || full == Significance.AGREES ? full : Significance.OFF;
    }

    /** The worst of mass and CG. */
    public Significance worst() {
        Significance worst = mass();
        for (Axis axis : Axis.values()) {
            worst = worst.worseOf(centre(axis).map(Centre::significance).orElse(Significance.AGREES));
        }
        return worst;
    }

    /**
     * Where the missing mass would have to sit, were it in one place: x_r = (M_s x_s - M_l x_l)/(M_s - M_l) with its uncertainty. Only
     * where the masses differ by more than five standard uncertainties of their difference; else it means nothing.
     */
    public Optional<Coordinate> impliedStation(Axis axis) {
        JointMass missing = scales.minus(ledger);
        boolean standsOut = Math.abs(missing.massG()) > PLACED_FROM * missing.massUncertaintyG();
        return standsOut && ledgerErrorsKnown ? missing.centre(axis) : Optional.empty();
    }
}
