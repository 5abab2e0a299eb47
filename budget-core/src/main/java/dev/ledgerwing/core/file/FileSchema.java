package dev.ledgerwing.core.file;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.path.NodePath;
import dev.ledgerwing.core.build.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;

/** Holds a file against the JSON Schema of the build file and words what does not fit for the person who wrote it. */
final class FileSchema {

    /** Where the schema lies beside this class. */
    static final String RESOURCE = "ledgerwing-build-1.schema.json";

    private static final int MOST_PROBLEMS = 200;
    private static final int LONGEST_SHOWN = 60;
    private static final Schema SCHEMA = load();

    private FileSchema() {}

    private static Schema load() {
        try (InputStream in = FileSchema.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException(RESOURCE + " is not on the class path");
            }
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(RecordJson.MAPPER.readTree(in));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Everything that does not fit, at most 200 problems. */
    static List<Problem> problemsIn(JsonNode file) {
        List<Problem> problems = new ArrayList<>();
        for (Error error : SCHEMA.validate(file)) {
            if (!isOfAnAlternative(error)) {
                problems.add(worded(error));
            }
        }
        addFinerThanAThousandth(file, "", problems);
        return problems.stream().distinct().limit(MOST_PROBLEMS).toList();
    }

    /** What may be missing is written as this or null: that it is not null is no news, and that neither fits no help. */
    private static boolean isOfAnAlternative(Error error) {
        return error.getKeyword().equals("anyOf")
                || (error.getKeyword().equals("type")
                        && error.getSchemaNode().stringValue("").equals("null"));
    }

    private static Problem worded(Error error) {
        String place = place(error.getInstanceLocation());
        JsonNode limit = error.getSchemaNode();
        String was = ", was " + shown(error.getInstanceNode());
        return switch (error.getKeyword()) {
            case "required" -> new Problem(join(place, error.getProperty()), "is missing");
            case "additionalProperties" ->
                new Problem(join(place, error.getProperty()), "is not a field of a build file");
            case "minimum" -> new Problem(place, "must be " + plain(limit) + " or more" + was);
            case "exclusiveMinimum" -> new Problem(place, "must be more than " + plain(limit) + was);
            case "maximum" -> new Problem(place, "must be " + plain(limit) + " or less" + was);
            case "type" -> new Problem(place, "must be " + types(limit) + was);
            case "enum" -> new Problem(place, "must be one of " + options(limit) + was);
            case "maxLength" -> new Problem(place, "must be at most " + plain(limit) + " characters long");
            case "minLength" -> new Problem(place, "must not be empty");
            case "pattern" -> new Problem(place, pattern(limit) + was);
            default -> new Problem(place, error.getMessage());
        };
    }

    private static String pattern(JsonNode limit) {
        String pattern = limit.stringValue("");
        if (pattern.startsWith("^[a-z0-9]")) {
            return "must be 1 to 40 lower-case letters, digits and hyphens";
        }
        return pattern.startsWith("^[A-Za-z0-9]")
                ? "must be 1 to 40 letters, digits, hyphens and underscores"
                : "must not be empty";
    }

    private static final Map<String, String> TYPE_WORDS = Map.of(
            "number", "a number",
            "integer", "a whole number",
            "string", "a text",
            "object", "an object in braces",
            "array", "a list in brackets",
            "boolean", "true or false",
            "null", "null");

    private static String types(JsonNode limit) {
        List<String> names = limit.isArray() ? strings(limit) : List.of(limit.stringValue(""));
        return names.stream().map(name -> TYPE_WORDS.getOrDefault(name, name)).collect(Collectors.joining(" or "));
    }

    private static String options(JsonNode limit) {
        return strings(limit).stream().filter(name -> !name.isEmpty()).collect(Collectors.joining(", "));
    }

    private static List<String> strings(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false)
                .map(node -> node.stringValue(""))
                .toList();
    }

    private static String shown(JsonNode node) {
        String text = node.isString() ? "“" + node.stringValue() + "”" : plain(node);
        return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN) + "…";
    }

    private static String plain(JsonNode node) {
        if (!node.isNumber()) {
            return node.toString();
        }
        BigDecimal number = node.decimalValue();
        return Math.abs(number.scale()) + number.precision() > LONGEST_SHOWN ? node.toString() : number.toPlainString();
    }

    /** Masses and lengths are kept in whole thousandths, moments in millionths; a finer one would not come back as it was written. */
    private static void addFinerThanAThousandth(JsonNode node, String place, List<Problem> problems) {
        for (Map.Entry<String, JsonNode> property : node.properties()) {
            String here = join(place, property.getKey());
            JsonNode value = property.getValue();
            if (isQuantity(property.getKey())
                    && value.isNumber()
                    && isTooFine(property.getKey(), value.decimalValue())) {
                String most = isMoment(property.getKey()) ? "six" : "three";
                problems.add(new Problem(here, "must have at most " + most + " decimals, was " + shown(value)));
            }
            addFinerThanAThousandth(value, here, problems);
        }
        if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                addFinerThanAThousandth(node.path(i), place + "[" + i + "]", problems);
            }
        }
    }

    private static boolean isQuantity(String name) {
        return name.endsWith("G") || name.endsWith("Mm");
    }

    /** A moment is a product of the two. */
    private static boolean isMoment(String name) {
        return name.endsWith("GMm");
    }

    private static boolean isTooFine(String name, BigDecimal number) {
        return number.signum() != 0 && number.stripTrailingZeros().scale() > (isMoment(name) ? 6 : 3);
    }

    private static String join(String place, String property) {
        return place.isEmpty() ? property : place + "." + property;
    }

    private static String place(NodePath path) {
        StringBuilder place = new StringBuilder();
        for (int i = 0; i < path.getNameCount(); i++) {
            if (path.getElement(i) instanceof Integer index) {
                place.append('[').append(index.intValue()).append(']');
            } else {
                place.append(place.isEmpty() ? "" : ".").append(path.getName(i));
            }
        }
        return place.toString();
    }
}
