package dev.ledgerwing.core.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class RadioTest {

    private static final List<String> GEAR = List.of("up", "down");

    private static RadioFunction gear(
            @Nullable String onSignalLoss, @Nullable DecodedBy decodedBy, Map<String, Demand> demands) {
        return function(GEAR, onSignalLoss, decodedBy, demands);
    }

    private static RadioFunction function(
            List<String> states,
            @Nullable String onSignalLoss,
            @Nullable DecodedBy decodedBy,
            Map<String, Demand> demands) {
        return new RadioFunction(
                "gear",
                "Gear",
                Kind.SWITCHED,
                states,
                Criticality.MISSION,
                false,
                onSignalLoss,
                decodedBy,
                demands,
                null);
    }

    private static Build with(Radio radio) {
        Build build =
                Builds.small().withPhases(List.of(new Phase("cruise", "Cruise", null, true, null, List.of(), false)));
        return build.withRadio(radio);
    }

    private static Radio radio(
            @Nullable RadioLink link, List<Control> controls, List<Channel> channels, List<NotNeeded> given) {
        return new Radio(link, controls, List.of(gear(null, null, Map.of())), channels, given);
    }

    private static Channel channel(int number, @Nullable String control, Carried... carries) {
        return new Channel(number, control, false, List.of(carries));
    }

    @Test
    void aDemandNamesStatesThatAreThere() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> gear(null, null, Map.of("cruise", Demand.select("half"))))
                .withMessage("demandByPhase.cruise.mustSelect: there is no state “half”");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> gear(null, null, Map.of("cruise", new Demand(List.of(), List.of("half")))))
                .withMessage("demandByPhase.cruise.mayHave: there is no state “half”");
    }

    @Test
    void whatMustBeSelectableDoesNoHarm() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> gear(null, null, Map.of("cruise", new Demand(List.of("up"), List.of("down")))))
                .withMessageContaining("“up” must be selectable, so it must be among what does no harm");
    }

    @Test
    void aPhaseThatIsNotNamedAsksNothingAndForbidsNothing() {
        Demand demand = gear(null, null, Map.of()).demandIn("cruise");

        assertThat(demand.mustSelect()).isEmpty();
        assertThat(GEAR).allMatch(demand::allows);
        assertThat(new Demand(List.of(), List.of("down")).allows("up")).isFalse();
    }

    @Test
    void oneStepTellsTwoStatesApart() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> function(List.of("up", "half", "full"), null, DecodedBy.ONE_STEP, Map.of()))
                .withMessage("decodedBy must not be ONE_STEP: one step tells two states apart, there are 3");
    }

    @Test
    void theStateWantedWhenTheSignalIsLostIsOneOfItsStates() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> gear("middle", null, Map.of()))
                .withMessage("onSignalLoss must be one of up, down, was “middle”");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RadioFunction(
                        "throttle",
                        "Throttle",
                        Kind.PROPORTIONAL,
                        List.of(),
                        Criticality.FLIGHT,
                        false,
                        "idle",
                        null,
                        Map.of(),
                        null))
                .withMessage("onSignalLoss must be one of low end, middle, high end, was “idle”");
    }

    @Test
    void statesDiffer() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> function(List.of("up", "up"), null, null, Map.of()))
                .withMessage("states must differ from each other");
    }

    @Test
    void aSwitchHasAtLeastTwoPositions() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Control.ofSwitch("a", "Left switch", 0))
                .withMessage("positions must be from 2 to 12, was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Control.of("a", "Left switch", Control.Kind.SWITCH))
                .withMessageStartingWith("positions must be said for a SWITCH");
    }

    @Test
    void aMixIsMadeOfTwoSwitchesAndHasTheirProduct() {
        Control two = Control.ofSwitch("a", "Left switch", 2);
        Control three = Control.ofSwitch("b", "Right switch", 3);
        Control wrong = new Control("mix", "Both", Control.Kind.MIXED, 5, List.of("a", "b"));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Control("mix", "Both", Control.Kind.MIXED, 4, List.of("a", "a")))
                .withMessageStartingWith("mixes must be two different switches");
        assertThatThrownBy(() -> with(radio(null, List.of(two, three, wrong), List.of(), List.of())))
                .isInstanceOf(InvalidBuild.class)
                .hasMessage("radio.controls[2].positions: must be 6, the product of the switches it mixes");
        assertThatThrownBy(() -> with(radio(null, List.of(two, wrong), List.of(), List.of())))
                .hasMessage("radio.controls[1].mixes: there is no switch “b”");
    }

    @Test
    void channelsStayWithinTheLinkAndHaveNumbersOfTheirOwn() {
        assertThatThrownBy(() ->
                        with(radio(RadioLink.of(2), List.of(), List.of(channel(3, null), channel(1, null)), List.of())))
                .hasMessage("radio.channels[0].number: the link has 2 channels, was 3");
        assertThatThrownBy(() -> with(radio(null, List.of(), List.of(channel(1, null), channel(1, null)), List.of())))
                .hasMessage("radio.channels[1]: “1” is used twice among the channels");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> channel(0, null))
                .withMessage("number must be from 1 to 32, was 0");
    }

    @Test
    void aChannelRefersToWhatIsThere() {
        Channel channel = channel(
                1,
                "lever",
                new Carried("gear", List.of("down", "half"), "middle"),
                new Carried("flaps", List.of("up", "full"), null));

        assertThatThrownBy(() -> with(radio(null, List.of(), List.of(channel), List.of())))
                .isInstanceOfSatisfying(
                        InvalidBuild.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::place, Problem::sentence)
                                .containsExactly(
                                        tuple("radio.channels[0].control", "there is no control “lever”"),
                                        tuple("radio.channels[0].carries", "“Gear” has no state “half”"),
                                        tuple("radio.channels[0].carries", "“Gear” has no state “middle”"),
                                        tuple("radio.channels[0].carries", "there is no function “flaps”")));
    }

    @Test
    void everyFunctionOfAChannelHasAStateAtEveryPosition() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> channel(
                        1,
                        "a",
                        new Carried("gear", List.of("up", "down"), null),
                        new Carried("lights", List.of("on"), null)))
                .withMessage("carries must say the state of every function at every position");
    }

    @Test
    void aCombinationGivenUpNamesTwoFunctionsAndWhoAndWhy() {
        FunctionState up = new FunctionState("gear", "up");

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new NotNeeded("N1", List.of(), List.of(up), "Mara", "never flown"))
                .withMessageStartingWith("states must name two or more different functions");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new NotNeeded("N1", List.of(), List.of(up, new FunctionState("lights", "on")), "Mara", " "))
                .withMessage("why must not be empty");
        NotNeeded unknown = new NotNeeded(
                "N1", List.of("hover"), List.of(up, new FunctionState("lights", "on")), "Mara", "never flown");
        assertThatThrownBy(() -> with(radio(null, List.of(), List.of(), List.of(unknown))))
                .isInstanceOfSatisfying(
                        InvalidBuild.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::sentence)
                                .containsExactly("there is no phase “hover”", "there is no function “lights”"));
    }

    @Test
    void aDemandOfAPhaseThatIsNotThereIsRefused() {
        Radio radio = Radio.of(List.of(gear(null, null, Map.of("hover", Demand.select("up")))));

        assertThatThrownBy(() -> with(radio)).hasMessage("radio.functions[0].demandByPhase: there is no phase “hover”");
    }
}
