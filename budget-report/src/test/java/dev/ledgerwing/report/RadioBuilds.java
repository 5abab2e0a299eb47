package dev.ledgerwing.report;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Control.Kind;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.FittedBoard;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.Output.Driven;
import dev.ledgerwing.core.build.OutputBank;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.build.RadioFunction.OtherwiseBy;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.RadioLink.ActsOnLoss;
import dev.ledgerwing.core.build.RadioLink.OnLoss;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Radios and flight controllers to draw, on the airframe of {@link Builds#complete}. */
public final class RadioBuilds {

    private static final String LONG = "Boundarylayercontrolslotactuator".repeat(6) + "12345678";

    private RadioBuilds() {}

    /** Four channels for six functions: wheels and sun charging share a switch, which a given-up combination makes possible. */
    public static Build shared() {
        return Builds.complete()
                .withPhases(List.of(
                        phase("power-on", "Power on", "climb"),
                        phase("climb", "Climb", "cruise"),
                        phase("cruise", "Cruise", "approach"),
                        phase("approach", "Approach")))
                .withRadioLink(new RadioLink(4, OnLoss.PRESET, ActsOnLoss.RECEIVER, null, null))
                .withControls(List.of(
                        Control.of("right", "Right stick, sideways", Kind.STICK),
                        Control.of("left", "Left stick, up and down", Kind.STICK),
                        Control.of("knob", "Slider", Kind.SLIDER),
                        Control.ofSwitch("mode", "Shoulder switch, left", 3),
                        Control.ofSwitch("front", "Shoulder switch, right", 2)))
                .withFunctions(functions())
                .withChannels(List.of(
                        moves(1, "right", "rudder", "middle"),
                        moves(2, "left", "throttle", "low end"),
                        new Channel(
                                3,
                                "mode",
                                true,
                                List.of(new Carried(
                                        "behaviour", List.of("by hand", "level", "follows <b>"), "follows <b>"))),
                        new Channel(
                                4,
                                "front",
                                false,
                                List.of(
                                        new Carried("wheels", List.of("down", "up"), "down"),
                                        new Carried("charging", List.of("off", "on"), "off")))))
                .withNotNeeded(List.of(new NotNeeded(
                        "N1",
                        List.of("cruise"),
                        List.of(new FunctionState("wheels", "up"), new FunctionState("charging", "off")),
                        "Mara",
                        "the pack is never full in cruise")));
    }

    /** The build with its one function on a channel, and a flight controller that drives one part: nothing breaks, and all is known. */
    static Build commanded(Build build) {
        RadioFunction rudder =
                function("rudder", "Rudder", List.of(), Criticality.FLIGHT, "middle", null, Map.of(), null);
        OutputBank bank = new OutputBank("A", List.of(1, 2), List.of(50.0), List.of(PulseKind.SERVO_PULSE));
        Board board = new Board("small", "Small board", List.of(bank), 2, 1, 1, 1, Mass.ofGrams(30), 0.2, 0.4, 3.0);
        return build.withFunctions(List.of(rudder))
                .withRadioLink(new RadioLink(4, OnLoss.PRESET, ActsOnLoss.RECEIVER, null, null))
                .withControls(List.of(Control.of("right", "Right stick, sideways", Kind.STICK)))
                .withChannels(List.of(moves(1, "right", "rudder", "middle")))
                .withBoards(List.of(board))
                .withFittedBoard(new FittedBoard("small", null))
                .withLines(build.lines().stream()
                        .map(line -> line.id().equals("L002") ? driven(line) : line)
                        .toList())
                .withOutputs(
                        List.of(output("rudder", "Rudder", 1, PulseKind.SERVO_PULSE, List.of(new Driven("L002", 1)))));
    }

    /** The part as one that needs an output. */
    private static PartLine driven(PartLine line) {
        return new PartLine(
                line.id(),
                line.assembly(),
                line.name(),
                line.category(),
                line.quantity(),
                line.mass(),
                line.place(),
                line.state(),
                line.supply(),
                line.note(),
                line.serves(),
                line.electrical(),
                new PortNeeds(1, 0, List.of(), 0, 0));
    }

    private static List<RadioFunction> functions() {
        return List.of(
                function("rudder", "Rudder", List.of(), Criticality.FLIGHT, "middle", null, Map.of(), null),
                function("throttle", "Throttle", List.of(), Criticality.FLIGHT, "low end", null, Map.of(), null),
                function(
                        "behaviour",
                        "Behaviour",
                        List.of("by hand", "level", "follows <b>"),
                        Criticality.FLIGHT,
                        "follows <b>",
                        DecodedBy.TABLE,
                        Map.of(
                                "power-on",
                                new Demand(List.of("by hand"), List.of("by hand", "level")),
                                "cruise",
                                Demand.select("by hand", "level", "follows <b>")),
                        null),
                function(
                        "wheels",
                        "Wheels",
                        List.of("down", "up"),
                        Criticality.MISSION,
                        "down",
                        DecodedBy.ONE_STEP,
                        Map.of(
                                "power-on",
                                new Demand(List.of("down"), List.of("down")),
                                "cruise",
                                Demand.select("up"),
                                "approach",
                                Demand.select("down", "up")),
                        null),
                function(
                        "charging",
                        "Charging",
                        List.of("off", "on"),
                        Criticality.MISSION,
                        "off",
                        DecodedBy.ONE_STEP,
                        Map.of("power-on", new Demand(List.of(), List.of("off")), "cruise", Demand.select("off", "on")),
                        null),
                function(
                        "lamp",
                        "Lamp",
                        List.of("off", "on"),
                        Criticality.CONVENIENCE,
                        null,
                        null,
                        Map.of("approach", Demand.select("on")),
                        OtherwiseBy.ON_BOARD));
    }

    private static RadioFunction function(
            String code,
            String name,
            List<String> states,
            Criticality criticality,
            @Nullable String onLoss,
            @Nullable DecodedBy decodedBy,
            Map<String, Demand> demands,
            @Nullable OtherwiseBy otherwise) {
        RadioFunction.Kind kind = states.isEmpty() ? RadioFunction.Kind.PROPORTIONAL : RadioFunction.Kind.SWITCHED;
        return new RadioFunction(code, name, kind, states, criticality, false, onLoss, decodedBy, demands, otherwise);
    }

    private static Phase phase(String code, String name, String... next) {
        return new Phase(code, name, 3.0, false, null, List.of(next), false);
    }

    private static Channel moves(int number, @Nullable String control, String function, @Nullable String preset) {
        return new Channel(number, control, true, List.of(new Carried(function, List.of(), preset)));
    }

    /** Names without an end, very many phases and states, two switches mixed, and channels that nobody would fly with. */
    public static Build crowded() {
        List<String> states = IntStream.rangeClosed(1, 8)
                .mapToObj(state -> state == 3 ? LONG : "state " + state)
                .toList();
        List<Phase> phases = IntStream.rangeClosed(1, 27)
                .mapToObj(number -> phase("p" + number, number == 2 ? LONG : "Phase number " + number))
                .toList();
        return Builds.complete()
                .withPhases(phases)
                .withRadioLink(RadioLink.of(16))
                .withControls(List.of(
                        Control.ofSwitch("a", LONG, 3),
                        Control.ofSwitch("b", "Second switch", 4),
                        new Control("mix", "Both", Kind.MIXED, 12, List.of("a", "b")),
                        Control.ofSwitch("c", "Third switch with a name of several words", 6),
                        Control.of("d", LONG, Kind.SLIDER)))
                .withFunctions(List.of(
                        function("long", LONG, states, Criticality.MISSION, null, null, everywhere(phases), null),
                        function(
                                "short",
                                "F",
                                states,
                                Criticality.CONVENIENCE,
                                null,
                                null,
                                Map.of("p1", new Demand(List.of(LONG), List.of(LONG, "state 8"))),
                                null),
                        function(
                                "prop",
                                LONG.toLowerCase(Locale.ROOT),
                                List.of(),
                                Criticality.FLIGHT,
                                null,
                                null,
                                Map.of(),
                                null),
                        function("none", "Nobody’s", states, Criticality.MISSION, null, null, Map.of(), null)))
                .withChannels(List.of(
                        new Channel(
                                16,
                                "mix",
                                true,
                                List.of(
                                        new Carried("long", twelve(states), LONG),
                                        new Carried("short", twelve(states), "state 1"))),
                        new Channel(3, "c", false, List.of(new Carried("long", states.subList(0, 2), null))),
                        new Channel(4, "c", false, List.of()),
                        moves(5, null, "prop", "high end"),
                        moves(6, "d", "prop", null)));
    }

    private static List<String> twelve(List<String> states) {
        return IntStream.range(0, 12)
                .mapToObj(place -> states.get(place % states.size()))
                .toList();
    }

    private static Map<String, Demand> everywhere(List<Phase> phases) {
        return phases.stream()
                .collect(Collectors.toMap(
                        Phase::code,
                        phase -> new Demand(List.of("state 1", LONG), List.of("state 1", "state 2", LONG))));
    }

    /** A board with two banks: a Y-lead, one output used twice, one that the board has not, one without a number, others free. */
    public static Build driven() {
        return shared().withBoards(List.of(board("small", "Small board", 4), board("large", LONG, 9)))
                .withFittedBoard(new FittedBoard("small", "L002"))
                .withOutputs(List.of(
                        output("rudder", "Rudder", 1, PulseKind.SERVO_PULSE, List.of(new Driven("L004", 2))),
                        output("left", "Flap, left", 2, PulseKind.SERVO_PULSE, List.of(new Driven("L001", 1))),
                        output("right", "Flap, <right>", 2, null, List.of(new Driven("L001", 1))),
                        output("long", LONG, 5, PulseKind.ON_OFF, List.of(new Driven("L002", 1))),
                        output("off", "Off the board", 99, PulseKind.DATA, List.of(new Driven("L006", 12))),
                        output("loose", LONG, null, PulseKind.DATA, List.of())));
    }

    private static Board board(String code, String name, int second) {
        return new Board(
                code,
                name,
                List.of(
                        new OutputBank("A", List.of(1, 2, 3, 4), List.of(50.0, 333.0), List.of(PulseKind.SERVO_PULSE)),
                        new OutputBank(
                                LONG, IntStream.range(5, 5 + second).boxed().toList(), List.of(), List.of())),
                2,
                1,
                null,
                0,
                Mass.ofGrams(30 + second),
                0.2,
                0.4,
                3.0);
    }

    private static Output output(
            String code, String name, @Nullable Integer number, @Nullable PulseKind pulse, List<Driven> drives) {
        return new Output(code, name, number, drives, pulse, 333.0, 50.0, 1000.0, 2000.0, 1500.0, "left".equals(code));
    }
}
