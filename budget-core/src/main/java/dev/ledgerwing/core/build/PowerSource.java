package dev.ledgerwing.core.build;

import org.jspecify.annotations.Nullable;

/**
 * Where current comes from: a battery, solar cells, or a supply from outside.
 *
 * @param part id of the line that it is in the ledger; with that line left at home in a load case it is not there either
 * @param pack of a battery, and {@code array} of solar cells
 * @param outputV of a supply from outside, and {@code ratingA} what it can give
 */
public record PowerSource(
        String code,
        String name,
        Kind kind,
        @Nullable String part,
        @Nullable Pack pack,
        @Nullable SolarArray array,
        @Nullable Double outputV,
        @Nullable Double ratingA)
        implements Element {

    /** What kind of source it is. */
    public enum Kind {
        BATTERY,
        SOLAR,
        EXTERNAL
    }

    public PowerSource {
        Check.slug("code", code);
        Check.name("name", name);
        Check.within("outputV", outputV, 0.1, 1000, " V");
        Check.within("ratingA", ratingA, 0.001, 2000, " A");
        Check.require((pack != null) == (kind == Kind.BATTERY), "pack must be given for a BATTERY, and only there");
        Check.require((array != null) == (kind == Kind.SOLAR), "array must be given for SOLAR, and only there");
        Check.require(
                kind == Kind.EXTERNAL || (outputV == null && ratingA == null),
                "outputV and ratingA belong to an EXTERNAL supply only");
    }

    public static PowerSource battery(String code, String name, @Nullable String part, Pack pack) {
        return new PowerSource(code, name, Kind.BATTERY, part, pack, null, null, null);
    }

    public static PowerSource solar(String code, String name, @Nullable String part, SolarArray array) {
        return new PowerSource(code, name, Kind.SOLAR, part, null, array, null, null);
    }

    /** A supply from outside: volts and amperes, null = not known. */
    public static PowerSource external(String code, String name, @Nullable Double outputV, @Nullable Double ratingA) {
        return new PowerSource(code, name, Kind.EXTERNAL, null, null, null, outputV, ratingA);
    }

    PowerSource withPart(@Nullable String changed) {
        return new PowerSource(code, name, kind, changed, pack, array, outputV, ratingA);
    }

    PowerSource withArray(SolarArray changed) {
        return new PowerSource(code, name, kind, part, pack, changed, outputV, ratingA);
    }

    @Override
    public String id() {
        return code;
    }
}
