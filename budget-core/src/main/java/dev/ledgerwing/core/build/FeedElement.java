package dev.ledgerwing.core.build;

import org.jspecify.annotations.Nullable;

/**
 * One thing that current passes through on its way to a rail. Null = not known.
 *
 * @param ratingA what it may carry for as long as it lasts: rating of a fuse or switch, full scale of a sensor, continuous output of a
 *     regulator; of a wire it takes the place of the tables
 * @param peakRatingA what it may carry for moments; null = no more than {@code ratingA}, of a wire: moments do not count
 * @param count how many of them lie side by side
 * @param sharing how they share; null for a single one
 * @param milliohm resistance of one; of a wire it takes the place of the tables
 * @param forwardV voltage lost in a diode at full current
 * @param switchedLoad what a switch turns on and off
 * @param wire of a {@link Kind#WIRE}, and {@code regulator} of a {@link Kind#REGULATOR}
 */
public record FeedElement(
        String name,
        Kind kind,
        @Nullable Double ratingA,
        @Nullable Double peakRatingA,
        int count,
        @Nullable Sharing sharing,
        @Nullable Double milliohm,
        @Nullable Double forwardV,
        @Nullable SwitchedLoad switchedLoad,
        @Nullable WireRun wire,
        @Nullable Regulator regulator) {

    /** What it is. */
    public enum Kind {
        WIRE,
        CONNECTOR,
        FUSE,
        BREAKER,
        SWITCH,
        SENSOR,
        DIODE,
        REGULATOR,
        MOTOR_CONTROLLER
    }

    /** How several side by side share the current. */
    public enum Sharing {
        /** Tied together at both ends: nobody can say how they share. */
        JOINED,
        /** Each in a branch of its own with as many equal sources upstream. */
        OWN_BRANCH
    }

    /** What a switch turns on and off: some loads draw much more in the first moment, others strike an arc. */
    public enum SwitchedLoad {
        RESISTIVE,
        LAMP,
        INDUCTIVE,
        MOTOR
    }

    public FeedElement {
        Check.name("name", name);
        Check.within("ratingA", ratingA, 0.001, 2000, " A");
        Check.within("peakRatingA", peakRatingA, 0.001, 5000, " A");
        Check.within("count", count, 1, 20);
        Check.within("milliohm", milliohm, 0, 100_000, " mohm");
        Check.within("forwardV", forwardV, 0, 5, " V");
        Check.require(count == 1 || sharing != null, "sharing must be given where several lie side by side");
        Check.require(
                ratingA == null || peakRatingA == null || ratingA <= peakRatingA,
                "peakRatingA must not be less than ratingA");
        Check.require((wire != null) == (kind == Kind.WIRE), "wire must be given for a WIRE, and only there");
        Check.require(
                (regulator != null) == (kind == Kind.REGULATOR),
                "regulator must be given for a REGULATOR, and only there");
        Check.require(forwardV == null || kind == Kind.DIODE, "forwardV belongs to a DIODE only");
        Check.require(switchedLoad == null || kind == Kind.SWITCH, "switchedLoad belongs to a SWITCH only");
    }

    /** A single one of a kind that needs no more than a rating. */
    public static FeedElement rated(String name, Kind kind, @Nullable Double ratingA) {
        return new FeedElement(name, kind, ratingA, null, 1, null, null, null, null, null, null);
    }

    public static FeedElement wire(String name, WireRun run) {
        return new FeedElement(name, Kind.WIRE, null, null, 1, null, null, null, null, run, null);
    }

    public static FeedElement diode(String name, @Nullable Double ratingA, @Nullable Double forwardV) {
        return new FeedElement(name, Kind.DIODE, ratingA, null, 1, null, null, forwardV, null, null, null);
    }

    public static FeedElement regulator(
            String name, @Nullable Double ratingA, @Nullable Double peakRatingA, Regulator regulator) {
        return new FeedElement(name, Kind.REGULATOR, ratingA, peakRatingA, 1, null, null, null, null, null, regulator);
    }
}
