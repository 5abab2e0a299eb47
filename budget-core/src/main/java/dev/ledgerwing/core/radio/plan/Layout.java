package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Control;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How the positions of a control lie along the pulse: in {@code coarse} steps of {@code fine} ones. A plain switch has one
 * coarse step; a mix of two switches has one for each position of its first.
 *
 * <p>Positions are counted from 0 here; sets of them are bits of an {@code int}.
 */
record Layout(int coarse, int fine) {

    static Layout plain(int positions) {
        return new Layout(1, positions);
    }

    /** Null where the control moves freely, or mixes what is not there. */
    static @Nullable Layout of(Control control, Map<String, Control> controls) {
        Integer positions = control.positions();
        if (positions == null) {
            return null;
        }
        if (control.kind() == Control.Kind.SWITCH) {
            return plain(positions);
        }
        List<@Nullable Integer> mixed = control.mixes().stream()
                .<@Nullable Integer>map(code -> positions(controls.get(code)))
                .toList();
        Integer coarse = mixed.get(0);
        Integer fine = mixed.get(1);
        return coarse != null && fine != null && coarse * fine == positions ? new Layout(coarse, fine) : null;
    }

    private static @Nullable Integer positions(@Nullable Control control) {
        return control == null ? null : control.positions();
    }

    int positions() {
        return coarse * fine;
    }

    boolean plain() {
        return coarse == 1;
    }

    /** All positions strictly between one of {@code from} and one of {@code to}. */
    int crossed(int from, int to) {
        if (from == 0 || to == 0) {
            return 0;
        }
        return plain() ? between(lowest(from), highest(to)) | between(lowest(to), highest(from)) : around(from, to);
    }

    private int around(int from, int to) {
        int crossed = 0;
        for (int i = 0; i < positions(); i++) {
            for (int j = 0; j < positions(); j++) {
                if (((from >> i) & 1) != 0 && ((to >> j) & 1) != 0) {
                    crossed |= rim(i, j);
                }
            }
        }
        return crossed;
    }

    /** Either switch of a mix may be moved first: the rim of the rectangle that two levels span, without the two. */
    private int rim(int i, int j) {
        int low = Math.min(i / fine, j / fine);
        int high = Math.max(i / fine, j / fine);
        int left = Math.min(i % fine, j % fine);
        int right = Math.max(i % fine, j % fine);
        int rim = 0;
        for (int row = low; row <= high; row++) {
            for (int column = left; column <= right; column++) {
                if (row == low || row == high || column == left || column == right) {
                    rim |= 1 << (row * fine + column);
                }
            }
        }
        return rim & ~(1 << i) & ~(1 << j);
    }

    private static int between(int low, int high) {
        return high <= low + 1 ? 0 : (1 << high) - (1 << (low + 1));
    }

    private static int lowest(int set) {
        return Integer.numberOfTrailingZeros(set);
    }

    private static int highest(int set) {
        return 31 - Integer.numberOfLeadingZeros(set);
    }
}
