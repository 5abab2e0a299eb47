package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Rail;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What hangs on one rail.
 *
 * @param rail its code; null where they hang on none yet
 */
record LoadGroup(@Nullable String rail, String title, List<Row> rows) {

    /**
     * One load of one line.
     *
     * @param typical of one piece, as is {@code peak}
     * @param group loads that never draw their peaks together; empty where it belongs to none
     */
    record Row(
            String line,
            String name,
            String pieces,
            String typical,
            String peak,
            String duty,
            String volts,
            String group) {}

    private static final Set<Category> DRAWING =
            EnumSet.of(Category.PROPULSION, Category.AVIONICS, Category.RADIO, Category.SERVO, Category.PAYLOAD);

    /** Those on no rail first, since nothing feeds them; then rail by rail. */
    static List<LoadGroup> of(Build build) {
        List<LoadGroup> groups = new ArrayList<>();
        List<Row> loose = rows(build, null);
        if (!loose.isEmpty()) {
            groups.add(new LoadGroup(null, "On no rail yet", loose));
        }
        for (Rail rail : build.power().rails()) {
            groups.add(new LoadGroup(rail.code(), rail.name(), rows(build, rail.code())));
        }
        return groups;
    }

    private static List<Row> rows(Build build, @Nullable String rail) {
        List<Row> rows = new ArrayList<>();
        for (PartLine line : build.lines()) {
            for (ElectricalLoad load : line.electrical()) {
                if (Objects.equals(load.rail(), rail)) {
                    rows.add(row(line, load, build));
                }
            }
        }
        return rows;
    }

    private static Row row(PartLine line, ElectricalLoad load, Build build) {
        String group = load.exclusiveGroup();
        boolean watts = load.draws() == ElectricalLoad.Draws.CONSTANT_POWER;
        return new Row(
                line.id(),
                line.name(),
                Integer.toString(line.quantity()),
                Electric.amperes(load.typicalA()) + (watts ? ", more at less voltage" : ""),
                Electric.amperes(load.peakA()),
                DutyWords.of(load, build.phases()),
                Electric.range(load.minV(), load.maxV()),
                group == null ? "" : "never together with others of “" + group + "”");
    }

    /** A part that may draw current and says nothing of it. */
    record Silent(String line, String name) {}

    /** Parts that would draw current by what they are, and have no load recorded. */
    static List<Silent> silent(Build build) {
        return build.lines().stream()
                .filter(line -> line.electrical().isEmpty() && DRAWING.contains(line.category()))
                .map(line -> new Silent(line.id(), line.name()))
                .toList();
    }
}
