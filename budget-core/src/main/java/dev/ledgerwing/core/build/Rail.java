package dev.ledgerwing.core.build;

import org.jspecify.annotations.Nullable;

/** A named node of the supply that loads hang on; volts, null = not known. */
public record Rail(
        String code,
        String name,
        @Nullable Double nominalV,
        @Nullable Double minV,
        @Nullable Double maxV) implements Element {

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
