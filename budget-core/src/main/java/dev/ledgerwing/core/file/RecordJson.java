package dev.ledgerwing.core.file;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.Moment;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.LongFunction;
import java.util.function.ToLongFunction;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.PropertyNamingStrategy;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.cfg.MapperConfig;
import tools.jackson.databind.cfg.MutableConfigOverride;
import tools.jackson.databind.introspect.AnnotatedField;
import tools.jackson.databind.introspect.AnnotatedMethod;
import tools.jackson.databind.introspect.AnnotatedParameter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/** How records of the build are written as JSON: strictly, with the unit at the end of every field's name. */
final class RecordJson {

    static final JsonMapper MAPPER = JsonMapper.builder()
            .addModule(new SimpleModule()
                    .addSerializer(Mass.class, new ThousandthsWriter<>(Mass::mg))
                    .addDeserializer(Mass.class, new ThousandthsReader<>(Mass::new))
                    .addSerializer(Length.class, new ThousandthsWriter<>(Length::um))
                    .addDeserializer(Length.class, new ThousandthsReader<>(Length::new))
                    .addSerializer(Moment.class, new MomentWriter())
                    .addDeserializer(Moment.class, new MomentReader()))
            .propertyNamingStrategy(new UnitSuffixes())
            .changeDefaultPropertyInclusion(all -> all.withValueInclusion(JsonInclude.Include.NON_NULL))
            .withConfigOverride(List.class, RecordJson::emptyWhenMissing)
            .withConfigOverride(Map.class, RecordJson::emptyWhenMissing)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
            .disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
            .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .enable(MapperFeature.INFER_RECORD_GETTERS_FROM_COMPONENTS_ONLY)
            .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
            .build();

    private RecordJson() {}

    private static void emptyWhenMissing(MutableConfigOverride collection) {
        collection.setNullHandling(JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY));
        collection.setInclude(JsonInclude.Value.construct(JsonInclude.Include.NON_EMPTY, JsonInclude.Include.ALWAYS));
    }

    /** A mass field ends in {@code G}, a length field in {@code Mm}, a moment in {@code GMm}. */
    private static final class UnitSuffixes extends PropertyNamingStrategy {

        private static final long serialVersionUID = 1;

        @Override
        public String nameForField(MapperConfig<?> config, AnnotatedField field, String name) {
            return withUnit(field.getRawType(), name);
        }

        @Override
        public String nameForGetterMethod(MapperConfig<?> config, AnnotatedMethod method, String name) {
            return withUnit(method.getRawType(), name);
        }

        @Override
        public String nameForConstructorParameter(MapperConfig<?> config, AnnotatedParameter parameter, String name) {
            return withUnit(parameter.getRawType(), name);
        }

        private static String withUnit(Class<?> type, String name) {
            if (type == Mass.class) {
                return name + "G";
            }
            if (type == Moment.class) {
                return name + "GMm";
            }
            return type == Length.class ? name + "Mm" : name;
        }
    }

    private static final class ThousandthsWriter<T> extends ValueSerializer<T> {

        private final ToLongFunction<T> thousandths;

        private ThousandthsWriter(ToLongFunction<T> thousandths) {
            this.thousandths = thousandths;
        }

        @Override
        public void serialize(T value, JsonGenerator generator, SerializationContext context) {
            long exact = thousandths.applyAsLong(value);
            if (exact % 1000 == 0) {
                generator.writeNumber(exact / 1000);
            } else {
                generator.writeNumber(BigDecimal.valueOf(exact, 3).stripTrailingZeros());
            }
        }
    }

    private static final class ThousandthsReader<T> extends ValueDeserializer<T> {

        private final LongFunction<T> make;

        private ThousandthsReader(LongFunction<T> make) {
            this.make = make;
        }

        @Override
        public T deserialize(JsonParser parser, DeserializationContext context) {
            return make.apply(parser.getDecimalValue().movePointRight(3).longValueExact());
        }
    }

    /** Moments are whole millionths of a gram-millimetre. */
    private static final int MOMENT_PLACES = 6;

    private static final class MomentWriter extends ValueSerializer<Moment> {

        @Override
        public void serialize(Moment value, JsonGenerator generator, SerializationContext context) {
            BigDecimal exact = new BigDecimal(value.mgUm(), MOMENT_PLACES).stripTrailingZeros();
            generator.writeNumber(exact.scale() < 0 ? exact.setScale(0) : exact);
        }
    }

    private static final class MomentReader extends ValueDeserializer<Moment> {

        @Override
        public Moment deserialize(JsonParser parser, DeserializationContext context) {
            return new Moment(
                    parser.getDecimalValue().movePointRight(MOMENT_PLACES).toBigIntegerExact());
        }
    }
}
