package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.List;
import java.util.function.Function;

/** Tells what is in the way besides what the phases ask: decoders, the loss of the signal, pins, and what follows on what. */
record OtherWords(ChannelProblem core, List<Cause> causes) {

    void addTo(List<Reason> reasons) {
        each(reasons, Cause.Kind.DECODER, Reason.Kind.DECODER, this::decoder);
        losses(reasons);
        each(reasons, Cause.Kind.PIN, Reason.Kind.PIN, this::pin);
        each(reasons, Cause.Kind.ORDER, Reason.Kind.PHASE_ORDER, this::order);
    }

    private List<Cause> of(Cause.Kind kind) {
        return causes.stream().filter(each -> each.kind() == kind).toList();
    }

    private void each(List<Reason> reasons, Cause.Kind kind, Reason.Kind as, Function<Cause, String> words) {
        of(kind).forEach(cause -> reasons.add(new Reason(as, List.of(cause), words.apply(cause))));
    }

    private String decoder(Cause cause) {
        RadioFunction function = function(cause);
        return function.decodedBy() == RadioFunction.DecodedBy.ONE_STEP
                ? "Along the pulse " + function.name() + " can change only once."
                : function.name() + " must follow the pulse: each state has one place on it, and they come in order.";
    }

    private void losses(List<Reason> reasons) {
        List<Cause> losses = of(Cause.Kind.LOSS);
        if (!losses.isEmpty()) {
            List<String> wanted = losses.stream()
                    .map(each -> function(each).name() + " " + each.state())
                    .toList();
            reasons.add(new Reason(
                    Reason.Kind.SIGNAL_LOSS,
                    losses,
                    "When the signal is lost, " + Names.joined(wanted)
                            + (losses.size() == 1 ? " is wanted." : " are wanted.")));
        }
    }

    private String pin(Cause cause) {
        Channel channel = core.radio().channels().stream()
                .filter(each -> each.id().equals(cause.code()))
                .findFirst()
                .orElseThrow();
        List<RadioFunction> carried = core.radio().functions().stream()
                .filter(each -> channel.functions().contains(each.code()))
                .toList();
        String on = core.radio().controls().stream()
                .filter(each -> each.code().equals(channel.control()))
                .map(Control::name)
                .findFirst()
                .map(name -> " on " + name)
                .orElse("");
        return "Channel " + channel.number() + " is pinned" + on
                + (carried.isEmpty() ? " and carries nothing." : " and carries " + Names.of(carried) + " only.");
    }

    private String order(Cause cause) {
        return phase(cause.code()) + " may be followed by " + phase(String.valueOf(cause.phase())) + ".";
    }

    private String phase(String code) {
        return core.phases().stream()
                .filter(each -> each.code().equals(code))
                .map(Phase::name)
                .findFirst()
                .orElse(code);
    }

    private RadioFunction function(Cause cause) {
        return core.radio().functions().stream()
                .filter(each -> each.code().equals(cause.code()))
                .findFirst()
                .orElseThrow();
    }
}
