package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.BanksView.LeadMark;
import dev.ledgerwing.report.drawing.BanksView.PinMark;
import java.util.List;
import java.util.stream.Stream;

/** A numbered output and the lead from it to what hangs there, forked where there are several pieces. */
record PinSketch(Plate plate, double width) {

    private static final double PIN = 8;
    private static final double HALF_PIN = 15;
    private static final double LEAD = PIN + 2 * HALF_PIN;
    private static final double FORK = 22;
    private static final double TEXT = LEAD + FORK + 8;

    /** Draws below and right of a place and gives the place below. */
    double draw(PinMark pin, Spot left) {
        double base = left.y() + step();
        double middle = base - 4;
        box(new Spot(left.x() + PIN + HALF_PIN, middle), pin.isFree());
        plate.small(new Spot(left.x() + PIN + HALF_PIN, base), Anchor.MIDDLE, String.valueOf(pin.number()));
        if (pin.isFree()) {
            plate.open("free dark");
            plate.small(new Spot(left.x() + TEXT, base), Anchor.START, "free");
            plate.close();
            return base + 9;
        }
        double at = left.y();
        double last = middle;
        for (LeadMark lead : pin.leads()) {
            last = at + step() - 4;
            fork(new Spot(left.x() + LEAD, last), lead.pieces());
            at = told(lead, new Spot(left.x(), at), TEXT);
        }
        if (last > middle) {
            plate.line(new Spot(left.x() + LEAD, middle), new Spot(left.x() + LEAD, last), Pen.LEAD);
        }
        return at + 9;
    }

    /** What hangs on no output. */
    double loose(LeadMark lead, Spot left) {
        double middle = left.y() + step() - 4;
        plate.line(new Spot(left.x() + PIN, middle), new Spot(left.x() + PIN + 16, middle), Pen.FEED_DARK);
        return told(lead, left, PIN + 26) + 4;
    }

    private double step() {
        return 1.3 * plate.letters().size();
    }

    private void box(Spot centre, boolean free) {
        double high = 0.62 * step();
        plate.polygon(
                List.of(
                        centre.plus(-HALF_PIN, -high),
                        centre.plus(HALF_PIN, -high),
                        centre.plus(HALF_PIN, high),
                        centre.plus(-HALF_PIN, high)),
                free ? Pen.PIN_FREE : Pen.PIN);
    }

    private void fork(Spot start, int pieces) {
        if (pieces < 2) {
            plate.line(start, start.plus(FORK, 0), Pen.LEAD);
            plate.circle(start.plus(FORK, 0), 2, Pen.KNOB);
            return;
        }
        plate.line(start, start.plus(FORK / 2, 0), Pen.LEAD);
        for (int side = -1; side <= 1; side += 2) {
            Spot end = start.plus(FORK, side * 5);
            plate.line(start.plus(FORK / 2, 0), end, Pen.LEAD);
            plate.circle(end, 2, Pen.KNOB);
        }
    }

    /** What hangs there in words; gives the last baseline. */
    private double told(LeadMark lead, Spot left, double indent) {
        double base = left.y();
        double text = left.x() + indent;
        double room = width - indent - 8;
        for (String line : plate.letters().wrapped(lead.name(), room, 2)) {
            base += step();
            plate.label(new Spot(text, base), Anchor.START, line);
        }
        for (String fact : facts(lead)) {
            for (String line : plate.smallLetters().wrapped(fact, room, 2)) {
                base += step();
                plate.small(new Spot(text, base), Anchor.START, line);
            }
        }
        Verdict verdict = lead.verdict();
        if (verdict != null) {
            base += step();
            LoadBar.verdict(plate, new Spot(text, base), verdict);
            double beside = LoadBar.width(plate, verdict) + 8;
            String fault = plate.smallLetters().cut(lead.fault(), room - beside);
            plate.small(new Spot(text + beside, base), Anchor.START, fault);
        }
        return base;
    }

    private static List<String> facts(LeadMark lead) {
        return lead.pieces() < 2
                ? lead.facts()
                : Stream.concat(Stream.of(lead.pieces() + " pieces on a Y-lead"), lead.facts().stream())
                        .toList();
    }
}
