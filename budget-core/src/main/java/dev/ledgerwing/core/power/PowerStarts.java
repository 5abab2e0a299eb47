package dev.ledgerwing.core.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The ready-made supplies, each as a function from a build to the build with it. */
final class PowerStarts {

    private static final int CELLS_OF_A_FLIGHT_PACK = 3;
    private static final int CELLS_OF_A_SUPPLY_PACK = 2;
    /** What a regulator is set above its rail, to have it back behind the diode; a start, to be set to the diode's own. */
    private static final double FOR_THE_DIODE_V = 0.5;

    private PowerStarts() {}

    static Build onePack(Build build) {
        StartDraft draft = new StartDraft(build);
        Rail rail = draft.regulatedRail(false);
        Rail straight = draft.packRail();
        int cells = straight == null ? CELLS_OF_A_FLIGHT_PACK : StartDraft.cellsFor(straight);
        PowerSource pack = draft.pack("pack", "Flight pack", cells, onlyPart(build, Category.BATTERY));
        if (straight == null) {
            draft.feed(
                    pack.code(),
                    rail,
                    List.of(
                            StartElements.plug(),
                            StartElements.fuse(),
                            StartElements.mainSwitch(),
                            StartElements.regulator(StartDraft.volts(rail))));
        } else {
            draft.feed(pack.code(), straight, List.of(StartElements.plug(), StartElements.fuse()));
            draft.feed(
                    straight.code(),
                    rail,
                    List.of(StartElements.mainSwitch(), StartElements.regulator(StartDraft.volts(rail))));
        }
        return draft.build();
    }

    static Build twoPacks(Build build) {
        StartDraft draft = new StartDraft(build);
        Rail rail = draft.regulatedRail(true);
        for (String letter : List.of("a", "b")) {
            String name = "Pack " + letter.toUpperCase(Locale.ROOT);
            PowerSource pack = draft.pack("pack-" + letter, name, CELLS_OF_A_SUPPLY_PACK, null);
            draft.feed(
                    pack.code(),
                    rail,
                    List.of(
                            StartElements.plug(),
                            StartElements.fuse(),
                            StartElements.regulator(StartDraft.volts(rail) + FOR_THE_DIODE_V),
                            StartElements.diode()));
        }
        return draft.build();
    }

    static Build packAndCells(Build build) {
        StartDraft draft = new StartDraft(build);
        Rail rail = draft.regulatedRail(false);
        Rail there = draft.packRail();
        int cells = there == null ? CELLS_OF_A_FLIGHT_PACK : StartDraft.cellsFor(there);
        Rail meeting = there == null ? draft.newPackRail(cells) : there;
        PowerSource pack = draft.pack("pack", "Flight pack", cells, onlyPart(build, Category.BATTERY));
        PowerSource sun = draft.cells(onlyPart(build, Category.SOLAR));
        draft.feed(pack.code(), meeting, List.of(StartElements.plug(), StartElements.fuse()));
        draft.feed(sun.code(), meeting, List.of(StartElements.fuse(), StartElements.chargingSwitch()));
        draft.feed(
                meeting.code(),
                rail,
                List.of(StartElements.mainSwitch(), StartElements.regulator(StartDraft.volts(rail))));
        return draft.build();
    }

    /** The one line of a category; null where there is none, or where it would be a guess. */
    private static @Nullable String onlyPart(Build build, Category category) {
        List<String> ids = build.lines().stream()
                .filter(line -> line.category() == category)
                .map(line -> line.id())
                .toList();
        return ids.size() == 1 ? ids.get(0) : null;
    }
}
