package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.FitState;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PortNeeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;

/**
 * Makes lines of a build from a parts table that was read: all of it or nothing.
 *
 * @param replacesLines whether the lines of the table stand in place of those that are there, or behind them
 * @param looseAssembly name of the assembly for parts that give none
 */
public record TableImport(boolean replacesLines, String looseAssembly) {

    public static final TableImport APPEND = new TableImport(false, "Parts");
    public static final TableImport REPLACE = new TableImport(true, "Parts");

    public TableImport withLooseAssembly(String name) {
        return new TableImport(replacesLines, name);
    }

    /**
     * {@code base} with the parts of the table as lines, in the order of its rows. Assemblies are found by name or code; new ones get a
     * code made from their name. Assemblies that are there stay, even where no line is left in them.
     *
     * @param newIds gives each new line an id that was never used
     * @throws IllegalStateException when the reading is not {@link TableReading#isUsable usable}
     * @throws dev.ledgerwing.core.build.InvalidBuild when lines are replaced that a load case of the build still refers to
     */
    public Build into(Build base, TableReading reading, Supplier<String> newIds) {
        if (!reading.isUsable()) {
            throw new IllegalStateException("only a table without problems can be imported");
        }
        AssemblyCodes codes = new AssemblyCodes(base.assemblies());
        List<PartLine> lines = new ArrayList<>(replacesLines ? List.of() : base.lines());
        for (TablePart part : reading.parts()) {
            String assembly = codes.codeFor(Objects.requireNonNullElse(part.assembly(), looseAssembly));
            lines.add(line(newIds.get(), assembly, part));
        }
        // assemblies first: the lines refer to them, and with the old lines nothing is missing in between
        return base.withAssemblies(codes.all()).withLines(lines);
    }

    private static PartLine line(String id, String assembly, TablePart part) {
        return new PartLine(
                id,
                assembly,
                part.name(),
                part.category(),
                part.quantity(),
                new LineMass(part.unitMass(), part.basis(), null, null, null),
                part.station().station().map(LinePlace::at).orElse(LinePlace.UNKNOWN),
                Objects.requireNonNullElse(part.state(), FitState.PLANNED),
                part.supply(),
                part.note(),
                List.of(),
                List.of(),
                PortNeeds.NONE);
    }
}
