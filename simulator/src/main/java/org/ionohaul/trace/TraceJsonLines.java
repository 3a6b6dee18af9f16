package org.ionohaul.trace;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.util.Locale;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.session.Cause;

/** A session's story for programs: a step a line, each a JSON object (RFC 8259). */
public record TraceJsonLines(TraceStory story) implements ResultFolder.Text {
    @Override
    public String fileName() {
        return "story.jsonl";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        try (JsonGenerator json = new JsonFactory()
                .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
                .createGenerator(writer)) {
            json.setRootValueSeparator(null);
            for (TraceStep step : story.steps()) {
                write(json, step);
                json.writeRaw('\n');
            }
        }
    }

    private static void write(JsonGenerator json, TraceStep step) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", word(step.kind()));
        json.writeNumberField("at_ns", step.atNanos());
        json.writeNumberField("until_ns", step.untilNanos());
        json.writeStringField("station", word(step.at()));
        json.writeStringField("says", step.says());
        if (step.dataRate() > 0) {
            json.writeNumberField("data_rate", step.dataRate());
        }
        if (step.kind() == TraceStep.Kind.BURST) {
            json.writeNumberField("frames", step.frames());
            json.writeNumberField("frames_again", step.framesAgain());
            json.writeNumberField("frames_decoded", step.framesDecoded());
            json.writeBooleanField("heard", step.isHeard());
            json.writeNumberField("sinr_db", Math.round(100 * step.sinrDb()) / 100.0);
        }
        json.writeNumberField("held_bytes", step.heldBytes());
        json.writeObjectFieldStart("spent_ns");
        for (Cause cause : Cause.values()) {
            json.writeNumberField(word(cause), step.spent().nanosOf(cause));
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
