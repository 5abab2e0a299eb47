package dev.ledgerwing.core.radio.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.radio.plan.PlanAnswer.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ChannelPlannerTest {

    private static final Demand BOTH = Demand.select("off", "on");

    /** Common practice, no source: four primary controls and the flight-behaviour switch leave one channel of six. */
    @Test
    void aSixChannelLinkLeavesOneChannelForAllElseThatIsSwitched() {
        assertThat(ChannelPlanner.plan(sixChannels(1)).outcome()).isEqualTo(Outcome.FITS);
        assertThat(ChannelPlanner.plan(sixChannels(2)).outcome()).isEqualTo(Outcome.DOES_NOT_FIT);
        assertThat(ChannelPlanner.channelsNeeded(sixChannels(2))).hasValue(7);
    }

    private static ChannelProblem sixChannels(int switched) {
        List<RadioFunction> functions = new ArrayList<>();
        for (String primary : List.of("aileron", "elevator", "rudder", "throttle")) {
            functions.add(new RadioFunction(primary, primary, Kind.PROPORTIONAL, List.of(), Criticality.FLIGHT, false));
        }
        functions.add(new RadioFunction(
                "behaviour", "behaviour", Kind.SWITCHED, List.of("hand", "hold", "home"), Criticality.FLIGHT, false));
        for (int i = 0; i < switched; i++) {
            functions.add(Radios.switched("extra-" + i, DecodedBy.TABLE, Map.of("cruise", BOTH)));
        }
        List<Control> controls = new ArrayList<>(Radios.switches(4, 3));
        for (String stick : List.of("one", "two", "three", "four")) {
            controls.add(Control.of(stick, stick, Control.Kind.STICK));
        }
        return Radios.problem(RadioLink.of(6), controls, functions, Radios.phases("cruise"));
    }

    /** Common practice, no source: gear and charging share two positions when "gear up, charging off" is never needed. */
    @Test
    void gearAndChargingShareTwoPositionsExactlyWhenGearUpWithChargingOffIsNeverNeeded() {
        ChannelProblem never = gearAndCharging(false);
        assertThat(PairTable.of(never)).containsExactly(new PairNeed("gear", "charging", 2, PairNeed.Never.NONE));
        assertThat(ChannelPlanner.plan(never).channels())
                .singleElement()
                .satisfies(channel -> assertThat(channel.functions()).containsExactly("gear", "charging"));
        ChannelProblem needed = gearAndCharging(true);
        assertThat(PairTable.of(needed)).containsExactly(new PairNeed("gear", "charging", 3, PairNeed.Never.NONE));
        assertThat(ChannelPlanner.plan(needed).outcome()).isEqualTo(Outcome.DOES_NOT_FIT);
    }

    /** Down with charging off on the ground and at landing, up with it on in cruise; perhaps up with it off in cruise. */
    private static ChannelProblem gearAndCharging(boolean upAndOff) {
        Demand charging = upAndOff ? Demand.select("on", "off") : Demand.select("on");
        return Radios.problem(
                RadioLink.of(1),
                Radios.switches(1, 2),
                List.of(
                        Radios.switched(
                                "gear",
                                List.of("down", "up"),
                                DecodedBy.TABLE,
                                Map.of("landing", Demand.select("down"), "cruise", Demand.select("up"))),
                        Radios.switched(
                                "charging",
                                DecodedBy.TABLE,
                                Map.of("landing", Demand.select("off"), "cruise", charging))),
                Radios.phases("landing", "cruise"));
    }

    /** By derivation: between two of them the third function would have to go there and back. */
    @Test
    void threeVectorsWithOneOnEachNeedThreePositionsAndFitInNoOrderWhenDecodersFlipOnce() {
        ChannelProblem tables = Radios.vectors(DecodedBy.TABLE, "001", "010", "100");
        assertThat(GroupNeed.leastPositions(tables, tables.switched())).hasValue(3);
        ChannelProblem steps = Radios.vectors(DecodedBy.ONE_STEP, "001", "010", "100");
        assertThat(GroupNeed.leastPositions(steps, steps.switched())).isEmpty();
    }

    /** By derivation: on one position each pair of phases agrees on two of the three states, and all three on none. */
    @Test
    void withThreeStatesEveryPairCanAgreeAndAllThreeNot() {
        assertThat(positionsFor("red", "green", "blue")).isEqualTo(2);
        assertThat(positionsFor("red", "green")).isEqualTo(1);
        assertThat(positionsFor("green", "blue")).isEqualTo(1);
        assertThat(positionsFor("red", "blue")).isEqualTo(1);
    }

    /** A phase for each state that does harm in it. */
    private static int positionsFor(String... harmful) {
        List<String> states = List.of("red", "green", "blue");
        Map<String, Demand> demands = new java.util.TreeMap<>();
        for (String harm : harmful) {
            List<String> mayHave =
                    states.stream().filter(state -> !state.equals(harm)).toList();
            demands.put("not-" + harm, new Demand(List.of(), mayHave));
        }
        ChannelProblem problem = Radios.problem(
                RadioLink.of(1),
                Radios.switches(1, 3),
                List.of(Radios.switched("lamp", states, DecodedBy.TABLE, demands)),
                Radios.phases(demands.keySet().toArray(new String[0])));
        return GroupNeed.leastPositions(problem, problem.switched()).orElseThrow();
    }

    @Test
    void saysWhatIsMissingInsteadOfGuessing() {
        ChannelProblem nothing =
                new ChannelProblem(Radio.of(List.of(Radios.switched("lamp", DecodedBy.TABLE, Map.of()))), List.of());
        PlanAnswer answer = ChannelPlanner.plan(nothing);
        assertThat(answer.outcome()).isEqualTo(Outcome.NOT_KNOWN);
        assertThat(answer.missing()).containsExactly("the link and how many channels it has", "a switch");
    }

    @Test
    void functionsStayOnTheChannelTheyHave() {
        ChannelProblem fresh = Radios.problem(
                RadioLink.of(8),
                Radios.switches(2, 2),
                List.of(
                        Radios.switched("lamp", DecodedBy.TABLE, Map.of("cruise", BOTH)),
                        Radios.switched("horn", DecodedBy.TABLE, Map.of("cruise", BOTH))),
                Radios.phases("cruise"));
        Channel seven =
                new Channel(7, "switch-1", false, List.of(new Channel.Carried("lamp", List.of("on", "off"), null)));
        Radio radio = fresh.radio();
        PlanAnswer answer = ChannelPlanner.plan(new ChannelProblem(
                new Radio(radio.link(), radio.controls(), radio.functions(), List.of(seven), List.of()),
                fresh.phases()));
        assertThat(answer.channels()).extracting(Channel::number).containsExactly(1, 7);
        assertThat(answer.channels()).contains(seven);
    }

    /** What is stored in the receiver is not forgotten because a flight controller acts first. */
    @Test
    void aChannelThatGoesOnAsItIsKeepsItsPresetsThoughNothingRestsOnThem() {
        ChannelProblem fresh = Radios.problem(
                RadioLink.of(1),
                Radios.switches(1, 2),
                List.of(Radios.switched("lamp", DecodedBy.TABLE, Map.of("cruise", BOTH))),
                Radios.phases("cruise"));
        List<Channel> recorded = List.of(
                new Channel(1, "switch-0", false, List.of(new Channel.Carried("lamp", List.of("off", "on"), "on"))));
        Radio radio = fresh.radio();
        PlanAnswer answer = ChannelPlanner.plan(new ChannelProblem(
                new Radio(radio.link(), radio.controls(), radio.functions(), recorded, List.of()), fresh.phases()));
        assertThat(answer.channels()).isEqualTo(recorded);
    }

    @Test
    void aStoredPresetAtWhichItsChannelCannotStandAnyMoreGoes() {
        ChannelProblem fresh = Radios.problem(
                RadioLink.of(1),
                Radios.switches(1, 2),
                List.of(Radios.switched("lamp", DecodedBy.TABLE, Map.of("cruise", Demand.select("on")))),
                Radios.phases("cruise"));
        Radio radio = fresh.radio();
        List<Channel> recorded = List.of(
                new Channel(1, "switch-0", false, List.of(new Channel.Carried("lamp", List.of("off", "off"), "off"))));
        Channel planned = ChannelPlanner.plan(new ChannelProblem(
                        new Radio(radio.link(), radio.controls(), radio.functions(), recorded, List.of()),
                        fresh.phases()))
                .channels()
                .get(0);
        assertThat(planned.carries()).singleElement().satisfies(lamp -> {
            assertThat(lamp.states()).contains("on").doesNotContain("off");
            assertThat(lamp.presetState()).isNull();
        });
    }

    @Test
    void groupsOfTheRecordStayTogetherWhereThatCostsNothing() {
        List<RadioFunction> functions = new ArrayList<>();
        for (String code : List.of("lamp", "horn", "probe", "winch")) {
            functions.add(Radios.switched(code, DecodedBy.TABLE, Map.of("cruise", Demand.select("on"))));
        }
        ChannelProblem fresh =
                Radios.problem(RadioLink.of(2), Radios.switches(2, 2), functions, Radios.phases("cruise"));
        List<Channel> recorded = List.of(
                new Channel(1, "switch-1", false, List.of(carried("lamp"), carried("winch"))),
                new Channel(2, "switch-0", false, List.of(carried("horn"), carried("probe"))));
        Radio radio = fresh.radio();
        PlanAnswer answer = ChannelPlanner.plan(new ChannelProblem(
                new Radio(radio.link(), radio.controls(), functions, recorded, List.of()), fresh.phases()));
        assertThat(answer.channels()).isEqualTo(recorded);
    }

    private static Channel.Carried carried(String function) {
        return new Channel.Carried(function, List.of("off", "on"), null);
    }
}
