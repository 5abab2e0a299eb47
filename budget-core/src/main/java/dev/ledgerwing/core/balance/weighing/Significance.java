package dev.ledgerwing.core.balance.weighing;

/** How far scales and ledger lie apart, against how far either may be off. */
public enum Significance {
    /** Within twice the standard uncertainty of the scales. */
    AGREES,
    /** Beyond that: the ledger is off. */
    OFF,
    /** Beyond twice what scales and ledger together admit, 2 sqrt(u_scales^2 + u_ledger^2): something is missing or too much. */
    MORE_THAN_ADMITTED;

    /** Of a difference between two figures with these standard uncertainties, all in one unit. */
    static Significance of(double difference, double scales, double ledger) {
        double apart = Math.abs(difference);
        if (apart > 2 * Math.hypot(scales, ledger)) {
            return MORE_THAN_ADMITTED;
        }
        return apart > 2 * scales ? OFF : AGREES;
    }

    Significance worseOf(Significance other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
