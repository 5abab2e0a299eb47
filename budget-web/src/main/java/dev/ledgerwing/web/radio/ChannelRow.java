package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.forms.Typed;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One channel as it is typed so far.
 *
 * @param row the beginning of the names of its fields
 * @param positions of its control; as many as have a state while nothing moves it
 * @param dropped a sentence on states beyond the positions; empty where there are none
 */
record ChannelRow(String row, String what, int positions, List<CarriedRow> carried, String dropped) {

    static List<ChannelRow> all(Typed typed, Build build) {
        return IntStream.range(0, typed.rows(ChannelsForm.LIST))
                .mapToObj(i -> of(ChannelsForm.LIST + "." + i, typed, build))
                .toList();
    }

    static ChannelRow of(String row, Typed typed, Build build) {
        List<CarriedRow> carried = new ArrayList<>();
        for (int j = 0; j < typed.rows(row + ".carried"); j++) {
            carried.add(CarriedRow.of(CarriedRow.group(row, j), typed, build));
        }
        int said = carried.stream().mapToInt(CarriedRow::said).max().orElse(0);
        Control control = Elements.find(build.radio().controls(), typed.text(row + ".control"));
        int positions = control == null ? said : positions(control);
        String number = typed.text(row + ".number");
        return new ChannelRow(
                row,
                number.isEmpty() ? "New channel" : "Channel " + number,
                positions,
                List.copyOf(carried),
                control == null || said <= positions ? "" : dropped(control, positions));
    }

    private static int positions(Control control) {
        Integer positions = control.positions();
        return positions == null ? 0 : positions;
    }

    private static String dropped(Control control, int positions) {
        return control.name() + (positions == 0 ? " has no positions" : " has " + positions + " positions")
                + ": what was said of more goes when you save.";
    }

    public boolean steps() {
        return positions > 0;
    }
}
