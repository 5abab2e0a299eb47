package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.build.Surface;
import dev.ledgerwing.core.build.Tail;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Wing, tail, nose, and what is known of stations. */
final class GeometryForm implements BalanceForm {

    private static final SurfaceFields WING = new SurfaceFields("wing");
    private static final SurfaceFields TAIL = new SurfaceFields("tail");
    private static final double USUAL_EFFICIENCY = 0.9;

    @Override
    public String view() {
        return "balance/geometry";
    }

    @Override
    public void show(Build build, Shown fields) {
        Geometry geometry = build.geometry();
        Tail tail = geometry.tail();
        WING.show(geometry.wing(), fields);
        TAIL.show(tail == null ? null : tail.surface(), fields);
        fields.number("efficiency", tail == null ? null : (Double) tail.efficiency())
                .number("bodyShift", geometry.bodyShiftPercentMac())
                .number("noseStructure", geometry.noseStructureGPerMm())
                .length("noseJoint", geometry.noseJointX())
                .length("stationUncertainty", geometry.stationUncertainty())
                .length("lateralLimit", geometry.lateralLimit());
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        return Map.of(
                "hasWing", build.geometry().wing() != null,
                "hasTail", build.geometry().tail() != null,
                "datum", build.airframe().datum());
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        Surface wing = WING.surface(entries);
        Tail tail = tail(entries);
        Double bodyShift = entries.number("bodyShift", -100, 100);
        Double noseStructure = entries.number("noseStructure", 0, 1000);
        Length noseJoint = entries.coordinate("noseJoint");
        Length uncertainty = entries.extent("stationUncertainty");
        Length lateral = entries.extent("lateralLimit");
        if (!entries.areFine()) {
            return Optional.empty();
        }
        Geometry old = seen.geometry();
        Geometry wanted = new Geometry(
                wing,
                tail,
                bodyShift,
                old.balanceLimits(),
                old.staticMargin(),
                noseStructure,
                noseJoint,
                uncertainty,
                lateral);
        return Optional.of(Deed.fitting(title(old, wanted), build -> build.withGeometry(wanted)));
    }

    private static @Nullable Tail tail(Entries entries) {
        Surface surface = TAIL.surface(entries);
        Double efficiency = entries.number("efficiency", 0.05, 1.5);
        return surface == null ? null : new Tail(surface, efficiency == null ? USUAL_EFFICIENCY : efficiency);
    }

    private static String title(Geometry old, Geometry wanted) {
        if (old.wing() == null && wanted.wing() != null) {
            return wanted.tail() == null ? "Wing entered" : "Wing and tail entered";
        }
        return old.wing() != null && wanted.wing() == null ? "Wing removed" : "Geometry edited";
    }

    /** Takes wing or tail out of the record. */
    static Deed without(boolean wing) {
        return Deed.fitting(wing ? "Wing removed" : "Tail removed", build -> {
            Geometry old = build.geometry();
            return build.withGeometry(new Geometry(
                    wing ? null : old.wing(),
                    wing ? old.tail() : null,
                    old.bodyShiftPercentMac(),
                    old.balanceLimits(),
                    old.staticMargin(),
                    old.noseStructureGPerMm(),
                    old.noseJointX(),
                    old.stationUncertainty(),
                    old.lateralLimit()));
        });
    }
}
