package dev.ledgerwing.core.build;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One step of a change, told by what stood there before and what stands there after. */
public sealed interface Edit {

    /**
     * An element added (no {@code before}), removed (no {@code after}) or changed.
     *
     * @param placement where it goes in the order of the record; null = it stays where it is
     */
    record PutElement(
            ElementKind kind,
            String id,
            @Nullable Element before,
            @Nullable Element after,
            @Nullable Placement placement)
            implements Edit {

        /** Whichever of the two there is, the later one first. */
        public Element subject() {
            return Optional.ofNullable(after)
                    .or(() -> Optional.ofNullable(before))
                    .orElseThrow();
        }
    }

    /** A section set, changed or taken away. */
    record PutSection(
            SectionKind section,
            @Nullable Record before,
            @Nullable Record after) implements Edit {}

    /** Behind the element with this id; null = at the very front. An id that is not there means the end. */
    record Placement(@Nullable String after) {}
}
