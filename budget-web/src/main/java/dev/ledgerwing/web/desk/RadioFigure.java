package dev.ledgerwing.web.desk;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How many channels a radio takes at least and how many the link has; null = not known.
 *
 * @param sharedPairs how many pairs of functions stand on one channel together
 */
public record RadioFigure(
        @Nullable Integer channelsNeeded,
        @Nullable Integer channelsAvailable,
        @Nullable Integer sharedPairs) {

    /** From the figures of a review. */
    public static RadioFigure of(Map<String, Double> figures) {
        return new RadioFigure(
                whole(figures.get("radio.channelsNeeded")),
                whole(figures.get("radio.channelsAvailable")),
                whole(figures.get("radio.sharedPairs")));
    }

    static @Nullable Integer whole(@Nullable Double figure) {
        return figure == null ? null : Math.toIntExact(Math.round(figure));
    }

    /** {@code 8 channels needed, 6 there}, or {@code 5 of 8 channels needed, 1 pair shares}; what is not known is left out. */
    public String words() {
        if (channelsAvailable == null) {
            return channelsNeeded == null || channelsNeeded == 0 ? "no link yet" : channels(channelsNeeded) + " needed";
        }
        if (channelsNeeded == null) {
            return channels(channelsAvailable) + shared();
        }
        return channelsNeeded > channelsAvailable
                ? channels(channelsNeeded) + " needed, " + channelsAvailable + " there"
                : channelsNeeded + " of " + channels(channelsAvailable) + " needed" + shared();
    }

    private static String channels(int count) {
        return count == 1 ? "1 channel" : count + " channels";
    }

    private String shared() {
        if (sharedPairs == null || sharedPairs == 0) {
            return "";
        }
        return sharedPairs == 1 ? ", 1 pair shares" : ", " + sharedPairs + " pairs share";
    }
}
