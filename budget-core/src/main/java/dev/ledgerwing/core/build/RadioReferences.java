package dev.ledgerwing.core.build;

import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Checks that what is recorded of the radio refers to functions, states, controls and phases that are there. */
final class RadioReferences {

    private final Map<ElementKind, List<? extends Element>> elements;
    private final Map<String, RadioFunction> functions = new HashMap<>();
    private final Map<String, Control> controls = new HashMap<>();
    private final Set<String> phases;
    private final List<Problem> problems = new ArrayList<>();

    private RadioReferences(Map<ElementKind, List<? extends Element>> elements) {
        this.elements = elements;
        all(ElementKind.FUNCTION, RadioFunction.class).forEach(each -> functions.put(each.code(), each));
        all(ElementKind.CONTROL, Control.class).forEach(each -> controls.put(each.code(), each));
        phases = all(ElementKind.PHASE, Phase.class).stream().map(Phase::code).collect(Collectors.toUnmodifiableSet());
    }

    static List<Problem> problems(Map<ElementKind, List<? extends Element>> elements, @Nullable RadioLink link) {
        RadioReferences references = new RadioReferences(elements);
        references.demands();
        references.mixes();
        references.channels(link);
        references.notNeeded();
        return references.problems;
    }

    private void demands() {
        List<RadioFunction> all = all(ElementKind.FUNCTION, RadioFunction.class);
        for (int i = 0; i < all.size(); i++) {
            String place = ElementKind.FUNCTION.place(i) + ".demandByPhase";
            all.get(i).demandByPhase().keySet().forEach(phase -> phase(place, phase));
        }
    }

    private void mixes() {
        List<Control> all = all(ElementKind.CONTROL, Control.class);
        for (int i = 0; i < all.size(); i++) {
            Control mix = all.get(i);
            String place = ElementKind.CONTROL.place(i);
            int product = 1;
            for (String code : mix.mixes()) {
                Control mixed = controls.get(code);
                if (mixed == null || mixed.kind() != Control.Kind.SWITCH || mixed.positions() == null) {
                    add(place + ".mixes", "there is no switch “" + code + "”");
                } else {
                    product *= mixed.positions();
                }
            }
            if (mix.kind() == Control.Kind.MIXED
                    && mix.positions() != null
                    && product != mix.positions()
                    && mix.mixes().stream().allMatch(controls::containsKey)) {
                add(place + ".positions", "must be " + product + ", the product of the switches it mixes");
            }
        }
    }

    private void channels(@Nullable RadioLink link) {
        List<Channel> all = all(ElementKind.CHANNEL, Channel.class);
        for (int i = 0; i < all.size(); i++) {
            Channel channel = all.get(i);
            String place = ElementKind.CHANNEL.place(i);
            if (link != null && channel.number() > link.channels()) {
                add(place + ".number", "the link has " + link.channels() + " channels, was " + channel.number());
            }
            if (channel.control() != null && !controls.containsKey(channel.control())) {
                add(place + ".control", "there is no control “" + channel.control() + "”");
            }
            channel.carries().forEach(carried -> carried(place + ".carries", carried));
        }
    }

    private void carried(String place, Carried carried) {
        RadioFunction function = functions.get(carried.function());
        if (function == null) {
            add(place, "there is no function “" + carried.function() + "”");
            return;
        }
        carried.states().forEach(state -> state(place, function, function.states(), state));
        if (carried.presetState() != null) {
            boolean switched = function.kind() == RadioFunction.Kind.SWITCHED;
            state(place, function, switched ? function.states() : RadioFunction.LOSS_PLACES, carried.presetState());
        }
    }

    private void notNeeded() {
        List<NotNeeded> all = all(ElementKind.NOT_NEEDED, NotNeeded.class);
        for (int i = 0; i < all.size(); i++) {
            String place = ElementKind.NOT_NEEDED.place(i);
            all.get(i).phases().forEach(phase -> phase(place + ".phases", phase));
            for (FunctionState given : all.get(i).states()) {
                RadioFunction function = functions.get(given.function());
                if (function == null) {
                    add(place + ".states", "there is no function “" + given.function() + "”");
                } else {
                    state(place + ".states", function, function.states(), given.state());
                }
            }
        }
    }

    private void phase(String place, String code) {
        if (!phases.contains(code)) {
            add(place, "there is no phase “" + code + "”");
        }
    }

    private void state(String place, RadioFunction function, List<String> states, String state) {
        if (!states.contains(state)) {
            add(place, "“" + function.name() + "” has no state “" + state + "”");
        }
    }

    private <E extends Element> List<E> all(ElementKind kind, Class<E> type) {
        return elements.getOrDefault(kind, List.of()).stream().map(type::cast).toList();
    }

    private void add(String place, String sentence) {
        problems.add(new Problem(place, sentence));
    }
}
