package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.quantity.Mass;
import java.util.Collection;
import org.jspecify.annotations.Nullable;

/**
 * The sum of some rows. Rows of unknown mass are counted, not added: {@code unknown} above 0 means that the masses are "at
 * least".
 *
 * @param weighed the part of the basic mass that stands on scales
 */
public record MassTotal(Mass basic, Mass growth, Mass weighed, int rows, int unknown) {

    public static final MassTotal NOTHING = new MassTotal(Mass.ZERO, Mass.ZERO, Mass.ZERO, 0, 0);

    static MassTotal of(Collection<MassRow> rows) {
        MassTotal total = NOTHING;
        for (MassRow row : rows) {
            total = total.plus(row);
        }
        return total;
    }

    private MassTotal plus(MassRow row) {
        Mass more = row.basic();
        Mass grown = row.growth();
        if (more == null || grown == null) {
            return new MassTotal(basic, growth, weighed, rows + 1, unknown + 1);
        }
        Mass onScales = row.basis() == Basis.WEIGHED ? weighed.plus(more) : weighed;
        return new MassTotal(basic.plus(more), growth.plus(grown), onScales, rows + 1, unknown);
    }

    public Mass predicted() {
        return basic.plus(growth);
    }

    public boolean isComplete() {
        return unknown == 0;
    }

    /** How much of the basic mass has been weighed, in per cent of it; null where there is no mass. */
    public @Nullable Double weighedPercent() {
        return basic.mg() == 0 ? null : 100.0 * weighed.mg() / basic.mg();
    }
}
