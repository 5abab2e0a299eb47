package dev.ledgerwing.core.words;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.ElementKind;
import dev.ledgerwing.core.build.SectionKind;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class FieldWordTest {

    private static final String RECORD = "dev.ledgerwing.core.build";

    @Test
    void everyFieldOfTheRecordHasAWordAndNoWordIsOrphaned() {
        assertThat(Arrays.stream(FieldWord.values()).map(FieldWord::field))
                .containsExactlyInAnyOrderElementsOf(fieldsOfTheRecord());
    }

    @Test
    void theFieldsOfTheRecordAreReallyFound() {
        assertThat(fieldsOfTheRecord()).contains("targetMass", "unitMass", "i2cAddresses", "guessedCorrelation", "y");
    }

    @Test
    void noWordIsWrittenLikeCode() {
        assertThat(FieldWord.values())
                .extracting(FieldWord::word)
                .allSatisfy(word ->
                        assertThat(word).doesNotContainPattern("[a-z][A-Z]|_").isNotBlank());
    }

    @Test
    void aWordIsFoundByTheNameOfItsField() {
        assertThat(FieldWord.of("reservePercent")).contains(FieldWord.RESERVE_PERCENT);
        assertThat(FieldWord.of("minV")).contains(FieldWord.MIN_V);
        assertThat(FieldWord.of("neverHeardOf")).isEmpty();
    }

    private static Set<String> fieldsOfTheRecord() {
        Set<String> fields = new TreeSet<>();
        for (SectionKind section : SectionKind.values()) {
            collect(section.type(), fields);
        }
        for (ElementKind kind : ElementKind.values()) {
            collect(kind.type(), fields);
        }
        return fields;
    }

    private static void collect(Class<?> type, Set<String> fields) {
        for (RecordComponent component : type.getRecordComponents()) {
            fields.add(component.getName());
            follow(component.getGenericType(), fields);
        }
    }

    private static void follow(Type type, Set<String> fields) {
        if (type instanceof ParameterizedType generic) {
            Arrays.stream(generic.getActualTypeArguments()).forEach(argument -> follow(argument, fields));
        } else if (type instanceof Class<?> plain
                && plain.isRecord()
                && plain.getPackageName().equals(RECORD)) {
            collect(plain, fields);
        }
    }
}
