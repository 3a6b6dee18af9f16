package org.ionohaul.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.SpreadSplit;

/** Luck against ignorance, as JSON. */
final class SpreadsJson {
    private SpreadsJson() {}

    static void write(JsonGenerator json, CaseSummary summary, List<Optional<SpreadSplit>> spreads) throws IOException {
        json.writeArrayFieldStart("spreads");
        for (int i = 0; i < spreads.size(); i++) {
            if (spreads.get(i).isPresent()) {
                write(json, summary.modes().get(i), spreads.get(i).get());
            }
        }
        json.writeEndArray();
    }

    private static void write(JsonGenerator json, ModeSummary mode, SpreadSplit split) throws IOException {
        json.writeStartObject();
        json.writeStringField("mode", mode.mode().name());
        JsonValues.writeEstimate(json, "rest_share", split.rest());
        json.writeArrayFieldStart("unknown_inputs");
        for (SpreadSplit.InputShare input : split.inputs()) {
            json.writeStartObject();
            json.writeStringField("key", input.key());
            JsonValues.writeEstimate(json, "spread_share", input.share());
            json.writeNumberField("p_value", input.pValue());
            json.writeArrayFieldStart("deadlines");
            for (int i = 0; i < input.swings().size(); i++) {
                json.writeStartObject();
                json.writeNumberField("deadline_s", mode.deadlines().get(i).deadlineSeconds());
                JsonValues.writeEstimate(json, "chance_swing", input.swings().get(i));
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("worth_measuring");
        for (String key : split.worthMeasuring()) {
            json.writeString(key);
        }
        json.writeEndArray();
        json.writeEndObject();
    }
}
