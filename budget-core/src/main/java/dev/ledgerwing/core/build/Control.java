package dev.ledgerwing.core.build;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something on the transmitter that the pilot moves.
 *
 * @param positions how many places a switch has; null for what moves freely
 * @param mixes codes of the two switches that together are one control with the product of their positions: the first one
 *     moves in coarse steps along the pulse, the second in fine ones
 */
public record Control(
        String code, String name, Kind kind, @Nullable Integer positions, List<String> mixes) implements Element {

    public static final int MOST_POSITIONS = 12;

    /** One axis of a stick, something that slides or turns, a switch, or two switches mixed onto one channel. */
    public enum Kind {
        STICK,
        SLIDER,
        SWITCH,
        MIXED;

        /** Whether it stands in one of several places. */
        public boolean steps() {
            return this == SWITCH || this == MIXED;
        }
    }

    public Control {
        mixes = List.copyOf(mixes);
        Check.slug("code", code);
        Check.name("name", name);
        Check.require(
                kind.steps() == (positions != null),
                "positions must be said for a SWITCH and not for what moves freely");
        if (positions != null) {
            Check.within("positions", positions, 2, MOST_POSITIONS);
        }
        Check.require(
                kind == Kind.MIXED ? mixes.size() == 2 && !mixes.get(0).equals(mixes.get(1)) : mixes.isEmpty(),
                "mixes must be two different switches for a MIXED control and none for any other");
    }

    public static Control of(String code, String name, Kind kind) {
        return new Control(code, name, kind, null, List.of());
    }

    /** A switch with so many positions. */
    public static Control ofSwitch(String code, String name, int positions) {
        return new Control(code, name, Kind.SWITCH, positions, List.of());
    }

    @Override
    public String id() {
        return code;
    }

    public Control withPositions(int changed) {
        return new Control(code, name, kind, changed, mixes);
    }
}
