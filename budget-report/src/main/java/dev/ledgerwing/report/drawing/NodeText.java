package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.PowerView.LoadMark;
import dev.ledgerwing.report.drawing.PowerView.RailMark;
import dev.ledgerwing.report.drawing.PowerView.SourceMark;
import dev.ledgerwing.report.drawing.PowerView.State;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is written at a source or a rail, line by line, its upper left corner at a place of its own.
 *
 * @param symbol of a source; null = a rail
 * @param lines what is written in small letters, broken into lines already
 * @param load of a source; null = a rail
 */
record NodeText(
        Plate plate,
        PowerSource.@Nullable Kind symbol,
        List<String> title,
        List<String> lines,
        @Nullable LoadMark load,
        @Nullable Verdict verdict,
        State state) {

    private static final int MOST_LOADS = 6;
    private static final int MOST_LINES = 2;
    private static final double INDENT = 2 * FeedSymbol.HALF_WIDTH + 6;

    static NodeText of(SourceMark source, Plate plate, double width) {
        return new NodeText(
                plate,
                source.kind(),
                plate.letters().wrapped(source.name(), width - INDENT, MOST_LINES),
                small(plate, source.facts(), width),
                source.load(),
                source.load().verdict(),
                source.state());
    }

    static NodeText of(RailMark rail, Plate plate, double width) {
        List<String> lines = small(plate, rail.facts(), width);
        rail.loads().stream()
                .limit(MOST_LOADS)
                .map(load -> plate.smallLetters().wrapped("· " + load, width, MOST_LINES))
                .forEach(lines::addAll);
        int more = rail.loads().size() - MOST_LOADS;
        if (more > 0) {
            lines.add(plate.smallLetters().cut("· and " + more + " more", width));
        }
        return new NodeText(
                plate,
                null,
                plate.letters().wrapped(rail.name(), width, MOST_LINES),
                lines,
                null,
                rail.verdict(),
                rail.state());
    }

    private static List<String> small(Plate plate, List<String> facts, double width) {
        List<String> lines = new ArrayList<>();
        facts.forEach(fact -> lines.addAll(plate.smallLetters().wrapped(fact, width, MOST_LINES)));
        return lines;
    }

    double height() {
        int rows = title.size() + lines.size() + (hasVerdict() ? 1 : 0) + (hasBar() ? 1 : 0) + (isLit() ? 0 : 1);
        return rows * step() + 4 + below();
    }

    /** How far below its upper edge the middle of its first line is. */
    double firstLine() {
        return 0.62 * step();
    }

    private double step() {
        return 1.3 * plate.letters().size();
    }

    /** Room below the symbol. */
    private double below() {
        return symbol == null ? 0 : 4;
    }

    private boolean isLit() {
        return state == State.LIT;
    }

    private String word() {
        return state == State.DARK ? "dark" : symbol == null ? "shorted" : "failed";
    }

    private boolean hasVerdict() {
        return verdict != null && isLit();
    }

    private boolean hasBar() {
        return load != null && load.verdict() != null && load.percent() != null && isLit();
    }

    void draw(Spot corner) {
        plate.open(isLit() ? "node" : "node dark");
        Spot base = corner.plus(0, step() - 2);
        if (symbol != null) {
            new FeedSymbol(plate, corner.plus(FeedSymbol.HALF_WIDTH, firstLine() + 2), state).draw(symbol);
        }
        for (String line : title) {
            plate.label(base.plus(symbol == null ? 0 : INDENT, 0), Anchor.START, line);
            base = base.plus(0, step());
        }
        base = base.plus(0, below());
        if (!isLit()) {
            plate.label(base, Anchor.START, word());
            base = base.plus(0, step());
        }
        base = judged(base);
        for (String line : lines) {
            plate.small(base, Anchor.START, line);
            base = base.plus(0, step());
        }
        plate.close();
    }

    /** Load bar and verdict; gives the baseline below. */
    private Spot judged(Spot start) {
        Spot base = start;
        if (hasBar() && load != null) {
            new LoadBar(plate, load).draw(base.plus(0, -4));
            base = base.plus(0, step());
        }
        if (hasVerdict() && verdict != null) {
            LoadBar.verdict(plate, base, verdict);
            base = base.plus(0, step());
        }
        return base;
    }
}
