package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.PowerView.ElementMark;
import dev.ledgerwing.report.drawing.PowerView.State;
import java.util.List;

/** One thing on a way: its symbol on the line, its name below, its load below that. */
record ElementCell(Plate plate, ElementMark element, double width) {

    static final double LEAST_WIDTH = 92;
    private static final double ABOVE = FeedSymbol.HALF_HEIGHT + 3;

    /** How far the line lies below the upper edge. */
    static double above() {
        return ABOVE;
    }

    double height() {
        return 2 * ABOVE + (name().size() + notes()) * step() + 2;
    }

    private int notes() {
        return switch (element.state()) {
            case FAILED -> 1;
            case DARK -> 0;
            case LIT -> element.load().verdict() == null ? (rating().isEmpty() ? 0 : 1) : 1 + bar();
        };
    }

    private int bar() {
        return element.load().percent() == null ? 0 : 1;
    }

    private List<String> name() {
        return plate.smallLetters().wrapped(element.name(), width - 4, 3);
    }

    private String rating() {
        return element.load().rating();
    }

    private double step() {
        return 1.2 * plate.smallLetters().size();
    }

    void draw(Spot onLine) {
        plate.open(cssClass(), told());
        new FeedSymbol(plate, onLine, element.state()).draw(element.kind());
        Spot base = onLine.plus(0, ABOVE + step() - 3);
        for (String line : name()) {
            plate.small(base, Anchor.MIDDLE, line);
            base = base.plus(0, step());
        }
        notes(base);
        plate.close();
    }

    private String cssClass() {
        return element.state() == State.DARK ? "element dark" : "element";
    }

    private void notes(Spot base) {
        Verdict verdict = element.load().verdict();
        if (element.state() == State.FAILED) {
            plate.small(base, Anchor.MIDDLE, "failed: " + element.failure());
        } else if (element.state() == State.DARK) {
            return; // nothing flows that could be judged
        } else if (verdict == null) {
            if (!rating().isEmpty()) {
                plate.small(base, Anchor.MIDDLE, plate.smallLetters().cut(rating(), width - 4));
            }
        } else {
            judged(base, verdict);
        }
    }

    private void judged(Spot base, Verdict verdict) {
        LoadBar bar = new LoadBar(plate, element.load());
        double down = 0;
        if (element.load().percent() != null) {
            double wide = LoadBar.LENGTH + 5 + plate.smallLetters().width(bar.share());
            bar.draw(base.plus(-wide / 2, -4));
            down = step();
        }
        LoadBar.verdict(plate, base.plus(-LoadBar.width(plate, verdict) / 2, down), verdict);
    }

    private String told() {
        return ElementWords.told(element);
    }
}
