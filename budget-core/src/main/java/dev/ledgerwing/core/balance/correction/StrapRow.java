package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.PartLine;
import java.util.List;

/** Where to strap one pack in every flight case, in the record's order. */
public record StrapRow(PartLine pack, StrapPosition position, List<StrapCell> cells) {

    public StrapRow {
        cells = List.copyOf(cells);
    }
}
