package org.ionohaul.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.ionohaul.analysis.Difference;
import org.ionohaul.analysis.SkyAnswers;
import org.ionohaul.analysis.SkySpread;

/** The skies of all trials, and when two modes differ most, as JSON. */
final class SkiesJson {
    private SkiesJson() {}

    static void write(JsonGenerator json, SkyAnswers skies) throws IOException {
        json.writeObjectFieldStart("sky");
        json.writeNumberField("trials", skies.trials());
        json.writeNumberField("watched_s", skies.watchedSeconds());
        writeEnd(json, "near", skies.near());
        writeEnd(json, "far", skies.far());
        json.writeEndObject();
    }

    private static void writeEnd(JsonGenerator json, String end, List<SkySpread> spreads) throws IOException {
        json.writeObjectFieldStart(end);
        for (SkySpread spread : spreads) {
            json.writeObjectFieldStart(JsonValues.word(spread.measure()));
            json.writeNumberField("tenth", spread.tenth());
            json.writeNumberField("median", spread.median());
            json.writeNumberField("ninth", spread.ninth());
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    /** Writes when two modes differ most; null where nothing of the sky tells. */
    static void writeDifference(JsonGenerator json, Optional<Difference> found) throws IOException {
        if (found.isEmpty()) {
            json.writeNullField("differ_by");
            return;
        }
        Difference difference = found.get();
        json.writeObjectFieldStart("differ_by");
        json.writeStringField("at", difference.isAtReceiver() ? "receiver" : "sender");
        json.writeStringField("measure", JsonValues.word(difference.measure()));
        json.writeNumberField("watched_s", difference.watchedSeconds());
        json.writeNumberField("spread_share", difference.share());
        json.writeNumberField("p_value", difference.pValue());
        writeFifth(json, "most", difference.most());
        writeFifth(json, "least", difference.least());
        json.writeEndObject();
    }

    private static void writeFifth(JsonGenerator json, String name, Difference.Fifth fifth) throws IOException {
        json.writeObjectFieldStart(name);
        json.writeNumberField("fifth", fifth.place() + 1);
        json.writeNumberField("from", fifth.from());
        json.writeNumberField("to", fifth.to());
        json.writeNumberField("trials", fifth.trials());
        JsonValues.writeEstimate(json, "first_before_share", fifth.firstBefore());
        JsonValues.writeEstimate(json, "second_before_share", fifth.secondBefore());
        JsonValues.writeEstimate(json, "median_lead_s", fifth.medianLeadSeconds());
        json.writeEndObject();
    }
}
