package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.outputs.BankUse;
import dev.ledgerwing.core.outputs.OutputRow;
import dev.ledgerwing.core.outputs.OutputStatement;
import dev.ledgerwing.core.outputs.bank.Device;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What is wrong with one output, short enough to stand beside it.
 *
 * @param words what is wrong; empty = nothing
 */
public record OutputMark(Verdict verdict, String words) {

    private static final OutputMark FINE = new OutputMark(Verdict.HOLDS, "");

    public static OutputMark of(OutputStatement statement, OutputRow row) {
        Output output = row.output();
        Integer number = output.number();
        if (number == null) {
            return new OutputMark(Verdict.UNKNOWN, "no output is chosen for it yet");
        }
        BankUse use = row.use();
        if (use == null) {
            return statement.fitted() == null
                    ? new OutputMark(Verdict.UNKNOWN, "no flight controller is chosen yet")
                    : new OutputMark(Verdict.BREAKS, "output " + number + " is not on the board");
        }
        List<OutputMark> marks = new ArrayList<>(List.of(FINE));
        if (statement.doubleUse().containsKey(number)) {
            marks.add(new OutputMark(Verdict.BREAKS, "used twice"));
        }
        marks.addAll(against(use, output));
        if (row.couplesServosOfTheFlight()) {
            marks.add(new OutputMark(Verdict.TIGHT, "servos that the flight hangs on share one lead"));
        }
        return marks.stream().max(Comparator.comparing(OutputMark::verdict)).orElse(FINE);
    }

    private static List<OutputMark> against(BankUse use, Output output) {
        Device device = Device.of(output);
        Double rateHz = use.rateHz();
        List<OutputMark> marks = new ArrayList<>();
        if (output.pulse() == null) {
            marks.add(new OutputMark(Verdict.UNKNOWN, "kind of pulse not known"));
        } else if (use.pulse() == null) {
            marks.add(new OutputMark(Verdict.UNKNOWN, "kind of pulse of the bank not known"));
        } else if (use.pulse() != output.pulse()) {
            marks.add(new OutputMark(Verdict.BREAKS, "the bank gives another kind of pulse"));
        }
        if (rateHz == null) {
            marks.add(new OutputMark(Verdict.UNKNOWN, "rate of the bank not known"));
        } else {
            marks.addAll(atRate(output, device, rateHz));
        }
        return marks;
    }

    private static List<OutputMark> atRate(Output output, Device device, double rateHz) {
        Double maxRateHz = output.maxRateHz();
        List<OutputMark> marks = new ArrayList<>();
        if (maxRateHz == null) {
            marks.add(new OutputMark(Verdict.UNKNOWN, "fastest rate that it bears not known"));
        } else if (rateHz > maxRateHz) {
            marks.add(new OutputMark(
                    Verdict.BREAKS, "the bank is faster than the " + hertz(maxRateHz) + " that it bears"));
        }
        if (!device.pulseFits(rateHz)) {
            marks.add(new OutputMark(Verdict.BREAKS, "its pulse is longer than the period of the bank"));
        }
        if (device.missesItsWish(rateHz)) {
            marks.add(new OutputMark(Verdict.TIGHT, "wants a faster rate"));
        }
        return marks;
    }

    static String hertz(double hz) {
        return Figures.number(hz, 1) + "\u2009Hz";
    }

    public boolean isFine() {
        return verdict == Verdict.HOLDS;
    }
}
