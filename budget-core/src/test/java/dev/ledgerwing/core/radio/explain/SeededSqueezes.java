package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Small problems of every make, the same for a seed; many of them do not fit. */
final class SeededSqueezes {

    private final Random random;
    private final List<Phase> phases;

    private SeededSqueezes(long seed) {
        random = new Random(seed);
        phases = phases(1 + random.nextInt(3));
    }

    static ChannelProblem of(long seed) {
        return new SeededSqueezes(seed).problem(2 + (int) (seed % 4));
    }

    /** Switched functions that can each be in both states in every phase, and one switch of three positions for all. */
    static ChannelProblem crowded(int functions, int phases) {
        SeededSqueezes squeezes = new SeededSqueezes(0, phases);
        List<String> both = List.of("low", "high");
        Map<String, Demand> demands = new TreeMap<>();
        squeezes.phases.forEach(phase -> demands.put(phase.code(), new Demand(both, List.of())));
        List<RadioFunction> all = new ArrayList<>();
        for (int i = 0; i < functions; i++) {
            all.add(new RadioFunction(
                    "f" + i,
                    "Function " + i,
                    Kind.SWITCHED,
                    both,
                    Criticality.MISSION,
                    false,
                    null,
                    DecodedBy.TABLE,
                    demands,
                    null));
        }
        return new Squeeze(RadioLink.of(1), List.of(Control.ofSwitch("s", "Switch", 3)), all, squeezes.phases)
                .problem(List.of(), List.of());
    }

    static ChannelProblem large(long seed, int functions, int phases) {
        SeededSqueezes squeezes = new SeededSqueezes(seed, phases);
        return squeezes.problem(functions);
    }

    private SeededSqueezes(long seed, int phases) {
        random = new Random(seed);
        this.phases = phases(phases);
    }

    private ChannelProblem problem(int switched) {
        List<RadioFunction> functions = new ArrayList<>();
        int sticks = random.nextInt(3);
        for (int i = 0; i < sticks; i++) {
            functions.add(Squeeze.proportional("stick-" + i, "Stick function " + i));
        }
        for (int i = 0; i < switched; i++) {
            functions.add(switched("f" + i));
        }
        List<Control> controls = controls(sticks, switched);
        List<Channel> channels = random.nextInt(3) == 0 ? List.of(pinned(functions, controls)) : List.of();
        RadioLink link = new RadioLink(
                sticks + 1 + random.nextInt(Math.max(1, switched - 1)),
                pick(RadioLink.OnLoss.values()),
                RadioLink.ActsOnLoss.RECEIVER,
                null,
                null);
        return new Squeeze(link, controls, functions, phases).problem(channels, notNeeded(functions));
    }

    private List<Phase> phases(int number) {
        List<Phase> made = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            List<String> next = i + 1 < number && random.nextBoolean() ? List.of("p" + (i + 1)) : List.of();
            made.add(new Phase("p" + i, "Phase " + i, null, false, null, next, false));
        }
        return made;
    }

    private List<Control> controls(int sticks, int switched) {
        List<Control> controls = new ArrayList<>();
        for (int i = 0; i < Math.max(1, sticks - (random.nextInt(6) == 0 ? 1 : 0)); i++) {
            controls.add(Squeeze.stick("lever-" + i));
        }
        int number = 1 + random.nextInt(switched);
        for (int i = 0; i < number; i++) {
            controls.add(Control.ofSwitch("s" + i, "Switch " + i, 2 + random.nextInt(2)));
        }
        return controls;
    }

    private RadioFunction switched(String code) {
        int states = 2 + (random.nextInt(3) == 0 ? 1 : 0);
        List<String> names = List.of("low", "high", "top").subList(0, states);
        int rank = random.nextInt(8);
        return new RadioFunction(
                code,
                "Function " + code,
                Kind.SWITCHED,
                names,
                rank == 0 ? Criticality.FLIGHT : rank < 4 ? Criticality.MISSION : Criticality.CONVENIENCE,
                random.nextInt(12) == 0,
                random.nextBoolean() ? pick(names.toArray(new String[0])) : null,
                decoder(states),
                demands(names),
                null);
    }

    private @Nullable DecodedBy decoder(int states) {
        return switch (random.nextInt(5)) {
            case 0 -> states == 2 ? DecodedBy.ONE_STEP : DecodedBy.SERVO;
            case 1 -> DecodedBy.SERVO;
            case 2 -> null;
            default -> DecodedBy.TABLE;
        };
    }

    private Map<String, Demand> demands(List<String> states) {
        Map<String, Demand> demands = new TreeMap<>();
        for (Phase phase : phases) {
            List<String> may = some(states, 3);
            List<String> must = some(may, 2);
            demands.put(
                    phase.code(),
                    new Demand(random.nextInt(3) == 0 ? List.of() : must, random.nextInt(3) == 0 ? may : List.of()));
        }
        return demands;
    }

    private List<String> some(List<String> of, int most) {
        List<String> shuffled = new ArrayList<>(of);
        Collections.shuffle(shuffled, random);
        return List.copyOf(shuffled.subList(0, 1 + random.nextInt(Math.min(most, shuffled.size()))));
    }

    private Channel pinned(List<RadioFunction> functions, List<Control> controls) {
        RadioFunction function = functions.get(functions.size() - 1);
        Control control = controls.get(controls.size() - 1);
        Integer positions = control.positions();
        List<String> states = new ArrayList<>();
        for (int i = 0; positions != null && i < positions; i++) {
            states.add(function.states().get(Math.min(i, function.states().size() - 1)));
        }
        return new Channel(1, control.code(), true, List.of(new Carried(function.code(), states, null)));
    }

    private List<NotNeeded> notNeeded(List<RadioFunction> functions) {
        List<RadioFunction> sharing =
                functions.stream().filter(RadioFunction::mayShare).toList();
        if (sharing.size() < 2 || random.nextBoolean()) {
            return List.of();
        }
        List<String> where =
                random.nextBoolean() ? List.of() : List.of(phases.get(0).code());
        return List.of(new NotNeeded(
                "N2",
                where,
                List.of(
                        new FunctionState(sharing.get(0).code(), "high"),
                        new FunctionState(sharing.get(1).code(), "low")),
                "the team",
                "never wanted"));
    }

    @SafeVarargs
    private <T> T pick(T... of) {
        return of[random.nextInt(of.length)];
    }
}
