package dev.ledgerwing.core.radio.plan;

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
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Radios to test with. */
final class Radios {

    private Radios() {}

    static RadioFunction switched(String code, DecodedBy decoder, Map<String, Demand> demands) {
        return switched(code, List.of("off", "on"), decoder, demands);
    }

    static RadioFunction switched(String code, List<String> states, DecodedBy decoder, Map<String, Demand> demands) {
        return new RadioFunction(
                code, code, Kind.SWITCHED, states, Criticality.MISSION, false, null, decoder, demands, null);
    }

    static List<Phase> phases(String... codes) {
        return IntStream.range(0, codes.length)
                .mapToObj(i -> new Phase(codes[i], codes[i], null, false, null, List.of(), false))
                .toList();
    }

    static List<Control> switches(int count, int positions) {
        return IntStream.range(0, count)
                .mapToObj(i -> Control.ofSwitch("switch-" + i, "Switch " + i, positions))
                .toList();
    }

    static NotNeeded givenUp(String one, String state, String other, String otherState) {
        return new NotNeeded(
                "N1",
                List.of(),
                List.of(new FunctionState(one, state), new FunctionState(other, otherState)),
                "Kim",
                "never needed");
    }

    static ChannelProblem problem(
            RadioLink link, List<Control> controls, List<RadioFunction> functions, List<Phase> phases) {
        return new ChannelProblem(new Radio(link, controls, functions, List.of(), List.of()), phases);
    }

    /**
     * Partial vectors, such as {@code "01-"}: what each phase demands of the functions, a digit being a state and a dash open.
     * All is decoded by tables and everything may be had everywhere.
     */
    static ChannelProblem vectors(DecodedBy decoder, String... vectors) {
        List<String> phases =
                IntStream.range(0, vectors.length).mapToObj(i -> "p" + i).toList();
        List<RadioFunction> functions = new ArrayList<>();
        for (int f = 0; f < vectors[0].length(); f++) {
            Map<String, Demand> demands = new TreeMap<>();
            for (int p = 0; p < vectors.length; p++) {
                if (vectors[p].charAt(f) != '-') {
                    demands.put("p" + p, Demand.select(vectors[p].substring(f, f + 1)));
                }
            }
            functions.add(switched("f" + f, states(vectors, f), decoder, demands));
        }
        return problem(RadioLink.of(1), switches(1, 12), functions, phases(phases.toArray(new String[0])));
    }

    private static List<String> states(String[] vectors, int coordinate) {
        List<String> states = new ArrayList<>();
        for (String vector : vectors) {
            String state = vector.substring(coordinate, coordinate + 1);
            if (!state.equals("-") && !states.contains(state)) {
                states.add(state);
            }
        }
        for (String spare : List.of("0", "1")) {
            if (states.size() < 2 && !states.contains(spare)) {
                states.add(spare);
            }
        }
        return states.stream().sorted().toList();
    }
}
