package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.radio.RadioStatement;
import org.jspecify.annotations.Nullable;

/** Whether everything finds its channel, in one sentence. */
final class VerdictWords {

    private VerdictWords() {}

    static String of(RadioStatement radio) {
        return switch (radio.proposed().outcome()) {
            case NOT_KNOWN -> notKnown(radio);
            case DOES_NOT_FIT -> doesNotFit(radio);
            case FITS -> fits(radio);
        };
    }

    private static String notKnown(RadioStatement radio) {
        if (radio.isUndecided()) {
            return "Whether everything finds a channel is not known: there are too many combinations to decide.";
        }
        String missing = RadioNames.all(radio.proposed().missing().stream());
        return "It is not known yet whether everything finds a channel"
                + (missing.isEmpty() ? "." : "; missing: " + missing + ".");
    }

    private static String doesNotFit(RadioStatement radio) {
        Integer needed = radio.channelsNeeded();
        Integer available = radio.channelsAvailable();
        if (needed == null && !radio.fitsOnNoNumber()) {
            return "It does not fit; how many channels would do is not known.";
        }
        return needed == null || available == null || needed <= available
                ? "With these controls it does not fit, however many channels the link has."
                : counts(needed, available) + ": does not fit.";
    }

    private static String fits(RadioStatement radio) {
        if (radio.radio().functions().isEmpty()) {
            return "Nothing that the pilot commands is recorded yet.";
        }
        String start = counts(radio.channelsNeeded(), radio.channelsAvailable());
        if (!radio.isRecorded()) {
            return start + ": fits, but no channels are recorded yet.";
        }
        int faults = radio.broken().size();
        if (faults > 0) {
            return start + ": a plan fits, but not the recorded one. "
                    + (faults == 1 ? "It breaks a rule once." : "It breaks rules " + faults + " times.");
        }
        if (!radio.faults().isEmpty()) {
            return start + ": a plan fits; whether the recorded one does is not known.";
        }
        int used = radio.inForce().size();
        return there(radio.channelsAvailable()) + ", " + used + " in use: fits" + shared(radio.sharedPairs())
                + fewer(radio.channelsNeeded(), used);
    }

    private static String shared(int pairs) {
        return pairs == 0
                ? ", each function alone."
                : pairs == 1
                        ? ", with one pair that shares a channel."
                        : ", with " + pairs + " pairs that share channels.";
    }

    private static String fewer(@Nullable Integer needed, int used) {
        return needed == null || needed >= used ? "" : " With more sharing " + needed + " would be enough.";
    }

    /** {@code 6 channels, 8 needed}. */
    private static String counts(@Nullable Integer needed, @Nullable Integer available) {
        return there(available) + (needed == null ? "" : ", " + needed + " needed");
    }

    private static String there(@Nullable Integer available) {
        return available == null ? "No link" : RadioNames.count(available, "channel");
    }
}
