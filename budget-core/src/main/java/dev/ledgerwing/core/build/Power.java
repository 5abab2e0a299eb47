package dev.ledgerwing.core.build;

import java.util.List;

/** The supply of the airframe. */
public record Power(List<Rail> rails) {

    public static final Power NONE = new Power(List.of());

    public Power {
        rails = List.copyOf(rails);
    }
}
