package dev.ledgerwing.core.file;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.Moment;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Holds the schema against the records: neither may know a field that the other does not. */
class FileSchemaTest {

    private final JsonNode schema =
            RecordJson.MAPPER.readTree(FileSchemaTest.class.getResourceAsStream(FileSchema.RESOURCE));

    @Test
    void theSchemaHasExactlyTheFieldsOfTheRecord() {
        Set<String> expected = fields(Build.class);
        expected.add("format");
        assertThat(propertyNames(schema)).isEqualTo(expected);
        for (RecordComponent component : Build.class.getRecordComponents()) {
            compare(
                    component.getGenericType(),
                    schema.path("properties").path(component.getName()),
                    component.getName());
        }
    }

    private void compare(Type type, JsonNode at, String place) {
        JsonNode node = resolve(at);
        if (type instanceof ParameterizedType generic) {
            boolean map = generic.getRawType() == Map.class;
            Type inner = generic.getActualTypeArguments()[map ? 1 : 0];
            compare(inner, node.path(map ? "additionalProperties" : "items"), place + "[]");
        } else if (type instanceof Class<?> record
                && record.isRecord()
                && record != Mass.class
                && record != Length.class
                && record != Moment.class) {
            assertThat(propertyNames(node)).as(place).isEqualTo(fields(record));
            for (RecordComponent component : record.getRecordComponents()) {
                compare(
                        component.getGenericType(),
                        node.path("properties").path(fileName(component)),
                        place + "." + component.getName());
            }
        } else if (type instanceof Class<?> constants && constants.isEnum()) {
            Set<String> allowed = node.path("enum")
                    .valueStream()
                    .filter(value -> !value.isNull())
                    .map(JsonNode::stringValue)
                    .collect(Collectors.toSet());
            assertThat(allowed)
                    .as(place)
                    .isEqualTo(Arrays.stream(constants.getEnumConstants())
                            .map(Object::toString)
                            .collect(Collectors.toSet()));
        }
    }

    private JsonNode resolve(JsonNode node) {
        JsonNode one = node.has("anyOf") ? node.path("anyOf").path(0) : node;
        return one.has("$ref") ? schema.at(one.path("$ref").stringValue().substring(1)) : one;
    }

    private static Set<String> propertyNames(JsonNode node) {
        return new TreeSet<>(node.path("properties").propertyNames());
    }

    private static Set<String> fields(Class<?> record) {
        return Arrays.stream(record.getRecordComponents())
                .map(FileSchemaTest::fileName)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String fileName(RecordComponent component) {
        if (component.getType() == Mass.class) {
            return component.getName() + "G";
        }
        if (component.getType() == Moment.class) {
            return component.getName() + "GMm";
        }
        return component.getType() == Length.class ? component.getName() + "Mm" : component.getName();
    }
}
