package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.report.drawing.EnergyView.PhaseBar;

/** Energy by phase: a bar for each, stacked by the rails that it goes to. An SVG element to stand in a page. */
public final class EnergyChart {

    private static final double DEPTH = 16;
    private static final double SWATCH = 22;

    private final EnergyView view;
    private final Plate plate;
    private final double width;
    private final double step;

    private EnergyChart(EnergyView view, Layout layout) {
        this.view = view;
        this.plate = new Plate(layout);
        this.width = layout.width() - 2 * Board.EDGE;
        this.step = 1.3 * layout.letters();
    }

    public static String svg(EnergyView view, Layout layout) {
        return draw(view, layout).svg();
    }

    static Drawn draw(EnergyView view, Layout layout) {
        return new EnergyChart(view, layout).draw();
    }

    private Drawn draw() {
        double at = Board.EDGE / 2;
        for (PhaseBar phase : view.phases()) {
            at = phase(phase, at);
        }
        at = key(at + 4);
        for (String note : view.notes()) {
            for (String line : plate.smallLetters().wrapped(note, width, 8)) {
                at += step;
                plate.small(new Spot(Board.EDGE, at), Anchor.START, line);
            }
        }
        return plate.finish("energy", view.airframe() + ": energy by phase", at + Board.EDGE);
    }

    private double phase(PhaseBar phase, double top) {
        boolean known = !phase.energyWh().isEmpty();
        String total = known ? wattHours(phase.totalWh()) : "not known";
        plate.open(known ? "phase" : "phase unknown", phase.told() + ": " + total);
        double base = top + step;
        double room = width - plate.letters().width(total) - 12;
        plate.label(new Spot(Board.EDGE, base), Anchor.START, plate.letters().cut(phase.told(), room));
        plate.label(new Spot(Board.EDGE + width, base), Anchor.END, total);
        double left = Board.EDGE;
        double perWh = view.longestWh() == 0 ? 0 : width / view.longestWh();
        for (int part = 0; part < phase.energyWh().size(); part++) {
            double right = left + Math.max(0, phase.energyWh().get(part)) * perWh;
            if (right - left > 0.5) {
                Pattern.of(part).fill(plate, new Box(left, base + 6, right, base + 6 + DEPTH));
            }
            left = right;
        }
        plate.close();
        return base + 6 + DEPTH + 8;
    }

    /** What the patterns mean; a part that takes nothing at all is left out. */
    private double key(double top) {
        double at = top;
        for (int part = 0; part < view.parts().size(); part++) {
            if (view.partWh(part) > 0) {
                Pattern.of(part).fill(plate, new Box(Board.EDGE, at + 5, Board.EDGE + SWATCH, at + 15));
                at += step;
                String words = view.parts().get(part) + ", " + wattHours(view.partWh(part));
                plate.small(
                        new Spot(Board.EDGE + SWATCH + 8, at - 2),
                        Anchor.START,
                        plate.smallLetters().cut(words, width - SWATCH - 8));
            }
        }
        return at;
    }

    private static String wattHours(double energyWh) {
        return Figures.number(energyWh, energyWh < 1 ? 2 : 1) + "\u2009Wh";
    }
}
