package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Two states of two functions need not be selectable together any more.
 *
 * @param phases the one in which that is enough, or every phase that asks for both
 */
public record GiveUp(
        RadioFunction first, String firstState, RadioFunction second, String secondState, List<Phase> phases)
        implements Relaxation {

    public GiveUp {
        phases = List.copyOf(phases);
    }

    /** The same in one phase. */
    GiveUp only(Phase phase) {
        return new GiveUp(first, firstState, second, secondState, List.of(phase));
    }

    @Override
    public Kind kind() {
        return Kind.GIVE_UP;
    }

    @Override
    public String key() {
        String where = phases.size() == 1 ? phases.get(0).code() : "every-phase";
        return "give-up:" + first.code() + "=" + firstState + "," + second.code() + "=" + secondState + "@" + where;
    }

    @Override
    public String what() {
        return "Give up " + both() + " in " + where() + ".";
    }

    @Override
    public String loses() {
        return "In " + where() + " nobody can have " + both() + " at the same time.";
    }

    private String both() {
        return first.name() + " " + firstState + " and " + second.name() + " " + secondState;
    }

    private String where() {
        return Names.joined(phases.stream().map(Phase::name).toList());
    }

    @Override
    public Loss loss() {
        return Loss.ofFunctions(phases.size() == 1 ? 1 : 2, first, second);
    }

    @Override
    public Radio in(Radio radio, String by, String why) {
        List<NotNeeded> given = new ArrayList<>(radio.notNeeded());
        given.add(new NotNeeded(
                freshId(given),
                phases.stream().map(Phase::code).toList(),
                List.of(new FunctionState(first.code(), firstState), new FunctionState(second.code(), secondState)),
                by,
                why));
        return new Radio(radio.link(), radio.controls(), radio.functions(), radio.channels(), given);
    }

    private static String freshId(List<NotNeeded> given) {
        Set<String> taken = given.stream().map(NotNeeded::id).collect(Collectors.toSet());
        int number = given.size() + 1;
        while (taken.contains("N" + number)) {
            number++;
        }
        return "N" + number;
    }
}
