package dev.ledgerwing.core.build;

import org.jspecify.annotations.Nullable;

/**
 * A named node of the supply that loads hang on; volts, null = not known.
 *
 * @param redundant whether each of its feeds must carry it alone, with every other one gone
 */
public record Rail(
        String code,
        String name,
        @Nullable Double nominalV,
        @Nullable Double minV,
        @Nullable Double maxV,
        boolean redundant)
        implements Element {

    public Rail {
        Check.slug("code", code);
        Check.name("name", name);
        Check.within("nominalV", nominalV, 0, 1000, " V");
        Check.within("minV", minV, 0, 1000, " V");
        Check.within("maxV", maxV, 0, 1000, " V");
    }

    @Override
    public String id() {
        return code;
    }
}
