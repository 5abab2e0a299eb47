package dev.ledgerwing.web.team;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.UnitSystem;

/** Somebody of the team. Controllers receive the signed-in one, or just their {@link Figures}, as a parameter. */
public record Member(long id, String name, UnitSystem units) {

    /** Writes figures in the units this member reads. */
    public Figures figures() {
        return new Figures(units);
    }
}
