package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.build.BalanceLimits;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;

/** Says a band: {@code 28 to 38 % MAC}, {@code 95 to 105 mm}. */
record BandWords(Figures figures) {

    static final BandWords METRIC = new BandWords(Figures.METRIC);

    String declared(BalanceLimits limits) {
        Double forward = limits.forwardPercentMac();
        Double aft = limits.aftPercentMac();
        Length forwardX = limits.forwardX();
        Length aftX = limits.aftX();
        if (forward != null && aft != null) {
            return Figures.number(forward, 1) + " to " + Figures.percent(aft) + " MAC";
        }
        return forwardX == null || aftX == null ? "" : figures.lengthNumber(forwardX) + " to " + figures.length(aftX);
    }
}
