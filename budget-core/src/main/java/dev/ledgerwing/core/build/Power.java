package dev.ledgerwing.core.build;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The supply of the airframe: where current comes from, on which ways, to which rails.
 *
 * @param day the day in the sun that is looked at; null = none
 */
public record Power(
        List<PowerSource> sources,
        List<Rail> rails,
        List<Feed> feeds,
        PowerRules rules,
        @Nullable SolarDay day) {

    public static final Power NONE = new Power(List.of(), List.of(), List.of(), PowerRules.DEFAULT, null);

    public Power {
        sources = List.copyOf(sources);
        rails = List.copyOf(rails);
        feeds = List.copyOf(feeds);
    }
}
