package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.Moments;
import dev.ledgerwing.core.quantity.Mass;
import java.util.Optional;

/** A mass and its first moments about the datum. Exact: sums do not depend on their order, and parts add up to the whole. */
public record BalanceSum(Mass mass, Moments moments) {

    public static final BalanceSum ZERO = new BalanceSum(Mass.ZERO, Moments.ZERO);

    public BalanceSum plus(BalanceSum other) {
        return new BalanceSum(mass.plus(other.mass), moments.plus(other.moments));
    }

    public BalanceSum minus(BalanceSum other) {
        return new BalanceSum(mass.minus(other.mass), moments.minus(other.moments));
    }

    /** sum(m r) / sum(m) along each axis; empty where there is no mass to balance. */
    public Optional<Cg> cg() {
        if (mass.mg() <= 0) {
            return Optional.empty();
        }
        return Optional.of(new Cg(
                moments.x().armMm(mass), moments.y().armMm(mass), moments.z().armMm(mass)));
    }
}
