package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LinePlace.Size;
import dev.ledgerwing.core.build.Panel;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.Surface;
import dev.ledgerwing.core.build.Tail;
import dev.ledgerwing.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far the airframe reaches along each axis, by its parts with their sizes, its wing and its tail. */
final class AirframeExtent {

    /** From one end to the other along one axis. */
    record Range(double fromMm, double toMm) {

        boolean reaches(double mm, double slackMm) {
            return mm >= fromMm - slackMm && mm <= toMm + slackMm;
        }

        double lengthMm() {
            return toMm - fromMm;
        }
    }

    private record Corner(double xMm, double yMm, double zMm) {

        double along(Axis axis) {
            return switch (axis) {
                case X -> xMm;
                case Y -> yMm;
                case Z -> zMm;
            };
        }
    }

    private final List<Corner> corners = new ArrayList<>();

    private AirframeExtent() {}

    static AirframeExtent of(Build build) {
        AirframeExtent extent = new AirframeExtent();
        build.lines().stream().map(PartLine::place).forEach(extent::add);
        Optional.ofNullable(build.geometry().wing()).ifPresent(extent::add);
        Optional.ofNullable(build.geometry().tail()).map(Tail::surface).ifPresent(extent::add);
        return extent;
    }

    /** Empty while no part has a station and nothing is drawn. */
    Optional<Range> along(Axis axis) {
        return corners.stream()
                .map(corner -> corner.along(axis))
                .map(mm -> new Range(mm, mm))
                .reduce((one, other) -> new Range(Math.min(one.fromMm, other.fromMm), Math.max(one.toMm, other.toMm)));
    }

    private void add(LinePlace place) {
        Station at = place.station();
        if (at == null) {
            return;
        }
        Size size = place.size();
        double length = size == null ? 0 : size.length().mm() / 2;
        double width = size == null ? 0 : size.width().mm() / 2;
        double height = size == null ? 0 : size.height().mm() / 2;
        Length mirrored = place.mirroredAtY();
        double y = mirrored == null ? at.y().mm() : mirrored.mm();
        add(at.x().mm() - length, y - width, at.z().mm() - height);
        add(at.x().mm() + length, y + width, at.z().mm() + height);
        if (mirrored != null) {
            add(at.x().mm(), -y - width, at.z().mm());
            add(at.x().mm(), -y + width, at.z().mm());
        }
    }

    private void add(Surface surface) {
        double x = surface.apex().x().mm();
        double y = surface.apex().y().mm();
        double z = surface.apex().z().mm();
        for (Panel panel : surface.panels()) {
            chord(surface, new Corner(x, y, z), panel.rootChord());
            double dihedral = Math.toRadians(panel.dihedralDeg());
            x += panel.tipOffset().mm();
            y += panel.span().mm() * Math.cos(dihedral);
            z += panel.span().mm() * Math.sin(dihedral);
            chord(surface, new Corner(x, y, z), panel.tipChord());
        }
    }

    private void chord(Surface surface, Corner from, Length chord) {
        corners.add(from);
        add(from.xMm + chord.mm(), from.yMm, from.zMm);
        if (surface.mirrored()) {
            add(from.xMm, -from.yMm, from.zMm);
        }
    }

    private void add(double xMm, double yMm, double zMm) {
        corners.add(new Corner(xMm, yMm, zMm));
    }
}
