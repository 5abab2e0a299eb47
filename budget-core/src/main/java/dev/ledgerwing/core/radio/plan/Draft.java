package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Functions that are to be on one channel.
 *
 * @param pin the recorded channel, where that is pinned
 * @param control what moves it, where that is settled before the plan is made
 */
record Draft(
        List<RadioFunction> functions,
        @Nullable Channel pin,
        @Nullable Control control) {

    Draft {
        functions = List.copyOf(functions);
    }

    static Draft of(List<RadioFunction> functions) {
        return new Draft(functions, null, null);
    }

    boolean switched() {
        return !functions.isEmpty() && functions.get(0).kind() == RadioFunction.Kind.SWITCHED;
    }

    boolean proportional() {
        return !functions.isEmpty() && !switched();
    }

    /** Whether no function is on it that may not be with the others. */
    boolean mayBeOne() {
        return functions.size() <= 1 || functions.stream().allMatch(RadioFunction::mayShare);
    }

    /** Each pair on it costs the weights of both. */
    int sharedWeight() {
        int weights = functions.stream().mapToInt(ShareBound::weight).sum();
        return functions.isEmpty() || !mayBeOne() ? 0 : (functions.size() - 1) * weights;
    }
}
