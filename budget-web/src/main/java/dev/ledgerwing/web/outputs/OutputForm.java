package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.Output.Driven;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What one output drives, and how.
 *
 * @param code of the output; null = a new one
 * @param part that a new one is for; null = not said
 */
record OutputForm(@Nullable String code, @Nullable String part) implements OutputsForm {

    private static final int LONGEST_NAME = 200;

    @Override
    public String view() {
        return "outputs/output";
    }

    @Override
    public void show(Build build, Shown fields) {
        Output output = Elements.find(build.outputs().assignments(), code);
        if (output == null) {
            PartLine wanted = Elements.find(build.lines(), part);
            fields.text("name", wanted == null ? "" : wanted.name());
            DriveFields.show(List.of(), fields);
            fields.text(DriveFields.LIST + ".0.part", wanted == null ? "" : wanted.id());
            return;
        }
        Integer number = output.number();
        PulseKind pulse = output.pulse();
        fields.text("name", output.name())
                .text("number", number == null ? "" : number.toString())
                .text("pulse", pulse == null ? "" : pulse.name())
                .amount("fastest", output.maxRateHz())
                .amount("wanted", output.wantedRateHz())
                .amount("low", output.lowUs())
                .amount("high", output.highUs())
                .amount("rest", output.restUs())
                .tick("reversed", output.reversed());
        DriveFields.show(output.drives(), fields);
    }

    @Override
    public boolean isShownBy(Build build) {
        return code == null || Elements.find(build.outputs().assignments(), code) != null;
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        Output output = Elements.find(build.outputs().assignments(), code);
        Map<String, Object> around = new LinkedHashMap<>();
        around.put("isNew", output == null);
        around.put("heading", output == null ? "New output" : "Output: " + output.name());
        around.put("parts", OutputChoices.optional(OutputChoices.PLEASE, OutputChoices.driven(build)));
        around.put("pulses", OutputChoices.optional("not known", OutputChoices.pulses()));
        return around;
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        List<Driven> drives = DriveFields.drives(entries, seen);
        String name = name(entries, drives, seen);
        Integer number = entries.whole("number", 1, OutputBounds.LARGEST_NUMBER);
        PulseKind pulse = entries.typed().text("pulse").isEmpty() ? null : entries.choice("pulse", PulseKind.values());
        Double fastest = entries.amount("fastest", OutputBounds.RATE);
        Double wantedRate = entries.amount("wanted", OutputBounds.RATE);
        if (fastest != null && wantedRate != null && wantedRate > fastest) {
            entries.trouble("wanted", "The device does not bear this: its fastest rate is less.");
        }
        Travel travel = Travel.of(entries);
        boolean reversed = entries.typed().isTicked("reversed");
        if (!entries.areFine()) {
            return Optional.empty();
        }
        String id = code == null
                ? Elements.freshAddress(name, "output", seen.outputs().assignments())
                : code;
        Output wanted = new Output(
                id,
                name,
                number,
                drives,
                pulse,
                fastest,
                wantedRate,
                travel.low(),
                travel.high(),
                travel.rest(),
                reversed);
        return Optional.of(put(wanted, seen));
    }

    private static Deed put(Output wanted, Build seen) {
        boolean isThere = Elements.find(seen.outputs().assignments(), wanted.code()) != null;
        return Deed.fitting(
                "Output " + wanted.name() + (isThere ? " edited" : " added"),
                build -> build.withOutputs(Elements.with(build.outputs().assignments(), wanted)));
    }

    /** As typed, or that of the first part on it. */
    private static String name(Entries entries, List<Driven> drives, Build build) {
        String typed = entries.line("name", LONGEST_NAME);
        String unless = drives.stream()
                .findFirst()
                .flatMap(driven -> build.line(driven.line()))
                .map(PartLine::name)
                .orElse("");
        String name = typed.isEmpty() ? unless : typed;
        if (name.isEmpty()) {
            entries.trouble("name", "Please name the output, or choose the part that it drives.");
        }
        return name;
    }

    /** The pulse at both ends of the travel and at rest, in microseconds; null = not known. */
    private record Travel(
            @Nullable Double low,
            @Nullable Double high,
            @Nullable Double rest) {

        static Travel of(Entries entries) {
            Double low = entries.amount("low", OutputBounds.PULSE);
            Double high = entries.amount("high", OutputBounds.PULSE);
            Double rest = entries.amount("rest", OutputBounds.PULSE);
            if (low != null && high != null && low >= high) {
                entries.trouble("low", "The low end is the smaller of the two: to turn the sense, tick it below.");
            }
            boolean outside = rest != null && ((low != null && rest < low) || (high != null && rest > high));
            if (outside && entries.isFine("low")) {
                entries.trouble("rest", "This lies outside the travel.");
            }
            return new Travel(low, high, rest);
        }
    }

    static Deed removal(Output removed) {
        return Deed.fitting(
                "Output " + removed.name() + " removed",
                build -> build.withOutputs(Elements.without(build.outputs().assignments(), removed.code())));
    }
}
