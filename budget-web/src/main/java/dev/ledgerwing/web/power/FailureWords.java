package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.power.failure.Clearing;
import dev.ledgerwing.core.power.failure.DarkLoad;
import dev.ledgerwing.core.power.failure.Failure;
import dev.ledgerwing.core.power.failure.FailureRow;
import dev.ledgerwing.core.power.failure.Overload;
import dev.ledgerwing.core.power.network.ElementAt;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.power.network.RailState;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Says in plain sentences what one failure does. */
record FailureWords(NetworkStatement network) {

    List<String> sentences(FailureRow row) {
        List<String> sentences = new ArrayList<>();
        sentences.addAll(lost(row));
        if (!row.redundant().isEmpty()) {
            sentences.add(
                    names(row.redundant().stream().map(rail -> rail.name()).toList())
                            + " should bear it, and does not.");
        }
        if (!row.unjudged().isEmpty()) {
            sentences.add("Not known whether the voltage is still enough for "
                    + names(row.unjudged().stream()
                            .map(load -> load.line().name())
                            .toList()) + ".");
        }
        if (row.failure().kind() == Failure.Kind.RAIL_SHORTED) {
            sentences.add(stopped(row));
        }
        row.overloads().forEach(overload -> sentences.add(overload(overload)));
        return sentences;
    }

    private List<String> lost(FailureRow row) {
        if (row.functions().isEmpty()) {
            return List.of(row.loads().isEmpty() ? nothing(row) : dark(row.loads()));
        }
        List<String> flight = functions(row, true);
        List<String> others = functions(row, false);
        if (flight.isEmpty()) {
            return List.of(listed(others) + goes(others) + "; the flight does not depend on " + them(others) + ".");
        }
        String first = listed(flight) + goes(flight) + ": the flight depends on " + them(flight) + ".";
        return others.isEmpty() ? List.of(first) : List.of(first, listed(others) + goes(others) + " too.");
    }

    private static List<String> functions(FailureRow row, boolean isFlight) {
        return row.functions().stream()
                .filter(function -> (function.criticality() == RadioFunction.Criticality.FLIGHT) == isFlight)
                .map(RadioFunction::name)
                .toList();
    }

    private static String dark(List<DarkLoad> loads) {
        List<String> names =
                loads.stream().map(load -> load.load().line().name()).distinct().toList();
        return names(names) + goes(names) + "; no function is lost.";
    }

    private String nothing(FailureRow row) {
        String otherwise = row.unjudged().isEmpty() ? "Nothing is lost." : "Nothing is known to be lost.";
        return kept(row.failure()).map(kept -> "Nothing is lost: " + kept + ".").orElse(otherwise);
    }

    private static String goes(List<String> names) {
        return names.size() == 1 ? " goes dark" : " go dark";
    }

    private static String them(List<String> names) {
        return names.size() == 1 ? "it" : "them";
    }

    /** All of them: who looks at a failure wants to know every function that is lost. */
    private static String listed(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    /** What the rail behind a failed element or source keeps through its other feeds. */
    private Optional<String> kept(Failure failure) {
        return gone(failure)
                .flatMap(feed -> network.rail(feed.to())
                        .flatMap(rail -> rail.legs().stream()
                                .filter(leg -> !leg.feed().equals(feed) && leg.lowestV() > 0)
                                .max(Comparator.comparingDouble(RailState.Leg::lowestV))
                                .map(leg -> PowerWords.quoted(rail.rail().name()) + " keeps at least "
                                        + PowerWords.volts(leg.lowestV()) + " through "
                                        + PowerWords.quoted(leg.feed().name()))));
    }

    /** The one feed that carries nothing any more; empty where some of it goes on, or where it is several. */
    private Optional<Feed> gone(Failure failure) {
        ElementAt at = failure.at();
        if (at != null) {
            return network.network()
                    .feed(at.feed())
                    .filter(feed -> feed.elements().get(at.index()).count() == 1);
        }
        List<Feed> feeds =
                failure.kind() == Failure.Kind.SOURCE_OUT ? network.network().feedsFrom(failure.code()) : List.of();
        return feeds.size() == 1 ? Optional.of(feeds.get(0)) : Optional.empty();
    }

    private static String stopped(FailureRow row) {
        List<String> openers = row.clearings().stream()
                .map(Clearing::element)
                .map(element -> element.name())
                .toList();
        List<String> dragged = row.dragged().stream().map(PowerSource::name).toList();
        String opens = openers.isEmpty()
                ? ""
                : names(openers) + (openers.size() == 1 ? " opens and stops it." : " open and stop it.");
        return dragged.isEmpty()
                ? opens.isEmpty() ? "No source reaches it." : opens
                : (opens.isEmpty() ? "" : opens + " ") + "Nothing stops it on the way to " + names(dragged)
                        + ", which it takes with it.";
    }

    private static String overload(Overload overload) {
        return PowerWords.quoted(overload.name()) + " must carry " + PowerWords.amperes(overload.afterA())
                + (overload.isPeak() ? " for moments" : "") + " then; it may carry "
                + PowerWords.amperes(overload.ratingA()) + ".";
    }

    private static String names(List<String> names) {
        return PowerWords.names(names);
    }
}
