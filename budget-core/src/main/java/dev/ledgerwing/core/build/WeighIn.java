package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the scales said of the whole airframe or of one finished assembly.
 *
 * @param assembly code of the assembly that was weighed; null = the whole airframe
 * @param aboard ids of the lines that stood on the scales and are the same parts still; a part that was removed or swapped since is
 *     no longer among them
 * @param extra what was on the scales besides and does not belong to the build
 * @param armUncertainty standard uncertainty of where each support stands
 * @param noseUpDeg how far the nose was up, 0 = level
 * @param tiltedNoseUpDeg the same in the second weighing, which gives the height; null = there was none
 * @param ledger what the ledger said of the same parts then
 */
public record WeighIn(
        String id,
        String name,
        LocalDate date,
        @Nullable String assembly,
        List<String> aboard,
        List<LoadCase.ExtraItem> extra,
        Scale scale,
        Length armUncertainty,
        double noseUpDeg,
        @Nullable Double tiltedNoseUpDeg,
        List<Support> supports,
        LedgerWeighed ledger)
        implements Element {

    private static final double STEEPEST_DEG = 60;

    /** The scales: {@code step} is the last digit they show, {@code maxError} how far they may be off either way. */
    public record Scale(Mass step, Mass maxError) {

        public Scale {
            Check.mass("stepG", step);
            Check.mass("maxErrorG", maxError);
            Check.require(step.mg() > 0 || maxError.mg() > 0, "scales need a step or a greatest error above 0 g");
        }
    }

    /**
     * One point the airframe stood on.
     *
     * @param station where it touches, in the axes of the airframe
     * @param tare what the scale showed with the supports alone
     * @param tiltedReading the reading of the second weighing; null = there was none
     */
    public record Support(
            String name,
            Station station,
            Mass reading,
            Mass tare,
            @Nullable Mass tiltedReading) {

        public Support {
            Check.name("name", name);
            Check.mass("readingG", reading);
            Check.mass("tareG", tare);
            Check.mass("tiltedReadingG", tiltedReading);
            Check.require(
                    reading.compareTo(tare) >= 0,
                    "the reading at “" + name + "” is below its tare: " + reading.grams() + " g with " + tare.grams()
                            + " g of tare");
            Check.require(
                    tiltedReading == null || tiltedReading.compareTo(tare) >= 0,
                    "the tilted reading at “" + name + "” is below its tare");
        }
    }

    /**
     * The ledger that was weighed.
     *
     * @param fingerprint of the stored revision
     * @param mass basic mass of the lines aboard
     * @param moments their first moments; null = not every station was known
     */
    public record LedgerWeighed(
            int revision,
            String fingerprint,
            Mass mass,
            @Nullable Moments moments) {

        public LedgerWeighed {
            Check.within("revision", revision, 0, Integer.MAX_VALUE);
            Check.text("fingerprint", fingerprint, 100);
        }
    }

    public WeighIn {
        aboard = List.copyOf(aboard);
        extra = List.copyOf(extra);
        supports = List.copyOf(supports);
        Check.id("id", id);
        Check.name("name", name);
        Check.extent("armUncertaintyMm", armUncertainty);
        Check.within("noseUpDeg", noseUpDeg, -STEEPEST_DEG, STEEPEST_DEG, " degrees");
        Check.within("tiltedNoseUpDeg", tiltedNoseUpDeg, -STEEPEST_DEG, STEEPEST_DEG, " degrees");
        Check.within("supports", supports.size(), 1, 20);
        Check.require(
                supports.stream().allMatch(support -> (support.tiltedReading() == null) == (tiltedNoseUpDeg == null)),
                "a second, tilted weighing needs its angle and a reading at every support");
    }

    /** Whether the whole airframe stood on the scales. */
    public boolean isWhole() {
        return assembly == null;
    }

    public WeighIn withAboard(List<String> changed) {
        return new WeighIn(
                id,
                name,
                date,
                assembly,
                changed,
                extra,
                scale,
                armUncertainty,
                noseUpDeg,
                tiltedNoseUpDeg,
                supports,
                ledger);
    }
}
