package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.build.BalanceLimits;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.build.StaticMargin;
import dev.ledgerwing.core.build.Surface;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The band the CG is allowed in: in per cent of the chord, in millimetres from any station, or none; and the static margin wanted. */
final class LimitsForm implements BalanceForm {

    private static final String ORDER = "The forward limit lies ahead of the aft one, so it is the smaller number.";
    private static final double FARTHEST_MM = 100_000;
    private static final String BOTH = "Please give both limits, the forward and the aft one.";

    /** How the band is declared. */
    enum Kind {
        NONE,
        PERCENT,
        LENGTH
    }

    @Override
    public String view() {
        return "balance/limits";
    }

    @Override
    public void show(Build build, Shown fields) {
        BalanceLimits limits = build.geometry().balanceLimits();
        StaticMargin margin = build.geometry().staticMargin();
        fields.text("kind", kind(build).name())
                .number("forwardPercent", limits == null ? null : limits.forwardPercentMac())
                .number("aftPercent", limits == null ? null : limits.aftPercentMac())
                .length("forward", limits == null ? null : limits.forwardX())
                .length("aft", limits == null ? null : limits.aftX())
                .text("from", "")
                .number("least", margin == null ? null : (Double) margin.leastPercent())
                .number("most", margin == null ? null : (Double) margin.mostPercent());
    }

    /** A new airframe without a wing starts with the two figures of its kit. */
    private static Kind kind(Build build) {
        BalanceLimits limits = build.geometry().balanceLimits();
        if (limits == null) {
            return build.geometry().equals(Geometry.NONE) ? Kind.LENGTH : Kind.NONE;
        }
        return limits.forwardX() == null ? Kind.PERCENT : Kind.LENGTH;
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        Map<String, Object> around = new HashMap<>();
        Surface wing = build.geometry().wing();
        around.put("datum", build.airframe().datum());
        around.put("hasWing", wing != null);
        if (wing != null) {
            around.put("rootEdge", wing.apex().x());
        }
        return around;
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        Kind kind = entries.choice("kind", Kind.values());
        BalanceLimits limits = switch (kind) {
            case NONE -> null;
            case PERCENT -> percent(entries);
            case LENGTH -> stations(entries);
        };
        StaticMargin margin = margin(entries);
        if (!entries.areFine()) {
            return Optional.empty();
        }
        String title = limits == null ? "Balance limits: none declared" : "Balance limits " + words(limits);
        return Optional.of(Deed.fitting(title, build -> {
            Geometry old = build.geometry();
            return build.withGeometry(new Geometry(
                    old.wing(),
                    old.tail(),
                    old.bodyShiftPercentMac(),
                    limits,
                    margin,
                    old.noseStructureGPerMm(),
                    old.noseJointX(),
                    old.stationUncertainty(),
                    old.lateralLimit()));
        }));
    }

    private static String words(BalanceLimits limits) {
        return BandWords.METRIC.declared(limits);
    }

    private static @Nullable BalanceLimits percent(Entries entries) {
        Double forward = entries.needed("forwardPercent", entries.number("forwardPercent", -500, 500), 0.0, BOTH);
        Double aft = entries.needed("aftPercent", entries.number("aftPercent", -500, 500), 0.0, BOTH);
        if (entries.areFine() && forward >= aft) {
            entries.trouble("forwardPercent", ORDER);
        }
        return entries.areFine() ? BalanceLimits.ofPercentMac(forward, aft) : null;
    }

    private static @Nullable BalanceLimits stations(Entries entries) {
        Length forward = entries.needed("forward", entries.coordinate("forward"), Length.ZERO, BOTH);
        Length aft = entries.needed("aft", entries.coordinate("aft"), Length.ZERO, BOTH);
        Length from = entries.coordinate("from");
        if (entries.areFine() && forward.compareTo(aft) >= 0) {
            entries.trouble("forward", ORDER);
        }
        Length origin = from == null ? Length.ZERO : from;
        if (entries.areFine() && Math.abs(aft.plus(origin).mm()) + Math.abs(forward.mm()) > FARTHEST_MM) {
            entries.trouble("from", "Counted from there, the limits lie more than 100 m from the datum.");
        }
        return entries.areFine() ? BalanceLimits.ofStations(forward.plus(origin), aft.plus(origin)) : null;
    }

    private static @Nullable StaticMargin margin(Entries entries) {
        Double least = entries.number("least", 0, 200);
        Double most = entries.number("most", 0, 200);
        if ((least == null && most == null) || !entries.areFine()) {
            return null;
        }
        if (least == null || most == null) {
            entries.trouble(least == null ? "least" : "most", "Please give both margins, the least and the most.");
            return null;
        }
        if (least >= most) {
            entries.trouble("least", "The least margin is the smaller number.");
            return null;
        }
        return new StaticMargin(least, most);
    }
}
