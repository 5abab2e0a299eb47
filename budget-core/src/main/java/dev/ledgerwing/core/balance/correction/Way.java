package dev.ledgerwing.core.balance.correction;

import java.util.List;

/**
 * A way of putting the balance right of which only the amount is open: whole millimetres moved, or whole grams added. What it says of
 * CGs is worked out from the sums as they stand; whatever the sums do not know, the record after the change tells.
 */
sealed interface Way permits LinearWay, NoseWay {

    /** The amounts that land every case in its aim. */
    Ranges landing(List<Aim> aims);

    /** The amounts that travel, bays and rules leave open. */
    Ranges allowed();

    /** A case after an amount; {@code index} is its place among the aims. */
    FlightPoint after(FlightPoint point, int index, double amount);

    /** How far the band itself moves aft with an amount. */
    double bandMovesMm(double amount);

    CorrectionStep step(int amount);
}
