package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** What the radio budget has to say about a build, rule by rule. */
public final class RadioFindings {

    /** Nothing to judge is recorded. */
    public static final String NOTHING = "radio.nothing";
    /** Whether everything fits on the channels of the link. */
    public static final String PLAN = "radio.plan";
    /** Where the recorded channels do not do what is asked. */
    public static final String CHANNEL = "radio.channel";
    /** What is lost because functions share a channel. */
    public static final String SHARING = "radio.sharing";
    /** A function on a shared channel of which it is not known how its states are told apart. */
    public static final String DECODER = "radio.decoder";
    /** Switched functions, and no phases. */
    public static final String NO_PHASES = "radio.no-phases";
    /** A switched function of which no phase asks anything. */
    public static final String NO_DEMAND = "radio.no-demand";
    /** The phase in which the airframe is switched on. */
    public static final String FIRST_PHASE = "radio.first-phase";
    /** What the link does on loss of signal, and who acts. */
    public static final String LINK_LOSS = "radio.link-loss";
    /** What a function does then. */
    public static final String LOSS = "radio.loss";
    /** Functions of which it is not said what they are to do then. */
    public static final String LOSS_NOT_SAID = "radio.loss-not-said";
    /** Functions that get no pulses then. */
    public static final String LOSS_SILENCE = "radio.loss-silence";
    /** Whether the pilot can stop a charging. */
    public static final String CHARGE_STOP = "radio.charge-stop";
    /** Whether the channels fit into the frame. */
    public static final String FRAME = "radio.frame";

    private static final Comparator<Finding> WORST_FIRST =
            Comparator.comparing(Finding::verdict).reversed();

    private RadioFindings() {}

    /** Every finding, worst first; where nothing is recorded, one that says where to begin. */
    public static List<Finding> of(RadioStatement statement, Figures figures) {
        if (statement.radio().functions().isEmpty()) {
            return List.of(nothing(statement.isBlank()));
        }
        return Stream.of(
                        new PlanRule(statement).findings(),
                        new DemandRule(statement).findings(),
                        new LossFindings(statement).findings(),
                        new ChargeStopRule(statement.build()).findings(),
                        Stream.ofNullable(statement.frame()).map(FrameRule::finding))
                .flatMap(Function.identity())
                .sorted(WORST_FIRST)
                .toList();
    }

    private static Finding nothing(boolean blank) {
        return Judged.of(NOTHING, "Radio")
                .finding(
                        Verdict.UNKNOWN,
                        blank
                                ? "Nothing of the radio is recorded: begin with the link, the controls of the transmitter and what the pilot commands."
                                : "No functions are recorded: enter what the pilot commands.");
    }
}
