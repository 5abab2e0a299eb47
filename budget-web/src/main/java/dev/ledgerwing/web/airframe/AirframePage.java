package dev.ledgerwing.web.airframe;

import java.util.Locale;

/** The pages of an airframe, each reached by a cell of its title block. */
public enum AirframePage {
    PARTS,
    MASS,
    BALANCE,
    POWER,
    RADIO,
    OUTPUTS,
    HISTORY,
    SHEETS;

    /** The address of this page for an airframe. */
    public String address(String code) {
        return "/airframes/" + code + "/" + name().toLowerCase(Locale.ROOT);
    }
}
