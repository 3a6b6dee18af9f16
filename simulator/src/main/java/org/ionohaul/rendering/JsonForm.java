package org.ionohaul.rendering;

import com.fasterxml.jackson.annotation.JsonAutoDetect;
import java.io.IOException;
import java.io.Writer;
import java.util.Locale;
import java.util.OptionalDouble;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/**
 * How records become published JSON (RFC 8259): components in their order, {@code snake_case} with units as in
 * {@code lead_s} and {@code bytes_per_min}, constants in small letters, and null for what was not reached or has no limit.
 */
public final class JsonForm {
    private static final DefaultIndenter INDENTED = new DefaultIndenter("  ", "\n");

    /** Writes one value on one line. */
    public static final JsonMapper LINE = mapper();

    private static final ObjectWriter INDENTED_LINES = LINE.writerWithDefaultPrettyPrinter();

    private JsonForm() {}

    /** Writes a value as a file of its own, over indented lines, for people to read. */
    public static void writeFile(Writer writer, Object value) throws IOException {
        INDENTED_LINES.writeValue(writer, value);
        writer.write('\n');
    }

    private static JsonMapper mapper() {
        return JsonMapper.builder()
                .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
                .changeDefaultVisibility(it -> it.withIsGetterVisibility(JsonAutoDetect.Visibility.NONE))
                .propertyNamingStrategy(new Names())
                .defaultPrettyPrinter(
                        new DefaultPrettyPrinter().withObjectIndenter(INDENTED).withArrayIndenter(INDENTED))
                .addModule(new SimpleModule()
                        .addSerializer(Double.class, new FiniteOrNull())
                        .addSerializer(Double.TYPE, new FiniteOrNull())
                        .addSerializer(OptionalDouble.class, new FiniteIfPresent())
                        .addSerializer(Enum.class, new Word())
                        .addKeySerializer(Enum.class, new WordAsName()))
                .build();
    }

    /** Returns a constant as it is written. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static final class Names extends PropertyNamingStrategies.SnakeCaseStrategy {
        private static final long serialVersionUID = 1;

        @Override
        public String translate(String name) {
            return super.translate(name)
                    .replaceFirst("_seconds$", "_s")
                    .replaceFirst("_nanos$", "_ns")
                    .replaceFirst("_minute$", "_min");
        }
    }

    private static final class FiniteOrNull extends ValueSerializer<Double> {
        @Override
        public void serialize(Double value, JsonGenerator json, SerializationContext context) {
            if (Double.isFinite(value)) {
                json.writeNumber(value);
            } else {
                json.writeNull();
            }
        }
    }

    private static final class FiniteIfPresent extends ValueSerializer<OptionalDouble> {
        private final FiniteOrNull number = new FiniteOrNull();

        @Override
        public void serialize(OptionalDouble value, JsonGenerator json, SerializationContext context) {
            number.serialize(value.orElse(Double.NaN), json, context);
        }
    }

    @SuppressWarnings("rawtypes")
    private static final class Word extends ValueSerializer<Enum> {
        @Override
        public void serialize(Enum value, JsonGenerator json, SerializationContext context) {
            json.writeString(word(value));
        }
    }

    @SuppressWarnings("rawtypes")
    private static final class WordAsName extends ValueSerializer<Enum> {
        @Override
        public void serialize(Enum value, JsonGenerator json, SerializationContext context) {
            json.writeName(word(value));
        }
    }
}
