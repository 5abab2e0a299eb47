package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.radio.LossRow.Reason;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** What is to be said of a lost signal: of the link, and of the functions for which it goes wrong, alike ones in one sentence. */
record LossFindings(RadioStatement statement) {

    private static final String SUBJECT = "Loss of signal";

    /** What other findings say for all functions together. */
    private static final Set<Reason> SAID_ELSEWHERE =
            EnumSet.of(Reason.NOTHING_WRONG, Reason.LINK, Reason.NO_CHANNEL, Reason.NOT_SAID, Reason.NO_PULSES);

    Stream<Finding> findings() {
        return Stream.of(
                        Stream.ofNullable(statement.radio().link()).map(LossFindings::link),
                        statement.onLoss().stream()
                                .filter(row -> !SAID_ELSEWHERE.contains(row.reason()))
                                .map(LossFindings::row),
                        notSaid(),
                        silent(),
                        fine())
                .flatMap(Function.identity());
    }

    private static Finding link(RadioLink link) {
        LossOfSignal.Judgement judged = new LossOfSignal(link).judged();
        return Judged.of(RadioFindings.LINK_LOSS, SUBJECT).finding(judged.verdict(), judged.sentence());
    }

    private static Finding row(LossRow row) {
        return Judged.of(RadioFindings.LOSS, row.function().name()).finding(row.verdict(), row.sentence());
    }

    /** What stops a charging has a finding of its own. */
    private Stream<Finding> notSaid() {
        StopFunctions stops = StopFunctions.of(statement.build());
        List<RadioFunction> functions = functions(Reason.NOT_SAID).stream()
                .filter(function -> !stops.contains(function))
                .toList();
        return functions.isEmpty()
                ? Stream.empty()
                : Stream.of(Judged.of(RadioFindings.LOSS_NOT_SAID, SUBJECT)
                        .finding(
                                Verdict.UNKNOWN,
                                "What " + RadioWords.named(functions)
                                        + (functions.size() == 1 ? " is" : " are")
                                        + " to do on loss of signal is not said."));
    }

    private Stream<Finding> silent() {
        List<RadioFunction> functions = functions(Reason.NO_PULSES);
        return functions.isEmpty()
                ? Stream.empty()
                : Stream.of(Judged.of(RadioFindings.LOSS_SILENCE, SUBJECT)
                        .finding(
                                Verdict.UNKNOWN,
                                "On loss of signal the receiver sends nothing: what " + RadioWords.named(functions)
                                        + (functions.size() == 1 ? " does" : " do") + " then is not known."));
    }

    private Stream<Finding> fine() {
        boolean allHold = statement.onLoss().stream().allMatch(row -> row.verdict() == Verdict.HOLDS);
        return statement.onLoss().isEmpty() || !allHold
                ? Stream.empty()
                : Stream.of(Judged.of(RadioFindings.LOSS, SUBJECT)
                        .finding(Verdict.HOLDS, "On loss of signal every function is to go where it is wanted."));
    }

    private List<RadioFunction> functions(Reason reason) {
        return statement.onLoss().stream()
                .filter(row -> row.reason() == reason)
                .map(LossRow::function)
                .toList();
    }
}
