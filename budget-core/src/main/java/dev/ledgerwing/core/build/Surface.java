package dev.ledgerwing.core.build;

import java.util.List;

/**
 * A wing by straight-tapered panels from the root out.
 *
 * @param apex leading edge of the root
 * @param mirrored whether the other side is the same; else there is one side only
 */
public record Surface(Station apex, boolean mirrored, List<Panel> panels) {

    public Surface {
        panels = List.copyOf(panels);
        Check.require(!panels.isEmpty(), "panels must hold one panel at least");
        Check.within("panels", panels.size(), 1, 50);
    }
}
