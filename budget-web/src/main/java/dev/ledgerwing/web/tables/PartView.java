package dev.ledgerwing.web.tables;

import dev.ledgerwing.core.file.table.TablePart;
import dev.ledgerwing.core.quantity.Figures;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A part as it would be stored.
 *
 * @param more part code, supplier, cost and note, as far as the table gives them
 * @param categoryFrom a word where its category is not the table's own; empty = it is
 * @param assembly empty = the table gives none
 * @param each null = not known; total likewise
 */
record PartView(
        int row,
        String name,
        String more,
        int quantity,
        @Nullable String each,
        @Nullable String total,
        String basis,
        String category,
        String categoryFrom,
        String assembly,
        @Nullable String station,
        String state) {

    static PartView of(TablePart part, Figures figures) {
        boolean known = part.unitMass() != null;
        return new PartView(
                part.row(),
                part.name(),
                more(part),
                part.quantity(),
                part.unitMass() == null ? null : figures.smallMass(part.unitMass()),
                known ? figures.smallMass(part.lineMass()) : null,
                part.basis().word(),
                part.category().title(),
                switch (part.categoryFrom()) {
                    case COLUMN -> "";
                    case NAME -> "proposed";
                    case NOTHING -> "taken";
                },
                Objects.requireNonNullElse(part.assembly(), ""),
                part.station().x() == null
                        ? null
                        : figures.lengthNumber(part.station().x()),
                part.state() == null ? "planned" : part.state().word());
    }

    private static String more(TablePart part) {
        Double cost = part.supply().costEach();
        return Stream.of(
                        part.supply().partCode(),
                        part.supply().supplier(),
                        cost == null ? null : "cost each " + Figures.number(cost, 2),
                        part.note() == null ? null : Excerpt.of(part.note()))
                .filter(Objects::nonNull)
                .collect(Collectors.joining(" · "));
    }
}
