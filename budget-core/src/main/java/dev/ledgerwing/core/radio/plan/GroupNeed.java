package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.Collection;
import java.util.List;
import java.util.OptionalInt;

/** How many positions of a plain switch some switched functions need together. */
public final class GroupNeed {

    private GroupNeed() {}

    /** The fewest, up to twelve; none where none of them carries the functions. Whether they may share is not asked. */
    public static OptionalInt leastPositions(ChannelProblem problem, Collection<RadioFunction> functions) {
        return leastPositions(CodedRadio.of(problem, List.copyOf(functions)));
    }

    static OptionalInt leastPositions(CodedRadio radio) {
        Group group = Group.ofAll(radio);
        for (int positions = 1; positions <= Control.MOST_POSITIONS; positions++) {
            if (GroupSearch.states(group, Layout.plain(positions)) != null) {
                return OptionalInt.of(positions);
            }
        }
        return OptionalInt.empty();
    }
}
