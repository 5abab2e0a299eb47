package dev.ledgerwing.report.table;

import dev.ledgerwing.core.file.table.CellNote;
import dev.ledgerwing.core.file.table.TableColumn;
import dev.ledgerwing.core.file.table.TablePart;
import dev.ledgerwing.core.file.table.TableReading;
import dev.ledgerwing.core.file.table.TableStation;
import dev.ledgerwing.core.file.table.TableTotal;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.report.text.JsonText;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** How a parts table was understood, for other programs; what is not known is null. */
public final class TableJson {

    private TableJson() {}

    public static String of(TableReading reading) {
        ObjectNode json = JsonText.object();
        json.put("usable", reading.isUsable());
        json.put("trouble", reading.trouble());
        json.put("encoding", reading.encoding());
        json.put("delimiter", String.valueOf(reading.delimiter()));
        json.put("decimalMark", String.valueOf(reading.decimalMark()));
        json.put("headerRow", reading.headerRow());
        json.set("knownMassG", JsonText.grams(reading.knownMass()));
        json.put("partsOfUnknownMass", reading.partsOfUnknownMass());
        put(json, "columns", reading.columns(), TableJson::column);
        put(json, "parts", reading.parts(), TableJson::part);
        put(json, "totals", reading.totals(), TableJson::total);
        put(json, "notices", reading.notices(), TableJson::note);
        put(json, "problems", reading.problems(), TableJson::note);
        ArrayNode assumed = json.putArray("assumed");
        reading.assumed().forEach(assumed::add);
        return JsonText.of(json);
    }

    private static <T> void put(ObjectNode json, String name, List<T> values, Function<T, ObjectNode> node) {
        ArrayNode array = json.putArray(name);
        values.forEach(value -> array.add(node.apply(value)));
    }

    private static ObjectNode column(TableColumn column) {
        ObjectNode json = JsonText.object();
        json.put("number", column.number());
        json.put("header", column.header());
        json.put("meaning", column.meaning().name());
        json.put("unit", column.unit());
        json.put("why", column.why());
        return json;
    }

    private static ObjectNode part(TablePart part) {
        ObjectNode json = JsonText.object();
        json.put("row", part.row());
        json.put("name", part.name());
        json.put("quantity", part.quantity());
        json.set("unitMassG", JsonText.grams(part.unitMass()));
        json.put("basis", part.basis().name());
        json.put("category", part.category().name());
        json.put("assembly", part.assembly());
        json.set("station", station(part.station()));
        json.put("state", part.state() == null ? null : part.state().name());
        json.put("partCode", part.supply().partCode());
        json.put("supplier", part.supply().supplier());
        json.set("costEach", JsonText.number(part.supply().costEach()));
        json.put("note", part.note());
        return json;
    }

    private static ObjectNode station(TableStation station) {
        ObjectNode json = JsonText.object();
        json.set("xMm", JsonText.number(mm(station.x())));
        json.set("yMm", JsonText.number(mm(station.y())));
        json.set("zMm", JsonText.number(mm(station.z())));
        return json;
    }

    private static @Nullable Double mm(@Nullable Length length) {
        return length == null ? null : length.mm();
    }

    private static ObjectNode total(TableTotal total) {
        ObjectNode json = JsonText.object();
        json.put("row", total.row());
        json.put("label", total.label());
        json.set("statedG", JsonText.grams(total.stated()));
        json.set("ownSumG", JsonText.grams(total.ownSum()));
        json.put("agrees", total.agrees());
        json.put("complete", total.complete());
        json.put("sentence", total.sentence());
        return json;
    }

    private static ObjectNode note(CellNote note) {
        ObjectNode json = JsonText.object();
        json.put("row", note.row());
        json.put("column", note.column());
        json.put("text", note.text());
        json.put("sentence", note.sentence());
        return json;
    }
}
