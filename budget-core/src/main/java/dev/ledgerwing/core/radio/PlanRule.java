package dev.ledgerwing.core.radio;

import static dev.ledgerwing.core.radio.RadioWords.and;
import static dev.ledgerwing.core.radio.RadioWords.channels;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.radio.plan.ChannelFault;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whether everything fits on the channels, where the recorded ones go wrong, and what their sharing costs. */
record PlanRule(RadioStatement statement) {

    /** The weightiest; the rest is with the plan. */
    private static final int MOST_TOLD = 1;

    Stream<Finding> findings() {
        return Stream.concat(Stream.of(plan()), Stream.concat(faults(), sharing()));
    }

    private Finding plan() {
        return switch (statement.proposed().outcome()) {
            case NOT_KNOWN ->
                finding(
                        Verdict.UNKNOWN,
                        "Whether everything fits on the channels is not known: "
                                + (statement.isUndecided() ? "" : "enter ")
                                + and(statement.proposed().missing())
                                + ".");
            case DOES_NOT_FIT -> finding(Verdict.BREAKS, doesNotFit());
            case FITS -> statement.isRecorded() ? recorded() : notPlanned();
        };
    }

    private String doesNotFit() {
        Integer needed = statement.channelsNeeded();
        if (needed == null) {
            return statement.fitsOnNoNumber()
                    ? "What is asked does not fit on any number of channels with the controls there are."
                    : "Not everything fits on the channels of the link, and how many would do is not known: there are too many combinations.";
        }
        return channels(needed) + (needed == 1 ? " is" : " are") + " needed with the controls there are, the link has "
                + statement.channelsAvailable() + ".";
    }

    private Finding notPlanned() {
        int used = statement.proposed().channels().size();
        return used == 0
                ? finding(Verdict.HOLDS, "No function needs a channel of the radio.")
                : finding(
                        Verdict.UNKNOWN,
                        "The channels are not planned yet: a plan fits, on " + used + " of " + available() + ".");
    }

    private Finding recorded() {
        if (faultsSaid().stream().anyMatch(fault -> fault.kind() != ChannelFault.Kind.NOT_DECIDED)) {
            Remedy again = new Remedy(
                    "Plan again: everything fits on "
                            + channels(statement.proposed().channels().size()) + ".",
                    null,
                    null);
            return judged().finding(
                            Verdict.BREAKS,
                            "The recorded channels do not do what is asked, although a plan fits.",
                            again);
        }
        if (!faultsSaid().isEmpty()) {
            return finding(
                    Verdict.UNKNOWN, "A plan fits; whether the recorded channels do what is asked is not known.");
        }
        String fits = "Everything fits on " + statement.inForce().size() + " of " + available();
        int pairs = statement.sharedPairs();
        return pairs == 0
                ? finding(Verdict.HOLDS, fits + ", each function on its own.")
                : finding(
                        Verdict.TIGHT,
                        fits + ", with " + (pairs == 1 ? "one pair" : pairs + " pairs")
                                + " of functions on one switch.");
    }

    private Stream<Finding> faults() {
        FaultWords words = new FaultWords(statement);
        return faultsSaid().stream()
                .map(fault -> Judged.of(RadioFindings.CHANNEL, words.subject(fault))
                        .finding(
                                fault.kind() == ChannelFault.Kind.NOT_DECIDED ? Verdict.UNKNOWN : Verdict.BREAKS,
                                words.sentence(fault)));
    }

    /** A wrong preset is told with what becomes of its function. */
    private List<ChannelFault> faultsSaid() {
        Set<String> told = statement.onLoss().stream()
                .filter(LossRow::isOfThePreset)
                .map(row -> row.function().code())
                .collect(Collectors.toUnmodifiableSet());
        return statement.faults().stream()
                .filter(fault -> fault.kind() != ChannelFault.Kind.PRESET || !told.containsAll(fault.functions()))
                .toList();
    }

    /** Said of recorded channels only: a proposal is looked at before it is taken. */
    private Stream<Finding> sharing() {
        return statement.isRecorded()
                ? statement.inForce().stream()
                        .filter(channel -> functions(channel).size() > 1)
                        .flatMap(channel -> Stream.concat(Stream.of(shared(channel)), decoders(channel)))
                : Stream.empty();
    }

    private Finding shared(Channel channel) {
        List<String> costs = statement.couplings().stream()
                .filter(coupling -> coupling.channel() == channel.number())
                .map(Coupling::sentence)
                .toList();
        String share = RadioWords.named(functions(channel)) + " share " + channel.name() + ".";
        return Judged.of(RadioFindings.SHARING, channel.name())
                .finding(
                        Verdict.TIGHT,
                        costs.isEmpty()
                                ? share + " Nothing that a phase asks for is lost by it."
                                : share + " " + told(costs));
    }

    private static String told(List<String> costs) {
        int more = costs.size() - MOST_TOLD;
        String first = costs.stream().limit(MOST_TOLD).collect(Collectors.joining(" "));
        return more < 1 ? first : first + (more == 1 ? " And one more coupling." : " And " + more + " more couplings.");
    }

    private Stream<Finding> decoders(Channel channel) {
        return functions(channel).stream()
                .filter(function -> function.kind() == RadioFunction.Kind.SWITCHED && function.decodedBy() == null)
                .map(
                        function -> Judged.of(RadioFindings.DECODER, function.name())
                                .finding(
                                        Verdict.UNKNOWN,
                                        RadioWords.quoted(function.name()) + " shares " + channel.name()
                                                + ", but how its states are told apart is not known: it is taken as a table that means any state by any range of the pulse."));
    }

    private List<RadioFunction> functions(Channel channel) {
        return statement.radio().functions().stream()
                .filter(function ->
                        function.needsChannel() && channel.functions().contains(function.code()))
                .toList();
    }

    private String available() {
        Integer available = statement.channelsAvailable();
        return available == null ? "channels" : channels(available);
    }

    private Finding finding(Verdict verdict, String sentence) {
        return judged().finding(verdict, sentence);
    }

    private Judged judged() {
        return Judged.channels(RadioFindings.PLAN, statement.channelsNeeded(), statement.channelsAvailable());
    }
}
