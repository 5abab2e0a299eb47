package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.build.WireRun.Routing;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The fields of a run of wires.
 *
 * @param group before the name of each field
 */
record WireFields(String group) {

    private static final int A_PAIR = 2;

    void show(@Nullable WireRun run, Shown fields) {
        fields.text(group + ".awg", run == null ? "" : Integer.toString(run.awg()))
                .length(group + ".length", run == null ? null : run.length())
                .text(group + ".conductors", run == null ? "" : Integer.toString(run.conductors()))
                .text(group + ".routing", (run == null ? Routing.BUNDLE : run.routing()).name())
                .amount(group + ".insulation", run == null ? null : run.insulationC());
    }

    /** Whether nothing is said of the wires; how they lie is always said. */
    boolean isBlank(Entries entries) {
        return entries.typed().isBlank(group, List.of("awg", "length", "conductors", "insulation"));
    }

    /** The wires as typed; nothing where something is wrong. */
    @Nullable
    WireRun run(Entries entries) {
        String gauge = entries.code(group + ".awg", PowerChoices.gauges().keySet());
        String awg = entries.needed(group + ".awg", gauge, "0", "Please choose how thick the wires are.");
        Length length = entries.needed(
                group + ".length",
                entries.extent(group + ".length"),
                Length.ZERO,
                "Please give how long they are, one way.");
        Integer conductors = entries.whole(group + ".conductors", A_PAIR, PowerBounds.MOST_CONDUCTORS);
        Routing routing = entries.typed().text(group + ".routing").isEmpty()
                ? Routing.BUNDLE
                : entries.choice(group + ".routing", Routing.values());
        Double insulationC = entries.amount(group + ".insulation", PowerBounds.INSULATION);
        return entries.areFine()
                ? new WireRun(
                        Integer.parseInt(awg), length, conductors == null ? A_PAIR : conductors, routing, insulationC)
                : null;
    }
}
