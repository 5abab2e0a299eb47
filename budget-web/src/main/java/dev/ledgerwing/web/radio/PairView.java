package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.radio.plan.PairNeed;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Which switched functions can share a switch of how many positions, and which never.
 *
 * @param alone the functions that never share with any, and why
 * @param rows the others, each held against all of them
 * @param reasons why two of the others never share
 */
record PairView(List<String> alone, List<Row> rows, List<String> reasons) {

    /** More columns than these do not stand side by side. */
    private static final int WIDEST = 9;

    /**
     * One function.
     *
     * @param cells positions needed together with each of the others, {@code never}, or empty with itself
     * @param words the same said, the fewest positions first
     */
    record Row(String function, List<String> cells, List<String> words) {}

    /** Whether there are two that could share at all. */
    public boolean hasPairs() {
        return rows.size() > 1;
    }

    /** Whether it can be shown as functions against functions. */
    public boolean isNarrow() {
        return rows.size() <= WIDEST;
    }

    static PairView of(Radio radio, List<PairNeed> pairs) {
        List<RadioFunction> switched = radio.functions().stream()
                .filter(function -> function.needsChannel() && function.kind() == RadioFunction.Kind.SWITCHED)
                .toList();
        List<RadioFunction> sharing =
                switched.stream().filter(RadioFunction::mayShare).toList();
        return new PairView(
                switched.stream()
                        .filter(function -> !function.mayShare())
                        .map(PairView::alone)
                        .toList(),
                sharing.stream().map(function -> row(function, sharing, pairs)).toList(),
                reasons(sharing, pairs));
    }

    private static String alone(RadioFunction function) {
        return function.name()
                + (function.criticality() == Criticality.FLIGHT
                        ? ": the flight depends on it."
                        : ": it cannot be taken back.");
    }

    private static Row row(RadioFunction function, List<RadioFunction> others, List<PairNeed> pairs) {
        List<String> cells = new ArrayList<>();
        SortedMap<Integer, List<String>> byPositions = new TreeMap<>();
        for (RadioFunction other : others) {
            PairNeed pair = pair(function.code(), other.code(), pairs);
            Integer positions = pair == null ? null : pair.positions();
            cells.add(pair == null ? "" : positions == null ? "never" : positions.toString());
            if (pair != null) {
                byPositions
                        .computeIfAbsent(positions == null ? Integer.MAX_VALUE : positions, key -> new ArrayList<>())
                        .add(other.name());
            }
        }
        return new Row(function.name(), cells, words(byPositions));
    }

    private static List<String> words(SortedMap<Integer, List<String>> byPositions) {
        return byPositions.entrySet().stream()
                .map(entry -> (entry.getKey() == Integer.MAX_VALUE ? "Never" : "On " + entry.getKey() + " positions")
                        + " with " + RadioNames.all(entry.getValue().stream()))
                .toList();
    }

    private static @Nullable PairNeed pair(String one, String other, List<PairNeed> pairs) {
        return pairs.stream()
                .filter(pair -> (pair.first().equals(one) && pair.second().equals(other))
                        || (pair.first().equals(other) && pair.second().equals(one)))
                .findFirst()
                .orElse(null);
    }

    /** In words, for pairs of which each alone could share. */
    private static List<String> reasons(List<RadioFunction> sharing, List<PairNeed> pairs) {
        var names = sharing.stream().collect(Collectors.toMap(RadioFunction::code, RadioFunction::name));
        return pairs.stream()
                .filter(pair -> names.containsKey(pair.first()) && names.containsKey(pair.second()))
                .filter(pair -> pair.why() != PairNeed.Never.NONE)
                .map(pair -> Objects.requireNonNull(names.get(pair.first())) + " and "
                        + Objects.requireNonNull(names.get(pair.second())) + ": " + reason(pair.why()))
                .toList();
    }

    private static String reason(PairNeed.Never why) {
        return switch (why) {
            case NONE -> "they can.";
            case FLIGHT -> "the flight depends on one of them.";
            case IRREVERSIBLE -> "one of them cannot be taken back.";
            case LOSS_OF_SIGNAL -> "not with the states that are wanted when the signal is lost.";
            case NO_ORDER ->
                "in no order along the pulse can both be told apart without passing through a state that does harm.";
            case CLASH -> "no switch has enough positions for all that the phases ask for together.";
            case NOT_DECIDED -> "not known: there are too many combinations to decide.";
        };
    }
}
