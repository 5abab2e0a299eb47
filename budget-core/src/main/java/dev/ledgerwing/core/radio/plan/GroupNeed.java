package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.radio.plan.Effort.TooManyCombinations;
import java.util.Collection;
import java.util.List;
import java.util.OptionalInt;

/** How many positions of a plain switch some switched functions need together. */
public final class GroupNeed {

    private GroupNeed() {}

    /** The fewest, up to twelve; none where none of them carries the functions, or where that is too hard to tell. */
    public static OptionalInt leastPositions(ChannelProblem problem, Collection<RadioFunction> functions) {
        try {
            return leastPositions(CodedRadio.of(problem, List.copyOf(functions)), Control.MOST_POSITIONS);
        } catch (TooManyCombinations searchedInVain) {
            return OptionalInt.empty();
        }
    }

    /** Where no servo tells every position from the next, as many as there may be carry whatever fewer do. */
    static OptionalInt leastPositions(CodedRadio radio, int most) {
        Group group = Group.ofAll(radio);
        if (!group.has(DecodedBy.SERVO) && GroupSearch.states(group, Layout.plain(most)) == null) {
            return OptionalInt.empty();
        }
        for (int positions = 1; positions <= most; positions++) {
            if (GroupSearch.states(group, Layout.plain(positions)) != null) {
                return OptionalInt.of(positions);
            }
        }
        return OptionalInt.empty();
    }
}
