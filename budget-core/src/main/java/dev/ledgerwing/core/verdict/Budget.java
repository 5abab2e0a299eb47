package dev.ledgerwing.core.verdict;

import java.util.Locale;

/** The budgets that are recomputed at each change. */
public enum Budget {
    MASS,
    BALANCE,
    POWER,
    RADIO,
    OUTPUTS;

    public String title() {
        return name().charAt(0) + code().substring(1);
    }

    /** Lower-case word used in figures' names: {@code mass.basicG}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
