package dev.ledgerwing.web.tables;

import dev.ledgerwing.web.airframe.ImpactStrip;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A table that a member gave, kept between looking at it and importing it. */
final class Upload {

    private final String id = UUID.randomUUID().toString();
    private final String airframe;
    private final String name;
    private final byte[] bytes;
    private volatile @Nullable ImpactStrip imported;

    /**
     * Keeps a table.
     *
     * @param airframe code of the airframe it is meant for
     * @param name what people call it: the file's name
     */
    Upload(String airframe, String name, byte[] bytes) {
        this.airframe = airframe;
        this.name = name;
        this.bytes = bytes;
    }

    /** Cannot be guessed. */
    String id() {
        return id;
    }

    String airframe() {
        return airframe;
    }

    String name() {
        return name;
    }

    byte[] bytes() {
        return bytes;
    }

    /** What its import did; nothing while it was not imported. */
    Optional<ImpactStrip> imported() {
        return Optional.ofNullable(imported);
    }

    /** Does an import that may give nothing, but never again after it was done: a second click gets what the first one did. */
    synchronized Optional<ImpactStrip> once(Supplier<Optional<ImpactStrip>> work) {
        if (imported == null) {
            imported = work.get().orElse(null);
        }
        return imported();
    }
}
