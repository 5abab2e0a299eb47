package dev.ledgerwing.core.radio.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * What a cover has still to do, whatever way led there.
 *
 * @param functions those that are in no group yet
 * @param kinds the kinds of control that carry the channels made already, in order of size
 */
record Open(BitSet functions, List<Integer> kinds) {

    static Open of(BitSet functions, List<Integer> kinds) {
        List<Integer> sorted = new ArrayList<>(kinds);
        sorted.sort(null);
        return new Open((BitSet) functions.clone(), sorted);
    }
}
