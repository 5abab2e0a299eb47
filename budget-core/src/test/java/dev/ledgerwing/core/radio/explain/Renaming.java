package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A problem in which every code and every name is another, in the opposite order of the alphabet. */
final class Renaming {

    private final ChannelProblem problem;
    private final Map<String, String> codes = new LinkedHashMap<>();
    private final Map<String, String> names = new LinkedHashMap<>();

    Renaming(ChannelProblem problem) {
        this.problem = problem;
        problem.radio().functions().forEach(each -> rename(each.code(), each.name()));
        problem.radio().controls().forEach(each -> rename(each.code(), each.name()));
        problem.phases().forEach(each -> rename(each.code(), each.name()));
    }

    private void rename(String code, String name) {
        codes.put(code, "x" + (900 - codes.size()));
        names.put(name, "Thing " + (900 - names.size()));
    }

    ChannelProblem problem() {
        Radio radio = problem.radio();
        return new ChannelProblem(
                new Radio(
                        radio.link(),
                        radio.controls().stream().map(this::control).toList(),
                        radio.functions().stream().map(this::function).toList(),
                        radio.channels().stream().map(this::channel).toList(),
                        radio.notNeeded().stream().map(this::given).toList()),
                problem.phases().stream().map(this::phase).toList());
    }

    /** A sentence about the renamed problem in the old names. */
    String back(String sentence) {
        String old = sentence;
        for (Map.Entry<String, String> name : names.entrySet()) {
            old = old.replace(name.getValue(), name.getKey());
        }
        return old;
    }

    private String code(String code) {
        return codes.getOrDefault(code, code);
    }

    private String name(String name) {
        return names.getOrDefault(name, name);
    }

    private Control control(Control each) {
        return new Control(code(each.code()), name(each.name()), each.kind(), each.positions(), List.of());
    }

    private RadioFunction function(RadioFunction each) {
        Map<String, Demand> demands = new TreeMap<>();
        each.demandByPhase().forEach((phase, demand) -> demands.put(code(phase), demand));
        return new RadioFunction(
                code(each.code()),
                name(each.name()),
                each.kind(),
                each.states(),
                each.criticality(),
                each.irreversible(),
                each.onSignalLoss(),
                each.decodedBy(),
                demands,
                each.otherwiseBy());
    }

    private Channel channel(Channel each) {
        String control = each.control();
        return new Channel(
                each.number(),
                control == null ? null : code(control),
                each.pinned(),
                each.carries().stream()
                        .map(carried -> new Carried(code(carried.function()), carried.states(), carried.presetState()))
                        .toList());
    }

    private NotNeeded given(NotNeeded each) {
        return new NotNeeded(
                each.id(),
                each.phases().stream().map(this::code).toList(),
                each.states().stream()
                        .map(state -> new FunctionState(code(state.function()), state.state()))
                        .toList(),
                each.by(),
                each.why());
    }

    private Phase phase(Phase each) {
        return new Phase(
                code(each.code()),
                name(each.name()),
                each.minutes(),
                each.stretch(),
                each.loadCase(),
                each.next().stream().map(this::code).toList(),
                each.chargingPossible());
    }
}
