package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.forms.Entries;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Reads the combinations given up. Who gave one up stays unless something of it was changed. */
final class GivenUpRows {

    static final String LIST = "given";
    private static final int FEWEST = 2;
    private static final int LONGEST_WHY = 200;
    private static final String BETWEEN = "=";

    private final Entries entries;
    private final Build seen;
    private final String member;

    GivenUpRows(Entries entries, Build seen, String member) {
        this.entries = entries;
        this.seen = seen;
        this.member = member;
    }

    /** A state as a choice of a list sends it. No code of a function has this sign in it. */
    static String value(FunctionState given) {
        return given.function() + BETWEEN + given.state();
    }

    /** {@code Landing gear up with Charging off}. */
    static String words(NotNeeded given, Build build) {
        return given.states().stream()
                .map(each -> {
                    RadioFunction function = Elements.find(build.radio().functions(), each.function());
                    return (function == null ? each.function() : function.name()) + " " + each.state();
                })
                .collect(Collectors.joining(" with "));
    }

    private String row(int index) {
        return LIST + "." + index;
    }

    private int count() {
        return entries.typed().rows(LIST);
    }

    /** How many states can be chosen in each row: one more than were, within the number of functions. */
    List<Integer> picks(int functions) {
        return IntStream.range(0, count())
                .mapToObj(i -> Math.max(FEWEST, Math.min(functions, chosen(row(i)) + 1)))
                .toList();
    }

    private int chosen(String row) {
        int chosen = 0;
        for (int i = 0; !entries.typed().all(row + ".state." + i).isEmpty(); i++) {
            chosen = entries.typed().text(row + ".state." + i).isEmpty() ? chosen : i + 1;
        }
        return chosen;
    }

    /** Who gave each up, row by row; empty for a new one. */
    List<String> givenBy() {
        return IntStream.range(0, count())
                .mapToObj(i -> {
                    NotNeeded was = was(row(i));
                    return was == null ? "" : was.by();
                })
                .toList();
    }

    private @Nullable NotNeeded was(String row) {
        return Elements.find(seen.radio().notNeeded(), entries.typed().text(row + ".code"));
    }

    List<NotNeeded> takenBack() {
        List<String> gone = entries.typed().gone(LIST);
        return seen.radio().notNeeded().stream()
                .filter(each -> gone.contains(each.id()))
                .toList();
    }

    List<NotNeeded> read() {
        List<NotNeeded> all = new ArrayList<>();
        for (int i = 0; i < count(); i++) {
            boolean isNew = entries.typed().isBlank(row(i), List.of("code", "why", "phases")) && chosen(row(i)) == 0;
            NotNeeded given = isNew ? null : given(row(i), all);
            if (given != null) {
                all.add(given);
            }
        }
        return all;
    }

    private @Nullable NotNeeded given(String row, List<NotNeeded> others) {
        List<FunctionState> states = states(row);
        List<String> known = seen.phases().stream().map(Phase::code).toList();
        List<String> phases = entries.typed().all(row + ".phases");
        if (!known.containsAll(phases)) {
            entries.trouble(row + ".phases", "One of these phases is not there any more.");
        }
        String why = entries.line(row + ".why", LONGEST_WHY);
        if (why.isEmpty()) {
            entries.trouble(row + ".why", "Please say what for: others will ask.");
        }
        if (!entries.areFine()) {
            return null;
        }
        NotNeeded was = was(row);
        if (was != null
                && was.states().equals(states)
                && Set.copyOf(was.phases()).equals(Set.copyOf(phases))
                && was.why().equals(why)) {
            return was;
        }
        return new NotNeeded(was == null ? fresh(states, others) : was.id(), phases, states, member, why);
    }

    private String fresh(List<FunctionState> states, List<NotNeeded> others) {
        List<NotNeeded> taken = new ArrayList<>(seen.radio().notNeeded());
        taken.addAll(others);
        String name = states.stream()
                .map(each -> each.function() + " " + each.state())
                .collect(Collectors.joining(" "));
        return Elements.freshCode(name, LIST, taken);
    }

    private List<FunctionState> states(String row) {
        List<FunctionState> states = new ArrayList<>();
        Set<String> functions = new HashSet<>();
        for (int i = 0; i < chosen(row); i++) {
            String field = row + ".state." + i;
            if (!entries.typed().text(field).isEmpty()) {
                FunctionState state = state(field);
                if (state != null && !functions.add(state.function())) {
                    entries.trouble(field, "A function is in one state at a time: please choose another function.");
                }
                if (state != null) {
                    states.add(state);
                }
            }
        }
        if (entries.areFine() && states.size() < FEWEST) {
            String field =
                    row + ".state." + (entries.typed().text(row + ".state.0").isEmpty() ? 0 : 1);
            entries.trouble(field, "Please choose states of two functions at least.");
        }
        return states;
    }

    private @Nullable FunctionState state(String field) {
        String[] typed = entries.typed().text(field).split(BETWEEN, 2);
        RadioFunction function = Elements.find(seen.radio().functions(), typed[0]);
        if (function == null || typed.length < 2 || !function.states().contains(typed[1])) {
            entries.trouble(field, "This state is not there any more. Please choose one from the list.");
            return null;
        }
        return new FunctionState(function.code(), typed[1]);
    }
}
