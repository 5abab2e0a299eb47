package dev.ledgerwing.report.text;

import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** JSON for other programs: indented, the same on every machine, whole numbers without a decimal point. */
public final class JsonText {

    private static final JsonMapper MAPPER = new JsonMapper();
    private static final double LARGEST_WHOLE = 1L << 53;

    private JsonText() {}

    public static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    /** A number; null = not known. */
    public static JsonNode number(@Nullable Double value) {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        if (value == null) {
            return nodes.nullNode();
        }
        boolean whole = value == Math.rint(value) && Math.abs(value) <= LARGEST_WHOLE;
        return whole ? nodes.numberNode(value.longValue()) : nodes.numberNode(value);
    }

    /** A mass in grams; null = not known. */
    public static JsonNode grams(@Nullable Mass mass) {
        return number(mass == null ? null : mass.grams());
    }

    /** The text of {@code node}, ending in a line break. */
    public static String of(JsonNode node) {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
        return MAPPER.writer().with(printer).writeValueAsString(node) + "\n";
    }
}
