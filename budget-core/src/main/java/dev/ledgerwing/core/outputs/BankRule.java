package dev.ledgerwing.core.outputs;

import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.core.outputs.bank.BankSetting;
import dev.ledgerwing.core.outputs.bank.Device;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whether every device bears the rate and the kind of pulse of its bank. All outputs of one timer share their rate (published
 * hardware documentation: channels share a period and differ in the width of the pulse only).
 */
record BankRule(OutputStatement statement) {

    static final String PULSE = "outputs.pulse";
    static final String RATE = "outputs.rate";
    static final String WISH = "outputs.wish";
    static final String PERIOD = "outputs.period";
    static final String UNKNOWN = "outputs.unknown";

    private static final double US_PER_S = 1e6;

    Stream<Finding> findings() {
        return statement.banks().stream()
                .filter(use -> !use.outputs().isEmpty())
                .flatMap(use ->
                        Stream.concat(use.outputs().stream().flatMap(output -> of(use, output)), notKnown(use)));
    }

    /** What is wrong with one output in its bank, or nothing. */
    static Stream<Finding> of(BankUse use, Output output) {
        List<Finding> findings = new ArrayList<>();
        Device device = Device.of(output);
        BankSetting setting = use.setting();
        String name = "“" + output.name() + "”";
        String bank = "bank " + use.bank().name();
        if (setting.pulse() != device.pulse()) {
            String inForce = use.bank().pulses().isEmpty()
                    ? " gives one kind to all its outputs, and others there need " + words(setting.pulse())
                    : " gives " + words(setting.pulse()) + " to all its outputs";
            findings.add(OutputFindings.about(
                    PULSE,
                    Verdict.BREAKS,
                    output.name(),
                    name
                            + (output.pulse() == null
                                    ? " is taken to need " + words(device.pulse()) + ", as nothing else is known"
                                    : " needs " + words(device.pulse()))
                            + ", " + bank + inForce + "."));
        }
        Double rateHz = setting.rateHz();
        if (rateHz != null) {
            rate(device, rateHz, name, bank, output).forEach(findings::add);
        }
        return findings.stream();
    }

    private static Stream<Finding> rate(Device device, double rateHz, String name, String bank, Output output) {
        String gives = bank + " gives " + hertz(rateHz);
        Double maxRateHz = device.maxRateHz();
        Double wantedRateHz = device.wantedRateHz();
        if (maxRateHz != null && rateHz > maxRateHz) {
            return Stream.of(OutputFindings.about(
                    RATE,
                    Verdict.BREAKS,
                    output.name(),
                    name + " bears " + hertz(maxRateHz) + " at most, " + gives + "."));
        }
        if (!device.pulseFits(rateHz)) {
            return Stream.of(OutputFindings.about(
                    PERIOD,
                    Verdict.BREAKS,
                    output.name(),
                    "The longest pulse of " + name + ", " + microseconds(device.longestPulseUs())
                            + ", does not fit the period of " + bank + ", " + microseconds(US_PER_S / rateHz) + "."));
        }
        return wantedRateHz != null && rateHz < wantedRateHz
                ? Stream.of(OutputFindings.about(
                        WISH,
                        Verdict.TIGHT,
                        output.name(),
                        name + " wants " + hertz(wantedRateHz) + ", " + gives + "."))
                : Stream.empty();
    }

    private static Stream<Finding> notKnown(BankUse use) {
        List<String> gaps = new ArrayList<>();
        if (use.setting().rateHz() == null) {
            gaps.add("the rates it can give");
        }
        if (use.bank().pulses().isEmpty()) {
            gaps.add("the kinds of pulse it can give");
        }
        gap(use, "the kind of pulse of ", output -> output.pulse() == null, gaps);
        gap(use, "the fastest rate borne by ", output -> output.maxRateHz() == null, gaps);
        return gaps.isEmpty()
                ? Stream.empty()
                : Stream.of(OutputFindings.about(
                        UNKNOWN,
                        Verdict.UNKNOWN,
                        "Bank " + use.bank().name(),
                        "Of bank " + use.bank().name() + " is not known: " + String.join("; ", gaps) + "."));
    }

    private static void gap(BankUse use, String what, Predicate<Output> missing, List<String> gaps) {
        String names = use.outputs().stream()
                .filter(missing)
                .map(output -> "“" + output.name() + "”")
                .collect(Collectors.joining(" and "));
        if (!names.isEmpty()) {
            gaps.add(what + names);
        }
    }

    /** {@code a servo pulse}, as people say it. */
    static String words(PulseKind pulse) {
        return switch (Objects.requireNonNull(pulse)) {
            case SERVO_PULSE -> "servo pulses";
            case DATA -> "data";
            case ON_OFF -> "on and off";
        };
    }

    static String hertz(double rateHz) {
        return Figures.number(rateHz, 1) + "\u2009Hz";
    }

    static String microseconds(double us) {
        return String.format(Locale.ROOT, "%.0f", us) + "\u2009µs";
    }
}
