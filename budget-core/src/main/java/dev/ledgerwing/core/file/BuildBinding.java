package dev.ledgerwing.core.file;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.AssemblyBooking;
import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FittedBoard;
import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.build.JudgedBy;
import dev.ledgerwing.core.build.KeepApart;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.Outputs;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Problem;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.SolarDay;
import dev.ledgerwing.core.build.Supply;
import dev.ledgerwing.core.build.WeighIn;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Makes the record out of a tree that fits the schema, part by part, so that every refusal of a constructor is reported. */
final class BuildBinding {

    /** Groups of a line that may be left out of the file, and what they are then. */
    private static final Map<String, Record> LEFT_OUT =
            Map.of("place", LinePlace.UNKNOWN, "supply", Supply.NONE, "needs", PortNeeds.NONE);

    private final List<Problem> problems = new ArrayList<>();

    private BuildBinding() {}

    static BuildReading bind(ObjectNode file) {
        BuildBinding binding = new BuildBinding();
        for (JsonNode line : file.path("lines")) {
            LEFT_OUT.forEach((name, group) -> fillIn((ObjectNode) line, name, group));
        }
        Airframe airframe = binding.one(file, "airframe", Airframe.class);
        MassBudget budget = binding.one(file, "budget", MassBudget.class);
        JudgedBy judgedBy = binding.one(file, "judgedBy", JudgedBy.class);
        Geometry geometry = binding.one(file, "geometry", Geometry.class);
        Booking booking = binding.one(file, "booking", Booking.class);
        List<Assembly> assemblies = binding.all(file.path("assemblies"), "assemblies", Assembly.class);
        List<PartLine> lines = binding.all(file.path("lines"), "lines", PartLine.class);
        List<LoadCase> loadCases = binding.all(file.path("loadCases"), "loadCases", LoadCase.class);
        List<Bay> bays = binding.all(file.path("bays"), "bays", Bay.class);
        List<KeepApart> keepApart = binding.all(file.path("keepApart"), "keepApart", KeepApart.class);
        List<WeighIn> weighIns = binding.all(file.path("weighIns"), "weighIns", WeighIn.class);
        List<AssemblyBooking> assemblyBookings =
                binding.all(file.path("assemblyBookings"), "assemblyBookings", AssemblyBooking.class);
        List<Phase> phases = binding.all(file.path("phases"), "phases", Phase.class);
        Power power = binding.power(file.path("power"));
        Radio radio = binding.radio(file.path("radio"));
        Outputs outputs = binding.outputs(file.path("outputs"));
        if (!binding.problems.isEmpty() || airframe == null) {
            return BuildReading.refused(binding.problems);
        }
        try {
            return BuildReading.of(new Build(
                    airframe,
                    budget == null ? new MassBudget(null, null, null, null) : budget,
                    judgedBy == null ? JudgedBy.OWN_CHOICE : judgedBy,
                    geometry == null ? Geometry.NONE : geometry,
                    assemblies,
                    lines,
                    loadCases,
                    bays,
                    keepApart,
                    phases,
                    power,
                    radio,
                    outputs,
                    weighIns,
                    booking,
                    assemblyBookings));
        } catch (IllegalArgumentException refused) {
            return BuildReading.refused(BuildFile.problemsOf(refused, ""));
        }
    }

    /** Takes out of a written file what reading fills in again. */
    static void leaveOutEmpty(ObjectNode file) {
        if (file.path("geometry").isEmpty()) {
            file.remove("geometry");
        }
        if (file.path("power").path("rules").isEmpty() && file.path("power") instanceof ObjectNode power) {
            power.remove("rules");
        }
        if (file.path("outputs") instanceof ObjectNode outputs) {
            if (outputs.path("fitted").isEmpty()) {
                outputs.remove("fitted");
            }
            if (outputs.isEmpty()) {
                file.remove("outputs");
            }
        }
        for (JsonNode line : file.path("lines")) {
            LEFT_OUT.forEach((name, group) -> {
                if (RecordJson.MAPPER.valueToTree(group).equals(line.path(name))) {
                    ((ObjectNode) line).remove(name);
                }
            });
        }
    }

    static void fillIn(ObjectNode line, String name, Record group) {
        if (!line.hasNonNull(name)) {
            line.set(name, RecordJson.MAPPER.valueToTree(group));
        }
    }

    private Power power(JsonNode power) {
        PowerRules rules = one(power, "rules", "power.rules", PowerRules.class);
        return new Power(
                all(power.path("sources"), "power.sources", PowerSource.class),
                all(power.path("rails"), "power.rails", Rail.class),
                all(power.path("feeds"), "power.feeds", Feed.class),
                rules == null ? PowerRules.DEFAULT : rules,
                one(power, "day", "power.day", SolarDay.class));
    }

    private Radio radio(JsonNode radio) {
        return new Radio(
                one(radio, "link", "radio.link", RadioLink.class),
                all(radio.path("controls"), "radio.controls", Control.class),
                all(radio.path("functions"), "radio.functions", RadioFunction.class),
                all(radio.path("channels"), "radio.channels", Channel.class),
                all(radio.path("notNeeded"), "radio.notNeeded", NotNeeded.class));
    }

    private Outputs outputs(JsonNode outputs) {
        FittedBoard fitted = one(outputs, "fitted", "outputs.fitted", FittedBoard.class);
        return new Outputs(
                all(outputs.path("boards"), "outputs.boards", Board.class),
                fitted == null ? FittedBoard.NONE : fitted,
                all(outputs.path("assignments"), "outputs.assignments", Output.class));
    }

    private <T> @Nullable T one(ObjectNode file, String name, Class<T> type) {
        return one(file, name, name, type);
    }

    private <T> @Nullable T one(JsonNode parent, String name, String place, Class<T> type) {
        return parent.hasNonNull(name) ? bound(parent.path(name), place, type) : null;
    }

    private <T> List<T> all(JsonNode array, String place, Class<T> type) {
        List<T> all = new ArrayList<>();
        for (int i = 0; i < array.size(); i++) {
            T bound = bound(array.path(i), place + "[" + i + "]", type);
            if (bound != null) {
                all.add(bound);
            }
        }
        return all;
    }

    private <T> @Nullable T bound(JsonNode node, String place, Class<T> type) {
        try {
            return RecordJson.MAPPER.treeToValue(node, type);
        } catch (JacksonException refused) {
            String inner = refused.getPath().stream()
                    .map(JacksonException.Reference::getPropertyName)
                    .filter(name -> name != null)
                    .reduce("", (path, name) -> path + "." + name);
            Throwable reason = refused.getCause() == null ? refused : refused.getCause();
            problems.add(new Problem(
                    place + inner,
                    reason instanceof JacksonException
                            ? "is written in a form that does not fit here, such as 3.0 for a whole number"
                            : String.valueOf(reason.getMessage())));
            return null;
        }
    }
}
