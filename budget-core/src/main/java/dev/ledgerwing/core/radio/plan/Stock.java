package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Control;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The controls that step and drive no channel yet. A mix uses up the switches it mixes, so what there is of each kind of
 * control depends on which mixes are used.
 */
final class Stock {

    private final Map<String, Control> all;
    private final List<Layout> layouts;
    private final List<Control> left;
    private final Set<List<Integer>> supplies = new LinkedHashSet<>();

    private Stock(Map<String, Control> all, List<Layout> layouts, List<Control> left) {
        this.all = all;
        this.layouts = layouts;
        this.left = left;
        addSupplies(0, new HashSet<>());
    }

    static Stock of(List<Control> controls) {
        Map<String, Control> all = new HashMap<>();
        controls.forEach(control -> all.putIfAbsent(control.code(), control));
        List<Control> usable = controls.stream()
                .filter(control -> Layout.of(control, all) != null)
                .toList();
        List<Layout> layouts = usable.stream()
                .map(control -> Layout.of(control, all))
                .distinct()
                .sorted((one, other) -> Integer.compare(one.positions(), other.positions()))
                .toList();
        return new Stock(all, layouts, usable);
    }

    List<Layout> layouts() {
        return layouts;
    }

    List<Control> left() {
        return left;
    }

    /** Which of the {@link #layouts()} the control has. */
    int kind(Control control) {
        return layouts.indexOf(Layout.of(control, all));
    }

    /** Without the control, and without what cannot be used beside it. */
    Stock without(Control used) {
        return new Stock(
                all,
                layouts,
                left.stream().filter(control -> !clash(control, used)).toList());
    }

    private static boolean clash(Control one, Control other) {
        Set<String> parts = new HashSet<>(parts(one));
        parts.retainAll(parts(other));
        return !parts.isEmpty();
    }

    /** The switches that it takes: itself, or what it mixes; a mix counts as itself too. */
    static List<String> parts(Control control) {
        List<String> parts = new ArrayList<>(control.mixes());
        parts.add(control.code());
        return parts;
    }

    /** Whether there is a control for every channel, each of one of the kinds that carry it. */
    boolean serves(List<Integer> kindsOfChannels) {
        return supplies.stream().anyMatch(supply -> serves(supply, kindsOfChannels));
    }

    /** By the marriage theorem: for any kinds, no more channels need one of just these than there are controls. */
    private static boolean serves(List<Integer> supply, List<Integer> kindsOfChannels) {
        for (int kinds = 0; kinds < 1 << supply.size(); kinds++) {
            int room = 0;
            for (int kind = 0; kind < supply.size(); kind++) {
                room += ((kinds >> kind) & 1) * supply.get(kind);
            }
            for (int carrying : kindsOfChannels) {
                room -= (carrying & ~kinds) == 0 ? 1 : 0;
            }
            if (room < 0) {
                return false;
            }
        }
        return true;
    }

    private void addSupplies(int from, Set<String> used) {
        int next = from;
        while (next < left.size() && left.get(next).kind() != Control.Kind.MIXED) {
            next++;
        }
        if (next == left.size()) {
            supplies.add(supply(used));
            return;
        }
        addSupplies(next + 1, used);
        Control mix = left.get(next);
        if (parts(mix).stream().noneMatch(used::contains)) {
            Set<String> more = new HashSet<>(used);
            more.addAll(parts(mix));
            addSupplies(next + 1, more);
        }
    }

    private List<Integer> supply(Set<String> used) {
        Integer[] supply = new Integer[layouts.size()];
        java.util.Arrays.fill(supply, 0);
        for (Control control : left) {
            boolean mix = control.kind() == Control.Kind.MIXED;
            if (mix == used.contains(control.code())) {
                supply[kind(control)]++;
            }
        }
        return List.of(supply);
    }
}
