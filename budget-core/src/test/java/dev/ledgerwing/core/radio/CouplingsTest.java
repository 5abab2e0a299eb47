package dev.ledgerwing.core.radio;

import static dev.ledgerwing.core.radio.Radios.build;
import static dev.ledgerwing.core.radio.Radios.carried;
import static dev.ledgerwing.core.radio.Radios.channel;
import static dev.ledgerwing.core.radio.Radios.charging;
import static dev.ledgerwing.core.radio.Radios.gear;
import static dev.ledgerwing.core.radio.Radios.presets;
import static dev.ledgerwing.core.radio.Radios.radio;
import static dev.ledgerwing.core.radio.Radios.switched;
import static dev.ledgerwing.core.radio.Radios.withCells;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CouplingsTest {

    /** Gear up with charging on, gear down with charging off: a pair that is common in the trade. */
    private static final Channel PAIR =
            channel(2, "left", carried("gear", "down", "down", "up"), carried("charging", "off", "off", "on"));

    private static Build carrying(Channel channel, RadioFunction... functions) {
        return build(radio(presets(4), List.of(functions), channel));
    }

    private static List<Coupling> couplings(Build build) {
        return Couplings.of(build, build.radio().channels());
    }

    private static List<String> sentences(Build build) {
        return couplings(build).stream().map(Coupling::sentence).toList();
    }

    @Test
    void isToldOfManyFunctionsOnOneChannel() {
        List<String> states = List.of("a", "b", "c", "d", "e", "f", "g", "h");
        String[] all = states.toArray(new String[0]);
        List<RadioFunction> functions = IntStream.range(0, 60)
                .mapToObj(i -> switched("f" + i, "Function " + i, null, String.join(",", states), "", all))
                .toList();
        Carried[] carried = IntStream.range(0, 60)
                .mapToObj(i -> carried("f" + i, null, all))
                .toArray(Carried[]::new);
        Channel channel = channel(1, "right", carried);

        List<Coupling> couplings = Couplings.of(build(radio(presets(4), functions, channel)), List.of(channel));

        // Derived: every state of a function goes with the one state of each other that is at its position.
        assertThat(couplings)
                .allSatisfy(coupling -> assertThat(coupling.with())
                        .allMatch(with -> with.state().equals(coupling.wanted().state())));
        assertThat(couplings).extracting(Coupling::wanted).contains(new FunctionState("f0", "a"));
    }

    @Test
    void leavesAsideWhatNeedsNoChannel() {
        RadioFunction elsewhere = charging("off", "off,on", "").withOtherwiseBy(RadioFunction.OtherwiseBy.DATA_LINK);
        assertThat(couplings(carrying(PAIR, gear("down", "up", ""), elsewhere))).isEmpty();
    }

    @Test
    void saysWhatCannotBeHadTogether() {
        Build build = carrying(PAIR, gear("down", "up", ""), charging("off", "off,on", ""));
        assertThat(couplings(build))
                .containsExactly(
                        new Coupling(
                                2,
                                List.of("cruise"),
                                new FunctionState("gear", "up"),
                                List.of(new FunctionState("charging", "on")),
                                "In Cruise you cannot have Landing gear up without Charging on."),
                        new Coupling(
                                2,
                                List.of("cruise"),
                                new FunctionState("gear", "down"),
                                List.of(new FunctionState("charging", "off")),
                                "In Cruise you cannot have Landing gear down without Charging off."));
    }

    @Test
    void saysItWithThePackFullWhereTheFunctionStopsACharging() {
        Build build = withCells("charging", carrying(PAIR, gear("down", "up", "up"), charging("off", "off,on", "off")));
        assertThat(sentences(build))
                .containsExactly(
                        "With the pack full in Cruise you cannot switch Charging to off without Landing gear going to"
                                + " down.",
                        "In Landing you cannot have Landing gear up without Charging on.",
                        "In Cruise you cannot have Landing gear down without Charging off.");
    }

    /** What the phase does not ask for may still be wanted in need. */
    @Test
    void saysThatStoppingTheChargingTakesAwayWhatIsAsked() {
        Build build = withCells("charging", carrying(PAIR, gear("down", "up", ""), charging("off", "on", "")));
        assertThat(sentences(build))
                .contains("With the pack full in Cruise you cannot switch Charging to off without Landing gear going to"
                        + " down.");
        assertThat(sentences(carrying(PAIR, gear("down", "up", ""), charging("off", "on", ""))))
                .containsExactly(
                        "In Cruise you cannot have Landing gear down without Charging off.",
                        "In Cruise you cannot have Charging off without Landing gear down.");
    }

    @Test
    void saysOnceWhatIsTheSameInEveryPhase() {
        RadioFunction lamp = switched("lamp", "Lamp", "off", "off,on", "off,on", "off", "on");
        RadioFunction horn = switched("horn", "Horn", "off", "off,on", "off,on", "off", "on");
        Channel channel = channel(2, "left", carried("lamp", null, "off", "on"), carried("horn", null, "off", "on"));
        assertThat(sentences(carrying(channel, lamp, horn)))
                .containsExactly(
                        "In Cruise and Landing you cannot have Lamp off without Horn off.",
                        "In Cruise and Landing you cannot have Lamp on without Horn on.");
        Build twoPhases = Ledgers.with()
                .withPhases(List.of(Radios.CRUISE, Radios.LANDING))
                .withRadio(radio(presets(4), List.of(withoutPowerOn(lamp), withoutPowerOn(horn)), channel));
        assertThat(sentences(twoPhases))
                .containsExactly(
                        "In every phase you cannot have Lamp off without Horn off.",
                        "In every phase you cannot have Lamp on without Horn on.");
    }

    private static RadioFunction withoutPowerOn(RadioFunction function) {
        return function.withDemandByPhase(
                Map.of("cruise", function.demandIn("cruise"), "landing", function.demandIn("landing")));
    }

    @Test
    void isSilentWhereAPhaseAsksForNothing() {
        assertThat(sentences(carrying(PAIR, gear("down", "", ""), charging("off", "", ""))))
                .isEmpty();
    }

    /** Where a position gives every combination, nothing is lost. */
    @Test
    void isSilentWhereEveryCombinationIsOnAPosition() {
        Channel four = channel(
                2,
                "right",
                carried("gear", null, "down", "down", "up", "up"),
                carried("charging", null, "off", "on", "on", "off"));
        assertThat(sentences(carrying(four, gear("down", "down,up", "down,up"), charging("off", "off,on", "off,on"))))
                .isEmpty();
    }

    /** A state that does harm in a phase is not offered then, so nothing is coupled to it. */
    @Test
    void isSilentOfWhatDoesHarmAnyway() {
        RadioFunction safe =
                gear("down", "", "").withDemandByPhase(Map.of("cruise", new Demand(List.of("up"), List.of("up"))));
        assertThat(sentences(carrying(PAIR, safe, charging("off", "on", "")))).isEmpty();
    }

    @Test
    void namesEverythingThatComesAlong() {
        RadioFunction lamp = switched("lamp", "Lamp", "off", "off,on", "", "off", "on");
        Channel three = channel(
                2,
                "right",
                carried("lamp", null, "on", "off", "off"),
                carried("gear", null, "down", "up", "up"),
                carried("tilt", null, "ahead", "slanting", "down"));
        RadioFunction tilt = switched("tilt", "Camera tilt", "ahead", "", "", "ahead", "slanting", "down");
        assertThat(sentences(carrying(three, lamp, gear("down", "", ""), tilt)))
                .containsExactly(
                        "In Cruise you cannot have Lamp on without Landing gear down and Camera tilt ahead.",
                        "In Cruise you cannot have Lamp off without Landing gear up and Camera tilt slanting or down.");
    }

    @Test
    void putsWhatTakesMostAwayFirst() {
        Channel first = channel(2, "left", carried("gear", null, "down", "up"), carried("lamp", null, "off", "on"));
        Channel second = channel(3, "right", carried("horn", null, "off", "on"), carried("bell", null, "off", "on"));
        Build build = build(radio(
                presets(4),
                List.of(
                        gear("down", "up", ""),
                        switched("lamp", "Lamp", "off", "", "", "off", "on"),
                        switched("horn", "Horn", "off", "on", "", "off", "on"),
                        switched("bell", "Bell", "off", "off", "", "off", "on")),
                first,
                second));
        assertThat(sentences(build))
                .startsWith("In Cruise you cannot have Horn on without Bell on.")
                .contains("In Cruise you cannot have Landing gear up without Lamp on.");
    }

    /**
     * By derivation: a coupling is true when no position without harm has the wish without what comes along; and of two states asked for
     * that can each be selected but not together one coupling tells.
     */
    @Test
    void tellsWhatIsTrueAndAllThatIsAskedOnSeededChannels() {
        Random random = new Random(5);
        for (int round = 0; round < 400; round++) {
            Build build = seeded(random);
            List<Coupling> couplings = couplings(build);
            for (Phase phase : build.phases()) {
                List<Coupling> there = couplings.stream()
                        .filter(coupling -> coupling.phases().contains(phase.code()))
                        .toList();
                there.forEach(
                        coupling -> assertThat(breaksIt(build, phase, coupling)).isFalse());
                lostPairs(build, phase)
                        .forEach(pair -> assertThat(there)
                                .as("%s in %s", pair, phase.code())
                                .anyMatch(coupling -> tells(coupling, pair)));
            }
        }
    }

    private static boolean tells(Coupling coupling, List<FunctionState> pair) {
        return IntStream.of(0, 1).anyMatch(i -> {
            FunctionState other = pair.get(1 - i);
            return coupling.wanted().equals(pair.get(i))
                    && coupling.with().stream().anyMatch(with -> with.function().equals(other.function()))
                    && !coupling.with().contains(other);
        });
    }

    private static boolean breaksIt(Build build, Phase phase, Coupling coupling) {
        return harmless(build, phase).stream()
                .anyMatch(at -> at.contains(coupling.wanted())
                        && coupling.with().stream()
                                .map(FunctionState::function)
                                .distinct()
                                .anyMatch(function -> at.stream()
                                        .noneMatch(state -> state.function().equals(function)
                                                && coupling.with().contains(state))));
    }

    private static List<List<FunctionState>> lostPairs(Build build, Phase phase) {
        List<List<FunctionState>> positions = harmless(build, phase);
        List<FunctionState> asked = build.radio().functions().stream()
                .flatMap(function -> function.demandIn(phase.code()).mustSelect().stream()
                        .map(state -> new FunctionState(function.code(), state)))
                .filter(state -> positions.stream().anyMatch(at -> at.contains(state)))
                .toList();
        List<List<FunctionState>> lost = new ArrayList<>();
        for (FunctionState one : asked) {
            for (FunctionState other : asked) {
                if (one.function().compareTo(other.function()) < 0
                        && positions.stream().noneMatch(at -> at.contains(one) && at.contains(other))) {
                    lost.add(List.of(one, other));
                }
            }
        }
        return lost;
    }

    private static List<List<FunctionState>> harmless(Build build, Phase phase) {
        Channel channel = build.radio().channels().get(0);
        int positions = channel.carries().get(0).states().size();
        return IntStream.range(0, positions)
                .mapToObj(at -> channel.carries().stream()
                        .map(carried -> new FunctionState(
                                carried.function(), carried.states().get(at)))
                        .toList())
                .filter(states -> states.stream()
                        .allMatch(state -> build.radio().functions().stream()
                                .filter(function -> function.code().equals(state.function()))
                                .allMatch(function ->
                                        function.demandIn(phase.code()).allows(state.state()))))
                .toList();
    }

    private static Build seeded(Random random) {
        List<RadioFunction> functions = new ArrayList<>();
        List<Carried> carries = new ArrayList<>();
        int positions = 2 + random.nextInt(4);
        int count = 2 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            String[] states = random.nextBoolean() ? new String[] {"a", "b"} : new String[] {"a", "b", "c"};
            functions.add(switched("f" + i, "F" + i, null, asked(random, states), asked(random, states), states));
            carries.add(carried(
                    "f" + i,
                    null,
                    IntStream.range(0, positions)
                            .mapToObj(at -> states[random.nextInt(states.length)])
                            .toArray(String[]::new)));
        }
        Build build = carrying(new Channel(1, "left", false, carries), functions.toArray(RadioFunction[]::new));
        return random.nextBoolean() ? withCells("f0", build) : build;
    }

    private static String asked(Random random, String... states) {
        return IntStream.range(0, states.length)
                .filter(i -> random.nextBoolean())
                .mapToObj(i -> states[i])
                .collect(Collectors.joining(","));
    }
}
