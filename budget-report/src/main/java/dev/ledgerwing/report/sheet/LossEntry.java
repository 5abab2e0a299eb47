package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.radio.LossRow;
import dev.ledgerwing.core.radio.LossRow.Happens;
import dev.ledgerwing.core.radio.RadioStatement;
import java.util.List;
import java.util.Objects;

/** What one function does when the signal is lost. */
public record LossEntry(String function, String wanted, String goesTo, String by, VerdictMark verdict, String why) {

    static List<LossEntry> of(RadioStatement radio) {
        return radio.onLoss().stream().map(LossEntry::of).toList();
    }

    private static LossEntry of(LossRow row) {
        return new LossEntry(
                row.function().name(),
                Objects.requireNonNullElse(row.wanted(), "not said"),
                Objects.requireNonNullElse(row.goesTo(), unnamed(row.happens())),
                by(row.happens()),
                VerdictMark.of(row.verdict()),
                row.sentence());
    }

    private static String unnamed(Happens happens) {
        return happens == Happens.HOLD
                ? "stays where it was"
                : happens == Happens.SILENCE ? "left to itself" : "not known";
    }

    private static String by(Happens happens) {
        return switch (happens) {
            case PRESET -> "preset of the receiver";
            case HOLD -> "receiver repeats the last command";
            case SILENCE -> "no pulses";
            case BOARD -> "flight controller";
            case NOT_KNOWN -> "not known";
        };
    }
}
