package org.ionohaul.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import org.ionohaul.analysis.SpreadSplit;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.ModeTrials;

/** Luck against ignorance, as JSON. */
final class SpreadsJson {
    private SpreadsJson() {}

    static void write(JsonGenerator json, Scenario scenario, CaseTrials trials) throws IOException {
        json.writeArrayFieldStart("spreads");
        for (ModeTrials mode : trials.modes()) {
            Optional<SpreadSplit> split = SpreadSplit.of(scenario, mode);
            if (split.isPresent()) {
                write(json, mode.mode().name(), split.get());
            }
        }
        json.writeEndArray();
    }

    private static void write(JsonGenerator json, String mode, SpreadSplit split) throws IOException {
        json.writeStartObject();
        json.writeStringField("mode", mode);
        json.writeNumberField("luck_share", split.luckShare());
        json.writeArrayFieldStart("unknown_inputs");
        for (SpreadSplit.InputShare input : split.inputs()) {
            json.writeStartObject();
            json.writeStringField("key", input.key());
            json.writeNumberField("spread_share", input.share());
            json.writeNumberField("p_value", input.pValue());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeStringField("worth_measuring", split.worthMeasuring().orElse(""));
        json.writeEndObject();
    }
}
