package dev.ledgerwing.core.build;

import java.util.Locale;

/** How far a part has come on its way into the airframe. */
public enum FitState {
    PLANNED,
    ON_ORDER,
    IN_HAND,
    FITTED;

    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
