package org.ionohaul.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import org.ionohaul.statistics.Estimate;

/** How numbers and names are written as JSON. */
final class JsonValues {
    private JsonValues() {}

    static void writeEstimate(JsonGenerator json, String name, Estimate estimate) throws IOException {
        json.writeObjectFieldStart(name);
        writeFinite(json, "value", estimate.value());
        writeFinite(json, "low", estimate.low());
        writeFinite(json, "high", estimate.high());
        json.writeEndObject();
    }

    static void writeFinite(JsonGenerator json, String name, double value) throws IOException {
        if (Double.isFinite(value)) {
            json.writeNumberField(name, value);
        } else {
            json.writeNullField(name);
        }
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
