package dev.ledgerwing.core.radio.plan;

import java.util.BitSet;
import java.util.List;

/**
 * Functions that are to be split into groups.
 *
 * @param alone for every other channel that needs a control of the stock, the kinds of control that carry it
 */
record CoverTask(GroupTable table, Stock stock, List<Integer> alone, BitSet functions) {

    CoverTask {
        alone = List.copyOf(alone);
    }
}
