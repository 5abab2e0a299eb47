package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.TransmitterView.ChannelMark;
import dev.ledgerwing.report.drawing.TransmitterView.ControlMark;
import dev.ledgerwing.report.drawing.TransmitterView.Said;
import dev.ledgerwing.report.drawing.TransmitterView.Stop;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** One control with its symbol, and below it each channel with a stop for every place along the pulse. */
record ControlSketch(Plate plate, ControlMark control, double width) {

    private static final double INDENT = 34;
    private static final double TRACK = 12;
    private static final double LABEL = 22;
    private static final double RADIUS = 4;

    /** Draws from the upper left corner on and gives the place below. */
    double draw(Spot corner) {
        plate.open(control.quiet() ? "control dark" : "control", told());
        new ControlSymbol(plate, corner.plus(14, step())).draw(control.kind(), control.stops());
        double base = corner.y();
        for (String line : plate.letters().wrapped(control.name(), width - INDENT, 2)) {
            base += step();
            plate.label(new Spot(corner.x() + INDENT, base), Anchor.START, line);
        }
        base = small(control.note(), corner.x() + INDENT, base);
        base = Math.max(base, corner.y() + 2 * step());
        for (ChannelMark channel : control.channels()) {
            base = channel(channel, new Spot(corner.x(), base));
        }
        plate.close();
        return base + 4;
    }

    private double step() {
        return 1.3 * plate.letters().size();
    }

    private double small(String text, double left, double base) {
        double at = base;
        double room = Board.EDGE + plate.width() - Board.EDGE - left;
        for (String line : text.isEmpty()
                ? List.<String>of()
                : plate.smallLetters().wrapped(text, Math.min(room, width - INDENT), 3)) {
            at += step();
            plate.small(new Spot(left, at), Anchor.START, line);
        }
        return at;
    }

    private double channel(ChannelMark channel, Spot left) {
        double base = left.y() + step();
        double text = left.x() + (channel.pinned() ? 16 : 2);
        if (channel.pinned()) {
            pinned(new Spot(left.x() + 7, base - 4));
        }
        plate.label(new Spot(text, base), Anchor.START, plate.letters().cut(channel.title(), width - text + left.x()));
        base = fault(channel, new Spot(left.x(), base));
        base = stops(channel, new Spot(left.x(), base));
        return onLoss(channel, new Spot(left.x(), base)) + 4;
    }

    /** The head of a pin, and its needle. */
    private void pinned(Spot centre) {
        plate.circle(centre.plus(0, -2), 3, Pen.KNOB);
        plate.line(centre.plus(0, 1), centre.plus(0, 6), Pen.TRACK);
    }

    private double fault(ChannelMark channel, Spot left) {
        if (channel.fault().isEmpty()) {
            return left.y();
        }
        double base = left.y() + step();
        LoadBar.verdict(plate, new Spot(left.x() + 2, base), Verdict.BREAKS);
        for (String line : plate.smallLetters().wrapped(channel.fault(), width - LABEL, 4)) {
            base += step();
            plate.small(new Spot(left.x() + LABEL, base), Anchor.START, line);
        }
        return base;
    }

    private double stops(ChannelMark channel, Spot left) {
        double base = left.y();
        List<Spot> places = new ArrayList<>();
        List<Double> bases = new ArrayList<>();
        for (Stop stop : channel.stops()) {
            bases.add(base + step());
            places.add(new Spot(left.x() + TRACK, base + step() - 4));
            base = lines(stop, new Spot(left.x(), base)) + 3;
        }
        boolean steps = !channel.stops().get(0).label().isEmpty();
        if (steps) {
            plate.line(places.get(0), places.get(places.size() - 1), Pen.TRACK);
            places.forEach(place -> plate.circle(place, RADIUS, Pen.STOP));
        } else {
            plate.line(places.get(0).plus(-RADIUS, 0), places.get(0).plus(RADIUS, 0), Pen.TRACK);
        }
        for (int place = 0; steps && place < bases.size(); place++) {
            plate.small(
                    new Spot(left.x() + LABEL, bases.get(place)),
                    Anchor.START,
                    channel.stops().get(place).label());
        }
        return base - 3;
    }

    private double lines(Stop stop, Spot left) {
        double base = left.y();
        double text = textOf(stop);
        for (Said said : stop.says()) {
            base = said(said, new Spot(left.x() + text, base), width - text);
        }
        return base;
    }

    /** A long name is cut rather than the state behind it; gives the last baseline. */
    private double said(Said said, Spot left, double room) {
        List<String> lines = plate.smallLetters().wrapped(said.told(), room, 2);
        if (lines.get(lines.size() - 1).endsWith("…")) {
            lines = new ArrayList<>();
            if (!said.name().isEmpty()) {
                lines.add(plate.smallLetters().cut(said.name(), room));
            }
            if (!said.state().isEmpty()) {
                lines.addAll(plate.smallLetters().wrapped(said.state(), room, 2));
            }
        }
        double base = left.y();
        for (String line : lines) {
            base += step();
            plate.small(new Spot(left.x(), base), Anchor.START, line);
        }
        return base;
    }

    private double textOf(Stop stop) {
        return LABEL
                + (stop.label().isEmpty()
                        ? 0
                        : Math.max(12, plate.smallLetters().width(stop.label()) + 6));
    }

    private double onLoss(ChannelMark channel, Spot left) {
        if (channel.onLoss().isEmpty()) {
            return left.y();
        }
        double base = left.y() + 3;
        plate.diamond(new Spot(left.x() + TRACK, base + step() - 4), RADIUS, Pen.PRESET);
        Said first = channel.onLoss().get(0);
        String start = first.name().isEmpty() ? "signal lost" : "signal lost: " + first.name();
        base = said(new Said(start, first.state()), new Spot(left.x() + LABEL, base), width - LABEL);
        for (Said said : channel.onLoss().subList(1, channel.onLoss().size())) {
            base = said(said, new Spot(left.x() + LABEL, base), width - LABEL);
        }
        return base;
    }

    private String told() {
        StringBuilder told = new StringBuilder(control.name());
        if (!control.note().isEmpty()) {
            told.append(", ").append(control.note());
        }
        for (ChannelMark channel : control.channels()) {
            told.append("; ").append(channel.title());
            for (Stop stop : channel.stops()) {
                told.append(", ")
                        .append(stop.label().isEmpty() ? "" : stop.label() + " ")
                        .append(stop.says().stream().map(Said::told).collect(Collectors.joining(", ")));
            }
        }
        return told.toString();
    }
}
