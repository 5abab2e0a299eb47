package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.balance.BalanceBand;
import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.Planform;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where one flight case is to land: its band with both limits moved inward by max(1 % of the MAC, 2 u(x)), so that a corrected
 * airframe is neither at a limit nor nearer to it than twice what is known of its CG.
 *
 * @param point where the case balances now
 * @param fromMm the forward limit moved aft, {@code toMm} the aft limit moved forward
 * @param narrow whether the band has no room for both insets, so that the middle of it is aimed for
 */
public record Aim(FlightPoint point, BalanceBand band, double fromMm, double toMm, boolean narrow) {

    static final double INSET_PERCENT_MAC = 1;
    /** Inset where no wing is drawn: 1 % of a chord of 200 mm. Ledgerwing's own choice; from no publication. */
    static final double INSET_MM = 2;
    /**
     * The most that is taken off either side, as a share of the width of the band: a quarter is left in the middle, something to
     * land in with whole grams and millimetres. Ledgerwing's own choice; from no publication.
     */
    static final double MOST_OF_WIDTH = 0.375;

    /** Takes up rounding in sums of doubles; a millionth of a micrometre. */
    private static final double ROUNDING_MM = 1e-9;

    /** One for every flight case at either mass; empty while there is no band. */
    static List<Aim> of(BalanceStatement statement) {
        BalanceBand band = statement.shape().band();
        Planform wing = statement.shape().wing();
        return band == null
                ? List.of()
                : FlightPoint.of(statement).stream()
                        .map(point -> of(point, band, wing))
                        .toList();
    }

    private static Aim of(FlightPoint point, BalanceBand band, @Nullable Planform wing) {
        double least = wing == null ? INSET_MM : wing.macMm() * INSET_PERCENT_MAC / 100;
        double wanted = Math.max(least, 2 * point.uMm());
        double most = MOST_OF_WIDTH * band.widthMm();
        double inset = Math.min(wanted, most);
        return new Aim(point, band, band.forwardXMm() + inset, band.aftXMm() - inset, wanted > most);
    }

    /** Whether something is to be put right: outside the band, or inside it by less than twice the uncertainty. */
    public boolean isWrong() {
        return band.insideMm(point.xMm()) < 2 * point.uMm();
    }

    /** Whether it is the uncertainty of the CG that asks for more than there is room for. */
    boolean isUnsure() {
        return 2 * point.uMm() > MOST_OF_WIDTH * band.widthMm();
    }

    /** How far the CG lies aft of the forward end of the aim; negative ahead of it. */
    double clearOfForwardMm() {
        return point.xMm() - fromMm;
    }

    /** How far the CG lies ahead of the aft end of the aim; negative behind it. */
    double clearOfAftMm() {
        return toMm - point.xMm();
    }

    /** Whether the CG lies where it is aimed for. */
    public boolean isMet() {
        return Math.min(clearOfForwardMm(), clearOfAftMm()) >= -ROUNDING_MM;
    }

    Aim withPoint(FlightPoint changed) {
        return new Aim(changed, band, fromMm, toMm, narrow);
    }

    /** With its ends moved aft by so much each. */
    Aim moved(double fromByMm, double toByMm) {
        return new Aim(point, band, fromMm + fromByMm, toMm + toByMm, narrow);
    }
}
