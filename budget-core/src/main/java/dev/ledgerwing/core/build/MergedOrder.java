package dev.ledgerwing.core.build;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * The order of a merged list, the same whichever side is called which: the order of the base (or of the one side that changed
 * it), and behind each element what either side added there, sorted by id where both did.
 */
final class MergedOrder {

    private static final String FRONT = "";

    private final Map<String, List<String>> added = new HashMap<>();
    private final Set<String> known;

    private MergedOrder(List<String> base) {
        this.known = new HashSet<>(base);
    }

    static List<String> of(List<String> base, List<String> theirs, List<String> mine) {
        MergedOrder merged = new MergedOrder(base);
        merged.collect(theirs);
        merged.collect(mine);
        Set<String> order = new LinkedHashSet<>();
        merged.append(FRONT, order);
        for (String id : reordered(base, theirs, mine)) {
            order.add(id);
            merged.append(id, order);
        }
        return List.copyOf(order);
    }

    private void collect(List<String> side) {
        String anchor = FRONT;
        for (String id : side) {
            if (!known.contains(id)) {
                List<String> here = added.computeIfAbsent(anchor, unused -> new ArrayList<>());
                if (!here.contains(id)) {
                    here.add(id);
                }
            }
            anchor = id;
        }
    }

    private void append(String anchor, Set<String> order) {
        Deque<String> waiting = new ArrayDeque<>();
        push(anchor, waiting);
        while (!waiting.isEmpty()) {
            String id = waiting.pop();
            if (order.add(id)) {
                push(id, waiting);
            }
        }
    }

    private void push(String anchor, Deque<String> waiting) {
        List<String> here = Objects.requireNonNull(added.getOrDefault(anchor, List.of()));
        here.stream().sorted(Comparator.reverseOrder()).forEach(waiting::push);
    }

    /** The base's elements in the order of the side that moved any of them; where both did, in the order of the base. */
    private static List<String> reordered(List<String> base, List<String> theirs, List<String> mine) {
        List<String> their = sharedOrder(base, theirs);
        List<String> my = sharedOrder(base, mine);
        boolean theyMoved = !their.equals(without(base, their));
        boolean iMoved = !my.equals(without(base, my));
        if (their.equals(my)) {
            return withAll(their, base);
        }
        if (theyMoved == iMoved) {
            return base;
        }
        return withAll(theyMoved ? their : my, base);
    }

    private static List<String> sharedOrder(List<String> base, List<String> side) {
        Set<String> known = new HashSet<>(base);
        return side.stream().filter(known::contains).toList();
    }

    private static List<String> without(List<String> base, List<String> kept) {
        Set<String> all = new HashSet<>(kept);
        return base.stream().filter(all::contains).toList();
    }

    private static List<String> withAll(List<String> order, List<String> base) {
        List<String> all = new ArrayList<>(order);
        Set<String> there = new HashSet<>(order);
        base.stream().filter(id -> !there.contains(id)).forEach(all::add);
        return all;
    }
}
