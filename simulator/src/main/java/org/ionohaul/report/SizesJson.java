package org.ionohaul.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.ionohaul.analysis.Crossing;
import org.ionohaul.analysis.Pace;
import org.ionohaul.analysis.SizeAnswers;
import org.ionohaul.analysis.SizeCurve;
import org.ionohaul.analysis.SizeDuel;
import org.ionohaul.analysis.SizePoint;

/** Answers for files of every size, as JSON. */
final class SizesJson {
    private SizesJson() {}

    static void write(JsonGenerator json, List<SizeAnswers> sizes) throws IOException {
        json.writeArrayFieldStart("sizes");
        for (SizeAnswers answers : sizes) {
            json.writeStartObject();
            json.writeStringField("direction", JsonValues.word(answers.direction()));
            json.writeNumberField("trials", answers.trials());
            json.writeArrayFieldStart("curves");
            for (SizeCurve curve : answers.curves()) {
                writeCurve(json, curve);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("crossings");
            for (SizeDuel duel : answers.duels()) {
                if (duel.crossing().isPresent()) {
                    writeCrossing(json, duel.crossing().get());
                }
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void writeCurve(JsonGenerator json, SizeCurve curve) throws IOException {
        json.writeStartObject();
        json.writeStringField("mode", curve.mode().name());
        writePace(json, curve.pace());
        json.writeArrayFieldStart("points");
        for (SizePoint point : curve.points()) {
            json.writeStartObject();
            json.writeNumberField("size_bytes", point.bytes());
            JsonValues.writeEstimate(json, "tenth_s", point.tenthSeconds());
            JsonValues.writeEstimate(json, "median_s", point.medianSeconds());
            JsonValues.writeEstimate(json, "ninth_s", point.ninthSeconds());
            JsonValues.writeEstimate(json, "reached_share", point.reached());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void writePace(JsonGenerator json, Pace pace) throws IOException {
        json.writeObjectFieldStart("pace");
        JsonValues.writeEstimate(json, "first_byte_s", pace.firstByteSeconds());
        JsonValues.writeEstimate(json, "first_kilobyte_s", pace.firstKilobyteSeconds());
        JsonValues.writeEstimate(json, "early_bytes_per_min", pace.earlyBytesPerMinute());
        JsonValues.writeEstimate(json, "sustained_bytes_per_min", pace.sustainedBytesPerMinute());
        JsonValues.writeFinite(json, "trouble_share", pace.troubleShare());
        JsonValues.writeEstimate(json, "lost_bytes_per_min", pace.lostBytesPerMinute());
        json.writeEndObject();
    }

    private static void writeCrossing(JsonGenerator json, Crossing crossing) throws IOException {
        json.writeStartObject();
        json.writeStringField("first_below", crossing.firstBelow());
        json.writeStringField("first_above", crossing.firstAbove());
        JsonValues.writeEstimate(json, "crossing_bytes", crossing.bytes());
        json.writeEndObject();
    }
}
