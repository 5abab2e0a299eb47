package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.ArrayList;
import java.util.List;

/** Everything that can be taken out of what the channels are asked to do, in the order of the record. */
final class Causes {

    private final ChannelProblem problem;
    private final List<Cause> all = new ArrayList<>();

    private Causes(ChannelProblem problem) {
        this.problem = problem;
    }

    static List<Cause> of(ChannelProblem problem) {
        Causes causes = new Causes(problem);
        causes.functions();
        problem.phases().forEach(causes::demands);
        causes.limits();
        causes.decoders();
        causes.losses();
        causes.pins();
        causes.orders();
        return List.copyOf(causes.all);
    }

    static List<Cause> of(ChannelProblem problem, Cause.Kind kind) {
        return of(problem).stream().filter(each -> each.kind() == kind).toList();
    }

    private List<RadioFunction> all() {
        return problem.radio().functions();
    }

    private void functions() {
        all().forEach(each -> all.add(Cause.of(Cause.Kind.FUNCTION, each.code())));
    }

    private void demands(Phase phase) {
        for (RadioFunction function : all()) {
            for (String state : function.demandIn(phase.code()).mustSelect()) {
                all.add(new Cause(Cause.Kind.DEMAND, function.code(), phase.code(), state));
            }
        }
    }

    /** A limit that shuts out no state is none. */
    private void limits() {
        for (Phase phase : problem.phases()) {
            for (RadioFunction function : all()) {
                Demand demand = function.demandIn(phase.code());
                if (!function.states().stream().allMatch(demand::allows)) {
                    all.add(new Cause(Cause.Kind.LIMIT, function.code(), phase.code(), null));
                }
            }
        }
    }

    private void decoders() {
        all().stream()
                .filter(each -> each.decodedBy() != null && each.decodedBy() != RadioFunction.DecodedBy.TABLE)
                .forEach(each -> all.add(Cause.of(Cause.Kind.DECODER, each.code())));
    }

    private void losses() {
        all().stream()
                .filter(each -> each.onSignalLoss() != null)
                .forEach(each -> all.add(new Cause(Cause.Kind.LOSS, each.code(), null, each.onSignalLoss())));
    }

    private void pins() {
        problem.radio().channels().stream()
                .filter(Channel::pinned)
                .forEach(each -> all.add(Cause.of(Cause.Kind.PIN, each.id())));
    }

    private void orders() {
        for (Phase phase : problem.phases()) {
            phase.next().forEach(next -> all.add(new Cause(Cause.Kind.ORDER, phase.code(), next, null)));
        }
    }
}
