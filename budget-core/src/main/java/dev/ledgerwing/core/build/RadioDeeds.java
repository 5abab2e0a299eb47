package dev.ledgerwing.core.build;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What builders take out of the radio and the outputs, each as the record after it: mentions go with what is mentioned. */
public final class RadioDeeds {

    private RadioDeeds() {}

    /** Removes a control, the mixes it is part of, and the mention of both by channels. */
    public static Build withoutControl(Build build, String code) {
        List<Control> left = build.radio().controls().stream()
                .filter(control ->
                        !control.code().equals(code) && !control.mixes().contains(code))
                .toList();
        List<String> codes = left.stream().map(Control::code).toList();
        return build.withChannels(build.radio().channels().stream()
                        .map(channel -> codes.contains(channel.control()) ? channel : channel.withControl(null))
                        .toList())
                .withControls(left);
    }

    /**
     * Puts functions in the place of those there are, some with other names for their states: channels and combinations given up
     * follow the new names.
     *
     * @param functions with demands and signal loss in the new names already
     * @param renamed by the code of the function
     */
    public static Build withFunctions(Build build, List<RadioFunction> functions, Map<String, StateRenaming> renamed) {
        Radio radio = build.radio();
        List<Channel> channels = radio.channels().stream()
                .map(channel -> channel.withCarries(channel.carries().stream()
                        .map(carried -> of(renamed, carried.function()).of(carried))
                        .toList()))
                .toList();
        List<NotNeeded> notNeeded = radio.notNeeded().stream()
                .map(given -> new NotNeeded(
                        given.id(),
                        given.phases(),
                        given.states().stream()
                                .map(each -> of(renamed, each.function()).of(each))
                                .toList(),
                        given.by(),
                        given.why()))
                .toList();
        return build.withRadio(new Radio(radio.link(), radio.controls(), functions, channels, notNeeded));
    }

    private static StateRenaming of(Map<String, StateRenaming> renamed, String function) {
        return renamed.getOrDefault(function, StateRenaming.NONE);
    }

    /** Removes a candidate; where it was the one aboard, none is. */
    public static Build withoutBoard(Build build, String code) {
        FittedBoard fitted = build.outputs().fitted();
        Build cut = code.equals(fitted.board()) ? build.withFittedBoard(new FittedBoard(null, fitted.part())) : build;
        return cut.withBoards(cut.outputs().boards().stream()
                .filter(board -> !board.code().equals(code))
                .toList());
    }

    /** Takes functions off their channels, and out of the combinations given up. */
    static Build withoutFunctionsOnChannels(Build build, Collection<String> functions) {
        return build.withChannels(build.radio().channels().stream()
                        .map(channel -> channel.withCarries(channel.carries().stream()
                                .filter(carried -> !functions.contains(carried.function()))
                                .toList()))
                        .toList())
                .withNotNeeded(build.radio().notNeeded().stream()
                        .filter(given -> given.states().stream().noneMatch(each -> functions.contains(each.function())))
                        .toList());
    }

    /** A combination given up only in phases that are gone is gone too: without any phase it would hold in all. */
    static Build withoutMentionOf(Build build, Collection<String> phases) {
        return build.withFunctions(build.radio().functions().stream()
                        .map(function -> function.withDemandByPhase(without(function.demandByPhase(), phases)))
                        .toList())
                .withNotNeeded(build.radio().notNeeded().stream()
                        .filter(given -> given.phases().isEmpty() || !phases.containsAll(given.phases()))
                        .map(given -> new NotNeeded(
                                given.id(),
                                given.phases().stream()
                                        .filter(phase -> !phases.contains(phase))
                                        .toList(),
                                given.states(),
                                given.by(),
                                given.why()))
                        .toList());
    }

    private static Map<String, Demand> without(Map<String, Demand> demands, Collection<String> phases) {
        Map<String, Demand> left = new TreeMap<>(demands);
        left.keySet().removeAll(phases);
        return left;
    }
}
