package dev.ledgerwing.core.build;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one output of the flight controller drives.
 *
 * @param number of the output, as it is printed on the board; null = it has none yet
 * @param drives parts on its plug; several pieces hang on a Y-lead
 * @param pulse the kind of pulse that is understood; null = not known
 * @param maxRateHz the fastest rate that the device bears and {@code wantedRateHz} the one that is wanted; null = not known
 * @param lowUs pulse at one end of the travel, {@code highUs} at the other, {@code restUs} at rest, in microseconds
 * @param reversed moves against the sense of its command
 */
public record Output(
        String code,
        String name,
        @Nullable Integer number,
        List<Driven> drives,
        @Nullable PulseKind pulse,
        @Nullable Double maxRateHz,
        @Nullable Double wantedRateHz,
        @Nullable Double lowUs,
        @Nullable Double highUs,
        @Nullable Double restUs,
        boolean reversed)
        implements Element {

    /** Pieces of a part of the ledger. */
    public record Driven(String line, int pieces) {

        public Driven {
            Check.id("line", line);
            Check.within("pieces", pieces, 1, 1000);
        }
    }

    public Output {
        drives = List.copyOf(drives);
        Check.slug("code", code);
        Check.name("name", name);
        if (number != null) {
            Check.within("number", number, 1, 999);
        }
        Check.within("maxRateHz", maxRateHz, 1, 100_000, " Hz");
        Check.within("wantedRateHz", wantedRateHz, 1, 100_000, " Hz");
        Check.require(
                maxRateHz == null || wantedRateHz == null || wantedRateHz <= maxRateHz,
                "wantedRateHz must not be above the fastest rate that the device bears");
        pulse("lowUs", lowUs);
        pulse("highUs", highUs);
        pulse("restUs", restUs);
        Check.require(
                lowUs == null || highUs == null || lowUs < highUs,
                "lowUs must be below highUs, turn the sense instead");
        Check.require(
                (restUs == null || lowUs == null || restUs >= lowUs)
                        && (restUs == null || highUs == null || restUs <= highUs),
                "restUs must lie between the ends of the travel");
    }

    private static void pulse(String what, @Nullable Double us) {
        Check.within(what, us, 100, 20_000, " µs");
    }

    @Override
    public String id() {
        return code;
    }

    /** How many pieces hang on it. */
    public int pieces() {
        return drives.stream().mapToInt(Driven::pieces).sum();
    }

    public Output withNumber(@Nullable Integer changed) {
        return new Output(code, name, changed, drives, pulse, maxRateHz, wantedRateHz, lowUs, highUs, restUs, reversed);
    }

    public Output withDrives(List<Driven> changed) {
        return new Output(code, name, number, changed, pulse, maxRateHz, wantedRateHz, lowUs, highUs, restUs, reversed);
    }
}
