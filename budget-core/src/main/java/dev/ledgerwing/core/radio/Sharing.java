package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import java.util.List;

/**
 * How much of a plan is shared: a pair of functions on one channel weighs the sum of both, one of comfort 1 and any other 3.
 */
record Sharing(int pairs, int weight) {

    private static final int COMFORT = 1;
    private static final int OTHER = 3;

    static Sharing of(Radio radio, List<Channel> channels) {
        int pairs = 0;
        int weight = 0;
        for (Channel channel : channels) {
            List<RadioFunction> carried = carried(radio, channel);
            int others = carried.size() - 1; // each function is in so many pairs
            pairs += carried.size() * others / 2;
            weight += Math.max(0, others)
                    * carried.stream().mapToInt(Sharing::weight).sum();
        }
        return new Sharing(pairs, weight);
    }

    private static List<RadioFunction> carried(Radio radio, Channel channel) {
        return radio.functions().stream()
                .filter(function ->
                        function.needsChannel() && channel.functions().contains(function.code()))
                .toList();
    }

    private static int weight(RadioFunction function) {
        return function.criticality() == Criticality.CONVENIENCE ? COMFORT : OTHER;
    }
}
