package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.radio.plan.ChannelFault.Kind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Holds the recorded channels against the rule by which the planner makes its own. */
public final class PlanCheck {

    private final ChannelProblem problem;
    private final List<Channel> channels;
    private final List<ChannelFault> faults = new ArrayList<>();

    private PlanCheck(ChannelProblem problem) {
        this.problem = problem;
        channels = problem.radio().channels();
    }

    /** Every fault of the recorded channels; none where they do everything that is asked. */
    public static List<ChannelFault> of(ChannelProblem problem) {
        PlanCheck check = new PlanCheck(problem);
        check.functions();
        check.numbers();
        check.controls();
        check.channels.forEach(channel -> check.faults.addAll(ChannelCheck.of(problem, channel)));
        return check.faults;
    }

    private void functions() {
        for (RadioFunction function : problem.onTheRadio()) {
            List<Channel> carrying = channels.stream()
                    .filter(channel -> channel.functions().contains(function.code()))
                    .toList();
            List<String> named = List.of(function.code());
            if (carrying.isEmpty()) {
                faults.add(ChannelFault.of(Kind.NOT_CARRIED, null, named));
            }
            carrying.stream()
                    .skip(1)
                    .forEach(channel -> faults.add(ChannelFault.of(Kind.CARRIED_TWICE, channel.number(), named)));
        }
    }

    private void numbers() {
        Set<Integer> seen = new HashSet<>();
        RadioLink link = problem.radio().link();
        for (Channel channel : channels) {
            if (!seen.add(channel.number())) {
                faults.add(ChannelFault.of(Kind.NUMBER_TWICE, channel.number(), channel.functions()));
            }
            if (link != null && channel.number() > link.channels()) {
                faults.add(ChannelFault.of(Kind.BEYOND_THE_LINK, channel.number(), channel.functions()));
            }
        }
    }

    /** A mix takes the switches that it mixes. */
    private void controls() {
        Set<String> taken = new HashSet<>();
        for (Channel channel : channels) {
            List<String> parts = problem.radio().controls().stream()
                    .filter(control -> control.code().equals(channel.control()))
                    .findFirst()
                    .map(Stock::parts)
                    .orElse(List.of());
            if (parts.stream().anyMatch(taken::contains)) {
                faults.add(ChannelFault.of(Kind.CONTROL_TWICE, channel.number(), channel.functions()));
            }
            taken.addAll(parts);
        }
    }
}
