package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.RadioLink.ActsOnLoss;
import dev.ledgerwing.core.build.RadioLink.BoardLearnsBy;
import dev.ledgerwing.core.build.RadioLink.OnLoss;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.radio.FrameTiming;
import dev.ledgerwing.core.radio.RadioStatement;
import dev.ledgerwing.core.radio.plan.PlanAnswer.Outcome;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.report.drawing.OutputWords;
import dev.ledgerwing.report.drawing.RadioWords;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The radio of one build in words and figures. What is not known says so. */
public final class RadioSummary {

    private static final String NOT_KNOWN = "not known";

    private final BuildReview review;
    private final RadioStatement radio;

    public RadioSummary(BuildReview review) {
        this.review = review;
        this.radio = review.radio();
    }

    public VerdictMark verdict() {
        return VerdictMark.of(review.verdict(Budget.RADIO));
    }

    /** The summary, cell by cell. */
    public List<Fact> facts() {
        return Stream.concat(
                        Stream.of(channels(), plan(), shared(), onLoss()),
                        Stream.ofNullable(radio.frame()).map(RadioSummary::gap))
                .toList();
    }

    /** How many channels what is asked needs, against those there are. */
    public Fact channels() {
        Integer available = radio.channelsAvailable();
        Integer needed = radio.channelsNeeded();
        String note = available == null ? "the link is not recorded" : "of " + available + " that the link has";
        boolean known = radio.proposed().outcome() != Outcome.NOT_KNOWN;
        return new Fact(
                "Channels needed",
                needed != null ? count(needed) : known && radio.fitsOnNoNumber() ? "do not fit" : NOT_KNOWN,
                note);
    }

    private Fact plan() {
        int used = radio.inForce().size();
        if (radio.isRecorded()) {
            return new Fact("Plan", OutputWords.count(used, "channel"), judged());
        }
        return switch (radio.proposed().outcome()) {
            case FITS -> new Fact("Plan", OutputWords.count(used, "channel"), "only proposed, not recorded");
            case DOES_NOT_FIT -> new Fact("Plan", "none", "what is asked does not fit");
            case NOT_KNOWN ->
                new Fact(
                        "Plan",
                        NOT_KNOWN,
                        radio.isUndecided() ? "too many combinations" : "not everything is recorded");
        };
    }

    private String judged() {
        return switch (radio.proposed().outcome()) {
            case FITS ->
                radio.faults().isEmpty()
                        ? "recorded"
                        : radio.broken().isEmpty() ? "recorded, not known to fit" : "recorded, but not what is asked";
            case DOES_NOT_FIT -> "recorded, but does not fit";
            case NOT_KNOWN -> "recorded, not known to fit";
        };
    }

    /** How many pairs of functions share a channel. */
    public Fact shared() {
        if (radio.inForce().isEmpty()) {
            return new Fact("Sharing", NOT_KNOWN, "there is no plan");
        }
        int pairs = radio.sharedPairs();
        return pairs == 0
                ? new Fact("Sharing", "none", "each function has a channel of its own")
                : new Fact("Sharing", pairs == 1 ? "1 pair" : pairs + " pairs", "of functions on one channel");
    }

    /** What the link does when the signal is lost, and who acts. */
    public Fact onLoss() {
        RadioLink link = radio.build().radio().link();
        if (link == null || link.onLoss() == null) {
            return new Fact("Signal lost", NOT_KNOWN, "what the receiver does");
        }
        return new Fact("Signal lost", told(link.onLoss()), acts(link));
    }

    private static String told(OnLoss onLoss) {
        return switch (onLoss) {
            case HOLD -> "last command";
            case PRESET -> "presets";
            case NO_PULSES -> "no pulses";
        };
    }

    private static String acts(RadioLink link) {
        ActsOnLoss acts = link.actsOnLoss();
        if (acts == null) {
            return "who acts is not known";
        }
        String who = RadioWords.of(acts) + " acts";
        return acts == ActsOnLoss.RECEIVER ? who : who + ", told " + told(link.boardLearnsBy());
    }

    private static String told(@Nullable BoardLearnsBy by) {
        return by == null ? "it is not known how" : RadioWords.of(by);
    }

    private static Fact gap(FrameTiming frame) {
        return new Fact("Shortest gap", micros(frame.gapUs()), frame.fits() ? "long enough" : "too short");
    }

    /** The arithmetic of the frame, cell by cell; none = the link sends no train of pulses. */
    List<Fact> frame() {
        FrameTiming frame = radio.frame();
        if (frame == null) {
            return List.of();
        }
        double longest = frame.train().longestPulseUs();
        return List.of(
                new Fact(
                        "Pulses",
                        micros(frame.channels() * longest),
                        frame.channels() + " × " + micros(longest) + " at most"),
                new Fact(
                        "Frame",
                        micros(frame.frameUs()),
                        frame.isFixed() ? "fixed" : "at its longest, as long as pulses and gap take"),
                new Fact(
                        "Shortest gap",
                        micros(frame.gapUs()),
                        (frame.fits() ? "enough: " : "too short: ")
                                + micros(frame.train().leastGapUs()) + " wanted, and longer than a pulse"),
                new Fact("Sent", Figures.number(frame.framesPerSecond(), 1) + " times a second", "each channel"));
    }

    private static String count(int number) {
        return String.valueOf(number);
    }

    static String micros(double us) {
        return Figures.number(us, 1) + "\u2009µs";
    }
}
