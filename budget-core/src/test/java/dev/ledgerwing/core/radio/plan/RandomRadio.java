package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.RadioLink.ActsOnLoss;
import dev.ledgerwing.core.build.RadioLink.OnLoss;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Small radios at random, the same ones for the same seed. */
final class RandomRadio {

    private final Random random;
    private final int[] positions;
    private final int mostFunctions;

    private RandomRadio(long seed, int mostFunctions, int... positions) {
        random = new Random(seed);
        this.mostFunctions = mostFunctions;
        this.positions = positions;
    }

    /** Up to five functions, and switches of two, three and six positions. */
    static ChannelProblem of(long seed) {
        return new RandomRadio(seed, 5, 2, 3, 6).problem();
    }

    /** Up to four functions, and switches of two and three positions. */
    static ChannelProblem small(long seed) {
        return new RandomRadio(seed, 4, 2, 3).problem();
    }

    /** Up to three functions, and switches of two and three positions that are not mixed: small enough to try everything. */
    static ChannelProblem tiny(long seed) {
        ChannelProblem problem = new RandomRadio(seed, 3, 2, 3).problem();
        Radio radio = problem.radio();
        List<Control> plain = radio.controls().stream()
                .filter(control -> control.kind() == Control.Kind.SWITCH)
                .toList();
        return new ChannelProblem(
                new Radio(radio.link(), plain, radio.functions(), List.of(), radio.notNeeded()), problem.phases());
    }

    private ChannelProblem problem() {
        List<Phase> phases = phases(random.nextInt(4));
        List<RadioFunction> functions = new ArrayList<>();
        int count = 2 + random.nextInt(mostFunctions - 1);
        for (int f = 0; f < count; f++) {
            functions.add(function(f, phases));
        }
        List<Control> controls = controls();
        List<NotNeeded> given = new ArrayList<>();
        for (int g = random.nextInt(5); g > 0; g--) {
            given.add(givenUp(g, functions, phases));
        }
        List<Channel> channels = random.nextInt(4) == 0 ? List.of(pin(functions, controls)) : List.of();
        return new ChannelProblem(new Radio(link(), controls, functions, channels, given), phases);
    }

    private RadioLink link() {
        OnLoss onLoss = any(OnLoss.values());
        return new RadioLink(1 + random.nextInt(4), onLoss, any(ActsOnLoss.values()), null, null);
    }

    private List<Phase> phases(int count) {
        List<Phase> phases = new ArrayList<>();
        for (int p = 0; p < count; p++) {
            List<String> next = random.nextInt(3) > 0 ? List.of("p" + random.nextInt(count)) : List.of();
            phases.add(new Phase("p" + p, "Phase " + p, null, false, null, next, false));
        }
        return phases;
    }

    private RadioFunction function(int f, List<Phase> phases) {
        List<String> states = random.nextInt(3) == 0 ? List.of("low", "mid", "high") : List.of("off", "on");
        Map<String, Demand> demands = new TreeMap<>();
        for (Phase phase : phases) {
            if (random.nextInt(5) < 3) {
                demands.put(phase.code(), demand(states));
            }
        }
        DecodedBy decoder = any(DecodedBy.values());
        boolean fits = decoder != DecodedBy.ONE_STEP || states.size() == 2;
        return new RadioFunction(
                "f" + f,
                "Function " + f,
                Kind.SWITCHED,
                states,
                any(
                        Criticality.MISSION,
                        Criticality.MISSION,
                        Criticality.CONVENIENCE,
                        Criticality.CONVENIENCE,
                        Criticality.FLIGHT),
                random.nextInt(12) == 0,
                random.nextInt(2) == 0 ? states.get(random.nextInt(states.size())) : null,
                fits && random.nextInt(3) > 0 ? decoder : DecodedBy.TABLE,
                demands,
                random.nextInt(12) == 0 ? RadioFunction.OtherwiseBy.ON_BOARD : null);
    }

    private Demand demand(List<String> states) {
        String one = states.get(random.nextInt(states.size()));
        return switch (random.nextInt(6)) {
            case 0 -> new Demand(List.of(), List.of(one));
            case 1 -> new Demand(List.of(one), List.of(one));
            case 2 -> new Demand(states.subList(0, 2), List.of());
            case 3 -> new Demand(states, List.of());
            default -> Demand.select(one);
        };
    }

    private List<Control> controls() {
        List<Control> controls = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        for (int c = 0; c < count; c++) {
            controls.add(Control.ofSwitch("s" + c, "Switch " + c, positions[random.nextInt(positions.length)]));
        }
        if (count > 1 && random.nextInt(4) == 0) {
            Integer coarse = controls.get(0).positions();
            Integer fine = controls.get(1).positions();
            if (coarse != null && fine != null && coarse * fine <= 2 * positions[positions.length - 1]) {
                controls.add(new Control("mix", "Mix", Control.Kind.MIXED, coarse * fine, List.of("s0", "s1")));
            }
        }
        return controls;
    }

    private NotNeeded givenUp(int number, List<RadioFunction> functions, List<Phase> phases) {
        int first = random.nextInt(functions.size() - 1);
        int second = first + 1 + random.nextInt(functions.size() - 1 - first);
        List<String> in = phases.isEmpty() || random.nextBoolean()
                ? List.of()
                : List.of(phases.get(random.nextInt(phases.size())).code());
        return new NotNeeded(
                "N" + number, in, List.of(state(functions.get(first)), state(functions.get(second))), "them", "test");
    }

    private FunctionState state(RadioFunction function) {
        return new FunctionState(
                function.code(),
                function.states().get(random.nextInt(function.states().size())));
    }

    private Channel pin(List<RadioFunction> functions, List<Control> controls) {
        int many = 1 + random.nextInt(2);
        List<Carried> carries = functions.stream()
                .limit(many)
                .map(function -> new Carried(function.code(), List.of(), null))
                .toList();
        @Nullable
        String control = random.nextInt(4) == 0
                ? null
                : controls.get(random.nextInt(controls.size())).code();
        return new Channel(1, control, true, carries);
    }

    @SafeVarargs
    private <T> T any(T... values) {
        return values[random.nextInt(values.length)];
    }
}
