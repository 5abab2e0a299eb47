package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.jspecify.annotations.Nullable;

/** Writes the lines of a build as a parts table. */
final class TableWriter {

    private static final String BYTE_ORDER_MARK = "\ufeff";
    private static final List<String> HEADINGS = List.of(
            "Part",
            "Quantity",
            "Mass each [g]",
            "Basis",
            "Category",
            "Assembly",
            "Station x [mm]",
            "Station y [mm]",
            "Station z [mm]",
            "State",
            "Part code",
            "Supplier",
            "Cost each",
            "Note");
    private static final String LINE_END = "\r\n";
    private static final CSVFormat FORMAT =
            CSVFormat.Builder.create().setRecordSeparator(LINE_END).get();
    private static final int THOUSANDTHS = 3;

    private TableWriter() {}

    static byte[] write(Build build) {
        StringBuilder text = new StringBuilder(BYTE_ORDER_MARK);
        var names = build.assemblies().stream().collect(Collectors.toMap(Assembly::code, Assembly::name));
        appendRow(text, HEADINGS);
        for (PartLine line : build.lines()) {
            appendRow(text, cells(line, Objects.requireNonNull(names.get(line.assembly()))));
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void appendRow(StringBuilder text, List<String> cells) {
        text.append(FORMAT.format(cells.toArray())).append(LINE_END);
    }

    private static List<String> cells(PartLine line, String assembly) {
        Station station = line.place().station();
        Double cost = line.supply().costEach();
        return List.of(
                CellText.safe(line.name()),
                Integer.toString(line.quantity()),
                grams(line.mass().unitMass()),
                line.mass().basis().word(),
                line.category().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                CellText.safe(assembly),
                millimetres(station, Station::x),
                millimetres(station, Station::y),
                millimetres(station, Station::z),
                line.state().word(),
                text(line.supply().partCode()),
                text(line.supply().supplier()),
                cost == null ? "" : BigDecimal.valueOf(cost).toPlainString(),
                text(line.note()));
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : CellText.safe(text);
    }

    private static String grams(@Nullable Mass mass) {
        return mass == null ? "" : thousandths(mass.mg());
    }

    private static String millimetres(@Nullable Station station, Function<Station, Length> axis) {
        return station == null ? "" : thousandths(axis.apply(station).um());
    }

    private static String thousandths(long count) {
        BigDecimal value = BigDecimal.valueOf(count, THOUSANDTHS).stripTrailingZeros();
        return value.signum() == 0 ? "0" : value.toPlainString();
    }
}
