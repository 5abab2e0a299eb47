package dev.ledgerwing.core.outputs;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One output and what hangs on it.
 *
 * @param use the bank it is in; null where it has no number, or none of the board
 * @param drives the parts with their pieces
 */
public record OutputRow(Output output, @Nullable BankUse use, List<Drive> drives) {

    /** Pieces of a part on one plug. */
    public record Drive(PartLine line, int pieces, boolean holdsTheFlight) {

        /** Peak current of these pieces on their leads; null = not known. */
        public @Nullable Double peakA() {
            double sum = 0;
            for (ElectricalLoad load : line.electrical()) {
                Double peak = load.peakA();
                if (peak == null) {
                    return null;
                }
                sum += peak * pieces;
            }
            return line.electrical().isEmpty() ? null : (Double) sum;
        }
    }

    public OutputRow {
        drives = List.copyOf(drives);
    }

    static OutputRow of(Build build, Output output, List<BankUse> uses) {
        Set<String> flight = build.radio().functions().stream()
                .filter(function -> function.criticality() == Criticality.FLIGHT)
                .map(RadioFunction::code)
                .collect(Collectors.toSet());
        List<Drive> drives = new ArrayList<>();
        output.drives()
                .forEach(driven -> build.line(driven.line())
                        .ifPresent(line -> drives.add(new Drive(
                                line, driven.pieces(), line.serves().stream().anyMatch(flight::contains)))));
        return new OutputRow(
                output,
                uses.stream()
                        .filter(use -> use.outputs().contains(output))
                        .findFirst()
                        .orElse(null),
                drives);
    }

    /** Several pieces hang on one plug. */
    public boolean isYLead() {
        return output.pieces() > 1;
    }

    /** Peak currents of all that hangs on it add up; null = not known. */
    public @Nullable Double peakA() {
        double sum = 0;
        for (Drive drive : drives) {
            Double peak = drive.peakA();
            if (peak == null) {
                return null;
            }
            sum += peak;
        }
        return sum;
    }

    /** Servos of a function that the flight hangs on share one plug: neither can be set, or fail, alone. */
    public boolean couplesServosOfTheFlight() {
        return isYLead()
                && drives.stream()
                        .anyMatch(
                                drive -> drive.holdsTheFlight() && drive.line().category() == Category.SERVO);
    }

    /** {@code 2 × Servo, aileron}. */
    public String drivesInWords() {
        return drives.stream()
                .map(drive -> drive.pieces() == 1
                        ? drive.line().name()
                        : drive.pieces() + " × " + drive.line().name())
                .collect(Collectors.joining(", "));
    }
}
