package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.ArrayList;
import java.util.List;

/** Tells the core of a plan that does not fit: who takes up what, who would have to share, and what is asked of them. */
final class ReasonWords {

    private final ChannelProblem core;
    private final List<Cause> causes;
    private final Room room;
    private final List<Reason> reasons = new ArrayList<>();

    private ReasonWords(ChannelProblem core) {
        this.core = core;
        this.causes = Causes.of(core);
        this.room = Room.of(core.radio());
    }

    static List<Reason> of(ChannelProblem core) {
        ReasonWords words = new ReasonWords(core);
        words.functions();
        core.phases().forEach(words::phase);
        new OtherWords(core, words.causes).addTo(words.reasons);
        return List.copyOf(words.reasons);
    }

    /** Where there are too many combinations to tell which functions are in the way of each other. */
    static Reason ofAll(ChannelProblem problem) {
        List<RadioFunction> functions = problem.onTheRadio();
        return new Reason(
                Reason.Kind.HAVE_TO_SHARE,
                functions.stream()
                        .map(each -> Cause.of(Cause.Kind.FUNCTION, each.code()))
                        .toList(),
                "All " + functions.size()
                        + " functions together do not fit; there are too many combinations to tell which of them are in the way.");
    }

    private void functions() {
        if (room.sharing().isEmpty()) {
            settled();
            return;
        }
        if (!room.settled().isEmpty()) {
            add(room.channelsBind() ? Reason.Kind.TAKES_CHANNELS : Reason.Kind.TAKES_SWITCHES, room.settled(), taken());
        }
        sharing();
    }

    /** A name may be of one thing or of several, so a single one is not followed by a verb. */
    private String taken() {
        String channels = room.channelsBind()
                ? room.taken() + " of " + Names.count(room.channels(), "channel")
                : room.switched() + " of " + Names.count(room.switches(), "switch");
        String names = Names.of(room.settled());
        return room.settled().size() == 1
                ? channels + " is taken by " + names + "."
                : names + " take " + channels + ".";
    }

    private void settled() {
        if (room.proportional().size() > room.moving()) {
            mustHave(Reason.Kind.NO_STICK_LEFT, "a stick or a slider", room.moving());
        } else if (room.taken() > room.channels()) {
            mustHave(Reason.Kind.OWN_CHANNELS, "a channel", room.channels());
        } else if (room.switched() > room.switches()) {
            mustHave(Reason.Kind.NO_SWITCH_LEFT, "a switch", room.switches());
        } else {
            tooFewPositions(room.settled());
        }
    }

    private void mustHave(Reason.Kind kind, String what, int there) {
        String each = room.settled().size() == 1 ? "; " : " each; ";
        add(kind, room.settled(), Names.of(room.settled()) + " must have " + what + each + there(there) + ".");
    }

    private static String there(int number) {
        return number == 0 ? "there is none" : number == 1 ? "there is only 1" : "there are only " + number;
    }

    private void sharing() {
        int places = Math.min(room.channelsLeft(), room.switchesLeft());
        if (room.sharing().size() <= places) {
            tooFewPositions(room.sharing());
            return;
        }
        String place = room.channelsBind() ? "channel" : "switch";
        String names = Names.of(room.sharing());
        String sentence = places <= 0
                ? "No " + place + (room.settled().isEmpty() ? " is there for " : " is left for ") + names + "."
                : names + " would have to share "
                        + (places == 1 ? "the 1 " + place : "the " + Names.count(places, place))
                        + (room.settled().isEmpty() ? " there " + (places == 1 ? "is" : "are") : " left")
                        + "; no control has more than " + room.mostPositions() + " positions.";
        add(Reason.Kind.HAVE_TO_SHARE, room.sharing(), sentence);
    }

    private void tooFewPositions(List<RadioFunction> functions) {
        String what = functions.size() == 1
                ? "No control that is there can do what is asked of "
                : "The controls that are there cannot do, each on a channel of its own, what is asked of ";
        add(
                Reason.Kind.TOO_FEW_POSITIONS,
                functions,
                what + Names.of(functions) + "; none has more than " + room.mostPositions() + " positions.");
    }

    private void add(Reason.Kind kind, List<RadioFunction> functions, String sentence) {
        reasons.add(new Reason(
                kind,
                functions.stream()
                        .map(each -> Cause.of(Cause.Kind.FUNCTION, each.code()))
                        .toList(),
                sentence));
    }

    private void phase(Phase phase) {
        List<Cause> asked = causes.stream()
                .filter(each -> phase.code().equals(each.phase()) && each.kind() != Cause.Kind.ORDER)
                .toList();
        if (!asked.isEmpty()) {
            List<String> clauses = core.radio().functions().stream()
                    .filter(each ->
                            asked.stream().anyMatch(cause -> cause.code().equals(each.code())))
                    .map(each -> PhaseClause.of(each, each.demandIn(phase.code())))
                    .toList();
            reasons.add(
                    new Reason(Reason.Kind.PHASE, asked, "In " + phase.name() + ", " + Names.clauses(clauses) + "."));
        }
    }
}
