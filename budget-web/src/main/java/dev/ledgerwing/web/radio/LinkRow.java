package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.PulseTrain;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.RadioLink.ActsOnLoss;
import dev.ledgerwing.core.build.RadioLink.BoardLearnsBy;
import dev.ledgerwing.core.build.RadioLink.OnLoss;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.radio.FrameTiming;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One thing that is known of the link, or not. */
record LinkRow(String what, String words) {

    private static final String NOT_KNOWN = "not known";

    /** None where there is no link. */
    static List<LinkRow> of(@Nullable RadioLink link, @Nullable FrameTiming frame) {
        if (link == null) {
            return List.of();
        }
        List<LinkRow> rows = new ArrayList<>(List.of(
                new LinkRow("Channels", String.valueOf(link.channels())),
                new LinkRow("When the signal is lost, the receiver", onLoss(link.onLoss())),
                new LinkRow("To safe states is brought by", acts(link.actsOnLoss()))));
        if (link.actsOnLoss() == ActsOnLoss.BOARD) {
            rows.add(new LinkRow("The flight controller learns of it by", learns(link.boardLearnsBy())));
        }
        if (frame != null) {
            rows.add(new LinkRow("Pulses one behind the other", pulses(frame.train())));
            rows.add(new LinkRow(frame.isFixed() ? "The gap between two frames" : "The longest frame", timing(frame)));
        }
        return rows;
    }

    private static String onLoss(@Nullable OnLoss onLoss) {
        return onLoss == null
                ? NOT_KNOWN
                : switch (onLoss) {
                    case HOLD -> "keeps the last command";
                    case PRESET -> "goes to stored positions";
                    case NO_PULSES -> "falls silent";
                };
    }

    private static String acts(@Nullable ActsOnLoss acts) {
        return acts == null
                ? NOT_KNOWN
                : switch (acts) {
                    case RECEIVER -> "the receiver, by what it sends";
                    case BOARD -> "the flight controller itself";
                };
    }

    private static String learns(@Nullable BoardLearnsBy by) {
        return by == null
                ? NOT_KNOWN
                : switch (by) {
                    case FLAG -> "a word of the receiver among its data";
                    case SILENCE -> "silence";
                    case OUT_OF_RANGE -> "a channel that goes where no control can take it";
                    case NOTHING -> "nothing: it is not told";
                };
    }

    private static String pulses(PulseTrain train) {
        Double frame = train.frameUs();
        return (frame == null ? "frames as long as they need" : "frames of " + micros(frame)) + ", pulses up to "
                + micros(train.longestPulseUs()) + ", gap of at least " + micros(train.leastGapUs());
    }

    /** The sum as it is worked out by hand: {@code 22 500 − 8 × 2 000 = 6 500 µs}. */
    private static String timing(FrameTiming frame) {
        String pulses = frame.channels() + " × " + micros(frame.train().longestPulseUs());
        String sum = frame.isFixed()
                ? micros(frame.frameUs()) + " − " + pulses + " = " + micros(frame.gapUs()) + " at the shortest"
                : pulses + " + " + micros(frame.train().leastGapUs()) + " = " + micros(frame.frameUs());
        return sum + ", " + Figures.number(frame.framesPerSecond(), 1) + " frames a second: "
                + (frame.fits() ? "holds" : "does not fit");
    }

    private static String micros(double us) {
        return Figures.number(us, 0) + "\u2009µs";
    }
}
