package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which kinds of control carry which groups, each worked out once. Kinds are bits, in the order of the layouts. */
final class GroupTable {

    private final CodedRadio radio;
    private final List<Layout> layouts;
    private final Map<BitSet, Integer> known = new HashMap<>();
    private final BitSet[] together;

    GroupTable(CodedRadio radio, List<Layout> layouts) {
        this.radio = radio;
        this.layouts = layouts;
        together = new BitSet[radio.size()];
        for (int f = 0; f < together.length; f++) {
            together[f] = new BitSet();
            for (int g = 0; g < f; g++) {
                if (radio.function(f).mayShare() && radio.function(g).mayShare() && kinds(pair(f, g)) != 0) {
                    together[f].set(g);
                    together[g].set(f);
                }
            }
        }
    }

    CodedRadio radio() {
        return radio;
    }

    List<Layout> layouts() {
        return layouts;
    }

    /** The functions with which it can share a channel, two at a time. */
    BitSet partners(int function) {
        return together[function];
    }

    /** The one that can be with the fewest of them; the first of the record among equals. */
    int mostPressed(BitSet functions) {
        int pressed = -1;
        int fewest = Integer.MAX_VALUE;
        for (int f = functions.nextSetBit(0); f >= 0; f = functions.nextSetBit(f + 1)) {
            BitSet partners = (BitSet) functions.clone();
            partners.and(together[f]);
            if (partners.cardinality() < fewest) {
                fewest = partners.cardinality();
                pressed = f;
            }
        }
        return pressed;
    }

    /** How many of them can be found of which no two can be together: so many groups are needed at least. */
    int strangers(BitSet functions) {
        BitSet left = (BitSet) functions.clone();
        int strangers = 0;
        while (!left.isEmpty()) {
            int f = mostPressed(left);
            strangers++;
            left.clear(f);
            left.andNot(together[f]);
        }
        return strangers;
    }

    /** The kinds of control that carry the group. */
    int kinds(BitSet group) {
        Integer kinds = known.get(group);
        if (kinds == null) {
            kinds = workedOut(group, group.cardinality() > 2 ? kindsOfPairs(group) : (1 << layouts.size()) - 1);
            radio.effort().spend(Effort.TO_REMEMBER);
            known.put((BitSet) group.clone(), kinds);
        }
        return kinds;
    }

    /** What carries a group carries every part of it. */
    private int kindsOfPairs(BitSet group) {
        int kinds = ~0;
        for (int f = group.nextSetBit(0); f >= 0; f = group.nextSetBit(f + 1)) {
            for (int g = group.nextSetBit(f + 1); g >= 0; g = group.nextSetBit(g + 1)) {
                kinds &= kinds(pair(f, g));
            }
        }
        return kinds;
    }

    /** More positions carry whatever fewer do, unless a servo tells each from the next. */
    private int workedOut(BitSet members, int possible) {
        Group group = new Group(radio, members.stream().toArray());
        int kinds = 0;
        int enough = Integer.MAX_VALUE;
        for (int kind = 0; kind < layouts.size(); kind++) {
            Layout layout = layouts.get(kind);
            boolean tried = ((possible >> kind) & 1) != 0;
            boolean more = layout.plain() && layout.positions() >= enough;
            if (tried && (more || GroupSearch.states(group, layout) != null)) {
                kinds |= 1 << kind;
                enough = layout.plain() && !group.has(DecodedBy.SERVO) ? Math.min(enough, layout.positions()) : enough;
            }
        }
        return kinds;
    }

    private static BitSet pair(int f, int g) {
        BitSet pair = new BitSet();
        pair.set(f);
        pair.set(g);
        return pair;
    }
}
