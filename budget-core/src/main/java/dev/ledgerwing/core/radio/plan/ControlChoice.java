package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Control;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Which control moves which channel: the recorded one where the plan allows it, else the first that leaves enough. */
final class ControlChoice {

    private final List<Integer> kinds;
    private final List<@Nullable Control> recorded;
    private final Stock[] stock;

    private ControlChoice(Stock stock, List<Integer> kinds, List<@Nullable Control> recorded) {
        this.stock = new Stock[] {stock};
        this.kinds = kinds;
        this.recorded = recorded;
    }

    /**
     * @param kinds for every channel the kinds of control that carry it; the stock serves them
     * @param recorded for every channel the control that moves it in the record; null = none
     */
    static List<Control> of(Stock stock, List<Integer> kinds, List<@Nullable Control> recorded) {
        return new ControlChoice(stock, kinds, recorded).chosen();
    }

    private List<Control> chosen() {
        List<@Nullable Control> chosen = new ArrayList<>(java.util.Collections.nCopies(kinds.size(), null));
        for (int i = 0; i < kinds.size(); i++) {
            Control control = recorded.get(i);
            if (control != null && does(i, control, chosen)) {
                chosen.set(i, control);
                take(control);
            }
        }
        for (int i = 0; i < kinds.size(); i++) {
            if (chosen.get(i) == null) {
                Control first = first(i, chosen);
                chosen.set(i, first);
                take(first);
            }
        }
        return chosen.stream().map(Objects::requireNonNull).toList();
    }

    private void take(Control control) {
        stock[0] = stock[0].without(control);
    }

    private Control first(int channel, List<@Nullable Control> chosen) {
        return stock[0].left().stream()
                .filter(control -> does(channel, control, chosen))
                .findFirst()
                .orElseThrow();
    }

    private boolean does(int channel, Control control, List<@Nullable Control> chosen) {
        if (!stock[0].left().contains(control) || ((kinds.get(channel) >> stock[0].kind(control)) & 1) == 0) {
            return false;
        }
        List<Integer> others = new ArrayList<>();
        for (int i = 0; i < kinds.size(); i++) {
            if (i != channel && chosen.get(i) == null) {
                others.add(kinds.get(i));
            }
        }
        return stock[0].without(control).serves(others);
    }
}
