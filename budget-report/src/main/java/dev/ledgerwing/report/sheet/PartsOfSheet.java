package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.mass.MassGroup;
import dev.ledgerwing.core.mass.MassRow;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** The lines of a build as they stand on its sheet, assembly by assembly. */
final class PartsOfSheet {

    private static final String NOT_KNOWN = "not known";
    private static final int LONGEST_NOTE = 180;

    private final MassStatement statement;
    private final Build build;
    private final Figures units;

    PartsOfSheet(MassStatement statement, Figures units) {
        this.statement = statement;
        this.build = statement.build();
        this.units = units;
    }

    /** The assemblies with a part aboard, then what the design load case carries. */
    List<PartGroup> groups() {
        return statement.byAssembly().stream()
                .filter(group -> !group.rows().isEmpty())
                .map(this::group)
                .toList();
    }

    PartGroup notAboard() {
        List<PartEntry> parts = statement.notAboard().stream().map(this::line).toList();
        return new PartGroup(
                "Not aboard in “" + statement.design().loadCase().name() + "”, in no sum",
                count(parts.size()),
                "",
                parts);
    }

    private PartGroup group(MassGroup group) {
        List<PartEntry> parts = group.code() == null
                ? extraItems(group.rows())
                : group.rows().stream().map(this::line).toList();
        return new PartGroup(
                group.title(),
                count(parts.size()),
                MassSummary.atLeast(group.total(), units.smallMass(group.total().basic())),
                parts);
    }

    private static String count(int lines) {
        return lines == 1 ? "1 line" : lines + " lines";
    }

    /** The rows of extra items stand in the order in which the load case has them. */
    private List<PartEntry> extraItems(List<MassRow> rows) {
        List<ExtraItem> items = statement.design().loadCase().extra();
        return IntStream.range(0, rows.size())
                .mapToObj(index -> entry(rows.get(index), items.get(index).station(), "", ""))
                .toList();
    }

    private PartEntry line(MassRow row) {
        PartLine line = build.line(Objects.requireNonNull(row.line())).orElseThrow();
        String partCode = Objects.requireNonNullElse(line.supply().partCode(), "");
        return entry(row, line.place().station(), partCode, shortened(Objects.requireNonNullElse(line.note(), "")));
    }

    private PartEntry entry(MassRow row, @Nullable Station station, String detail, String note) {
        return new PartEntry(
                row.isKnown(),
                row.name(),
                detail,
                note,
                String.valueOf(row.quantity()),
                mass(row.mass().unitMass()),
                mass(row.basic()),
                row.isKnown() ? row.basis().word() : "",
                station == null ? NOT_KNOWN : units.lengthNumber(station.x()));
    }

    private String mass(@Nullable Mass mass) {
        return mass == null ? NOT_KNOWN : units.smallMass(mass);
    }

    private static String shortened(String note) {
        return note.length() <= LONGEST_NOTE ? note : note.substring(0, LONGEST_NOTE) + "…";
    }
}
