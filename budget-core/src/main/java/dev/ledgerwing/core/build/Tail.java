package dev.ledgerwing.core.build;

/**
 * The horizontal stabiliser: a tail, a V-tail (by its dihedral) or a canard (ahead of the wing).
 *
 * @param efficiency eta_t, the share of the dynamic pressure that reaches it, above 0 to 1.5
 */
public record Tail(Surface surface, double efficiency) {

    public Tail {
        Check.within("efficiency", efficiency, 0.05, 1.5, "");
    }
}
