package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.radio.plan.ChannelFault.Kind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The faults of one recorded channel by itself. */
final class ChannelCheck {

    private final ChannelProblem problem;
    private final Channel channel;
    private final List<RadioFunction> functions;
    private final List<ChannelFault> faults = new ArrayList<>();

    private ChannelCheck(ChannelProblem problem, Channel channel) {
        this.problem = problem;
        this.channel = channel;
        functions = problem.onTheRadio().stream()
                .filter(function -> channel.functions().contains(function.code()))
                .toList();
    }

    /** What is on it and needs no channel of the radio is not asked. */
    static List<ChannelFault> of(ChannelProblem problem, Channel channel) {
        ChannelCheck check = new ChannelCheck(problem, channel);
        if (!check.functions.isEmpty()) {
            check.sharing();
            check.presets();
            check.control();
        }
        return check.faults;
    }

    private void sharing() {
        List<String> never = functions.stream()
                .filter(function -> functions.size() > 1 && !function.mayShare())
                .map(RadioFunction::code)
                .toList();
        if (!never.isEmpty()) {
            faults.add(ChannelFault.of(Kind.NEVER_SHARES, channel.number(), never));
        }
    }

    private void presets() {
        if (LossRule.of(problem.radio().link()) != LossRule.PRESET) {
            return;
        }
        for (RadioFunction function : functions) {
            String wanted = function.onSignalLoss();
            if (wanted != null && !wanted.equals(carried(function).presetState())) {
                FunctionState state = new FunctionState(function.code(), wanted);
                faults.add(new ChannelFault(
                        Kind.PRESET, channel.number(), null, List.of(function.code()), List.of(state), null));
            }
        }
    }

    private void control() {
        Map<String, Control> controls = new HashMap<>();
        problem.radio().controls().forEach(each -> controls.putIfAbsent(each.code(), each));
        Control control = channel.control() == null ? null : controls.get(channel.control());
        if (control == null) {
            faults.add(ChannelFault.of(Kind.NO_CONTROL, channel.number(), codes()));
            return;
        }
        boolean allSwitched = functions.stream().allMatch(each -> each.kind() == RadioFunction.Kind.SWITCHED);
        boolean allProportional = functions.stream().noneMatch(each -> each.kind() == RadioFunction.Kind.SWITCHED);
        Layout layout = Layout.of(control, controls);
        if (layout == null ? control.kind().steps() || !allProportional : !allSwitched) {
            faults.add(ChannelFault.of(Kind.WRONG_CONTROL, channel.number(), codes()));
        } else if (layout != null) {
            states(layout);
        }
    }

    private void states(Layout layout) {
        List<RadioFunction> unknown = functions.stream()
                .filter(function ->
                        !function.states().containsAll(carried(function).states()))
                .toList();
        for (RadioFunction function : unknown) {
            faults.add(ChannelFault.of(Kind.NO_SUCH_STATE, channel.number(), List.of(function.code())));
        }
        boolean asMany = functions.stream()
                .allMatch(function -> carried(function).states().size() == layout.positions());
        if (!asMany) {
            faults.add(ChannelFault.of(Kind.WRONG_POSITIONS, channel.number(), codes()));
        } else if (unknown.isEmpty()) {
            faults.addAll(StatesCheck.of(problem, channel, functions, layout));
        }
    }

    private Carried carried(RadioFunction function) {
        return channel.carries().stream()
                .filter(each -> each.function().equals(function.code()))
                .findFirst()
                .orElseThrow();
    }

    private List<String> codes() {
        return functions.stream().map(RadioFunction::code).toList();
    }
}
