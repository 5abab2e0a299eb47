package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.power.network.LoadState;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.power.network.RailLoad;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One finding about the functions that the flight hangs on. */
record FunctionRule(FailureTable table) {

    private static final String SUBJECT = "Single failures";

    Stream<Finding> findings() {
        Set<String> served = table.statement().loads().stream()
                .map(LoadState::load)
                .flatMap(load -> load.line().serves().stream())
                .collect(Collectors.toSet());
        if (served.isEmpty()) {
            return Stream.of(unknown("no part that is fed says which functions it serves"));
        }
        List<RadioFunction> flight = table.statement().network().build().radio().functions().stream()
                .filter(function -> function.criticality() == Criticality.FLIGHT && served.contains(function.code()))
                .toList();
        return Stream.of(
                flight.isEmpty()
                        ? unknown("no part that is fed serves a function that the flight hangs on")
                        : of(flight));
    }

    private Finding of(List<RadioFunction> flight) {
        List<FailureRow> losing =
                table.rows().stream().filter(FailureRow::losesFlight).toList();
        if (!losing.isEmpty()) {
            return tight(losing);
        }
        if (table.statement().isCutShort()) {
            return unknown("there are more ways to feed the rails than were looked at");
        }
        List<String> notKnown = notKnown(flight);
        return notKnown.isEmpty()
                ? FailureFindings.finding(
                        Verdict.HOLDS,
                        SUBJECT,
                        "No single failure of the supply takes a function that the flight hangs on.")
                : unknown("it is not known whether the voltage is enough for " + PowerWords.names(notKnown));
    }

    private Finding tight(List<FailureRow> losing) {
        FailureRow worst = losing.get(0);
        String lost = PowerWords.names(worst.functions().stream()
                .filter(function -> function.criticality() == Criticality.FLIGHT)
                .map(RadioFunction::name)
                .toList());
        String count = losing.size() + " of " + table.rows().size() + " single failures "
                + (losing.size() == 1 ? "takes" : "take") + " a function that the flight hangs on";
        return FailureFindings.finding(
                Verdict.TIGHT,
                SUBJECT,
                count + ". " + worst.failure().words() + ": " + lost
                        + (worst.functions().size() == 1 ? " is" : " are") + " lost.");
    }

    private List<String> notKnown(List<RadioFunction> flight) {
        Set<String> codes = flight.stream().map(RadioFunction::code).collect(Collectors.toSet());
        return Stream.concat(table.rows().stream().flatMap(row -> row.unjudged().stream()), neverJudged())
                .map(load -> load.line())
                .filter(line -> line.serves().stream().anyMatch(codes::contains))
                .map(line -> line.name())
                .distinct()
                .toList();
    }

    /** On rails that are not solved, and those that get too little already while everything is in order. */
    private Stream<RailLoad> neverJudged() {
        return table.statement().loads().stream().filter(this::isNeverJudged).map(LoadState::load);
    }

    private boolean isNeverJudged(LoadState state) {
        Double lowestV = state.lowestV();
        String rail = state.load().load().rail();
        return lowestV == null
                ? rail != null && table.statement().network().isUnsolved(rail)
                : lowestV <= 0 || state.isTooLow();
    }

    private static Finding unknown(String why) {
        return FailureFindings.finding(
                Verdict.UNKNOWN,
                SUBJECT,
                "Whether a single failure takes a function that the flight hangs on is not known: " + why + ".");
    }
}
