package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.core.build.RadioLink;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** Twenty switched functions over ten phases that have to go on fewer channels. */
public enum Squeeze {
    /** What a team records: each phase asks for a few functions, some of them for both of their states. */
    USUAL(6, 3) {
        @Override
        Demand demand(Random random, int phase, List<String> states) {
            int asked = random.nextInt(20);
            return asked < 14 ? Demand.OPEN : asked < 19 ? Demand.select(any(random, states)) : all(states);
        }
    },
    /** No two demands ever meet. */
    ALL_TOGETHER(5, 3) {
        @Override
        Demand demand(Random random, int phase, List<String> states) {
            return random.nextInt(3) == 0 ? Demand.select(states.get(phase % 2)) : Demand.OPEN;
        }
    },
    /** Every two functions are demanded in both states at once: one more channel would be needed. */
    NONE_TOGETHER(19, 2) {
        @Override
        Demand demand(Random random, int phase, List<String> states) {
            return all(states);
        }
    },
    /** Every function has three states, of which some do harm. */
    THREE_STATES(9, 3) {
        @Override
        List<String> states() {
            return List.of("one", "two", "three");
        }

        @Override
        Demand demand(Random random, int phase, List<String> states) {
            String chosen = any(random, states);
            return random.nextInt(10) < 7
                    ? Demand.OPEN
                    : new Demand(List.of(chosen), List.of(chosen, any(random, states)));
        }
    },
    /** Switches of six positions, decoders that flip once, and a receiver that holds what it had. */
    SIX_POSITIONS(6, 6) {
        @Override
        Demand demand(Random random, int phase, List<String> states) {
            int asked = random.nextInt(20);
            return asked < 12 ? Demand.OPEN : asked < 17 ? Demand.select(any(random, states)) : all(states);
        }

        @Override
        DecodedBy decoder(int function) {
            return function % 3 == 0 ? DecodedBy.ONE_STEP : DecodedBy.TABLE;
        }

        @Override
        RadioLink link() {
            return new RadioLink(6, RadioLink.OnLoss.HOLD, RadioLink.ActsOnLoss.RECEIVER, null, null);
        }
    };

    private static final int FUNCTIONS = 20;
    private static final int PHASES = 10;

    private final int channels;
    private final int positions;

    Squeeze(int channels, int positions) {
        this.channels = channels;
        this.positions = positions;
    }

    abstract Demand demand(Random random, int phase, List<String> states);

    List<String> states() {
        return List.of("off", "on");
    }

    DecodedBy decoder(int function) {
        return DecodedBy.TABLE;
    }

    RadioLink link() {
        return RadioLink.of(channels);
    }

    ChannelProblem problem(long seed) {
        Random random = new Random(seed);
        List<RadioFunction> functions = new ArrayList<>();
        for (int f = 0; f < FUNCTIONS; f++) {
            functions.add(function(f, random));
        }
        List<Control> controls = new ArrayList<>();
        for (int c = 0; c < channels; c++) {
            controls.add(Control.ofSwitch("switch-" + c, "Switch " + c, positions));
        }
        return new ChannelProblem(new Radio(link(), controls, functions, List.of(), List.of()), phases());
    }

    private RadioFunction function(int f, Random random) {
        Map<String, Demand> demands = new TreeMap<>();
        for (int p = 0; p < PHASES; p++) {
            demands.put("phase-" + p, demand(random, p, states()));
        }
        Criticality criticality = f % 3 == 0 ? Criticality.CONVENIENCE : Criticality.MISSION;
        return new RadioFunction(
                "function-" + f,
                "Function " + f,
                Kind.SWITCHED,
                states(),
                criticality,
                false,
                "off".equals(states().get(0)) && f % 2 == 0 ? "off" : null,
                decoder(f),
                demands,
                null);
    }

    private static List<Phase> phases() {
        List<Phase> phases = new ArrayList<>();
        for (int p = 0; p < PHASES; p++) {
            List<String> next = p + 1 < PHASES ? List.of("phase-" + (p + 1)) : List.of();
            phases.add(new Phase("phase-" + p, "Phase " + p, null, false, null, next, false));
        }
        return phases;
    }

    private static String any(Random random, List<String> states) {
        return states.get(random.nextInt(states.size()));
    }

    private static Demand all(List<String> states) {
        return new Demand(states, List.of());
    }
}
