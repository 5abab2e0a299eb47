package dev.ledgerwing.core.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Power;
import java.util.function.UnaryOperator;

/**
 * Small supplies to begin with. Each puts in sources, rails and feeds with their elements in order; ratings, gauges and lengths only
 * the builder knows are left not known, so that nothing is called fine before they are entered. Rails that are there are kept, and
 * used where their voltage fits.
 */
public enum PowerStart {
    ONE_PACK(
            "one-pack",
            "One pack, one regulator",
            "A battery feeds one rail through a plug, a fuse, a switch and a regulator.",
            PowerStarts::onePack),
    TWO_PACKS(
            "two-packs",
            "Two packs through diodes",
            "Two batteries, each with a regulator and a diode of its own, feed one rail: if one fails, the other carries on.",
            PowerStarts::twoPacks),
    PACK_AND_CELLS(
            "pack-and-cells",
            "Pack, regulator and solar tracker",
            "A battery and solar cells with a tracker meet at one rail; a regulator feeds a second rail from it.",
            PowerStarts::packAndCells);

    private final String code;
    private final String title;
    private final String sentence;
    private final UnaryOperator<Build> deed;

    PowerStart(String code, String title, String sentence, UnaryOperator<Build> deed) {
        this.code = code;
        this.title = title;
        this.sentence = sentence;
        this.deed = deed;
    }

    /** As it stands in addresses. */
    public String code() {
        return code;
    }

    public String title() {
        return title;
    }

    /** What it puts in. */
    public String sentence() {
        return sentence;
    }

    /** Whether nothing that it could spoil is there: no source and no feed. */
    public static boolean isOffered(Build build) {
        Power power = build.power();
        return power.sources().isEmpty() && power.feeds().isEmpty();
    }

    /**
     * The build with this supply in it.
     *
     * @throws IllegalArgumentException where it is not offered
     */
    public Build on(Build build) {
        if (!isOffered(build)) {
            throw new IllegalArgumentException(
                    "a source or a feed is there already, so a ready-made start would be put on top of it");
        }
        return deed.apply(build);
    }
}
