package dev.ledgerwing.core.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.SolarArray;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A ready-made supply as it is put together on top of a build that has rails at most. */
final class StartDraft {

    /** Nominal voltage of one lithium polymer cell, as makers print it on packs. */
    private static final double CELL_V = 3.7;
    /** Rails from here to here are fed by a regulator: radio and servos. */
    private static final double REGULATED_FROM_V = 4.5;

    private static final double REGULATED_TO_V = 7;
    private static final double NEW_RAIL_V = 5;
    /** How far a rail's voltage may lie from whole cells and still be that of a pack. */
    private static final double NEAR = 0.04;

    private final Build start;
    private final List<PowerSource> sources = new ArrayList<>();
    private final List<Rail> rails;
    private final List<Feed> feeds = new ArrayList<>();

    StartDraft(Build start) {
        this.start = start;
        this.rails = new ArrayList<>(start.power().rails());
    }

    Build build() {
        return start.withRails(rails).withSources(sources).withFeeds(feeds);
    }

    /**
     * A rail that a regulator would feed, as it is; else a new one at 5 V.
     *
     * @param redundant whether a new one may lose a feed, and one that may is taken first
     */
    Rail regulatedRail(boolean redundant) {
        List<Rail> fitting = rails.stream().filter(StartDraft::isRegulated).toList();
        for (Rail rail : fitting) {
            if (rail.redundant() == redundant) {
                return rail;
            }
        }
        return fitting.isEmpty()
                ? add(new Rail(fresh("supply-5v"), "Supply, 5 V", NEW_RAIL_V, null, null, redundant))
                : fitting.get(0);
    }

    private static boolean isRegulated(Rail rail) {
        return volts(rail) >= REGULATED_FROM_V && volts(rail) <= REGULATED_TO_V;
    }

    /** The rail with the highest voltage that is one of whole cells, as packs feed it without a regulator; null = there is none. */
    @Nullable
    Rail packRail() {
        Rail found = null;
        for (Rail rail : rails) {
            double volts = volts(rail);
            double ofCells = cellsFor(rail) * CELL_V;
            boolean isOfCells = volts > REGULATED_TO_V && Math.abs(volts - ofCells) <= NEAR * ofCells;
            if (isOfCells && (found == null || volts > volts(found))) {
                found = rail;
            }
        }
        return found;
    }

    Rail newPackRail(int cells) {
        double volts = Math.round(cells * CELL_V * 10) / 10.0;
        return add(new Rail(fresh("pack-rail"), "Straight from the pack", volts, null, null, false));
    }

    static int cellsFor(Rail rail) {
        return (int) Math.round(volts(rail) / CELL_V);
    }

    /** 0 where it is not known: fits nothing. */
    static double volts(Rail rail) {
        Double volts = rail.nominalV();
        return volts == null ? 0 : volts;
    }

    /** Cells in line; capacity and currents are the builder's to say. */
    PowerSource pack(String code, String name, int cells, @Nullable String part) {
        Pack pack = new Pack(
                Pack.Chemistry.LITHIUM_POLYMER, cells, 1, null, null, null, null, null, null, null, null, null, false);
        return add(PowerSource.battery(fresh(code), named(part, name), part, pack));
    }

    PowerSource cells(@Nullable String part) {
        SolarArray array = new SolarArray(
                null, null, null, null, null, null, 0, 0, false, SolarArray.Connection.TRACKER, null, null);
        return add(PowerSource.solar(fresh("cells"), named(part, "Solar cells"), part, array));
    }

    private String named(@Nullable String part, String otherwise) {
        return part == null ? otherwise : start.line(part).map(PartLine::name).orElse(otherwise);
    }

    void feed(String from, Rail to, List<FeedElement> elements) {
        String name = nameOf(from) + " to " + to.name();
        feeds.add(new Feed(
                "feed-" + (feeds.size() + 1),
                name.substring(0, Math.min(200, name.length())),
                from,
                to.code(),
                elements));
    }

    private String nameOf(String code) {
        for (PowerSource source : sources) {
            if (source.code().equals(code)) {
                return source.name();
            }
        }
        return rails.stream()
                .filter(rail -> rail.code().equals(code))
                .map(Rail::name)
                .findFirst()
                .orElse(code);
    }

    private PowerSource add(PowerSource source) {
        sources.add(source);
        return source;
    }

    private Rail add(Rail rail) {
        rails.add(rail);
        return rail;
    }

    /** A code that no source and no rail has: a feed could not tell them apart. */
    private String fresh(String wanted) {
        String code = wanted;
        for (int i = 2; isTaken(code); i++) {
            code = wanted + "-" + i;
        }
        return code;
    }

    private boolean isTaken(String code) {
        return rails.stream().anyMatch(rail -> rail.code().equals(code))
                || sources.stream().anyMatch(source -> source.code().equals(code));
    }
}
