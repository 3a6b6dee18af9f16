package org.ionohaul.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.statistics.Proportion;
import org.ionohaul.study.CaseSummary;
import org.ionohaul.study.CauseTime;
import org.ionohaul.study.Comparison;
import org.ionohaul.study.DeadlineChance;
import org.ionohaul.study.LevelShare;
import org.ionohaul.study.ModeSummary;
import org.ionohaul.study.OutcomeShare;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.StudySummary;

/**
 * The summary of a study for programs, as JSON (RFC 8259). What was not reached or has no limit is {@code null}.
 *
 * <p>The promise to its readers: within a format version, names keep their meaning and unit and do not go away; new ones
 * may come.
 */
public record SummaryJson(StudyResult result, StudySummary summary, Provenance provenance)
        implements ResultFolder.Entry {
    /** Version of the format; grows when a name changes its meaning or goes. */
    static final int FORMAT_VERSION = 1;

    @Override
    public String fileName() {
        return "summary.json";
    }

    @Override
    public void writeTo(Path file) throws IOException {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        printer.indentArraysWith(new DefaultIndenter("  ", "\n"));
        try (Writer writer = Files.newBufferedWriter(file);
                JsonGenerator json = new JsonFactory().createGenerator(writer)) {
            json.setPrettyPrinter(printer);
            writeStudy(json);
            json.writeRaw('\n');
        }
    }

    private void writeStudy(JsonGenerator json) throws IOException {
        Scenario scenario = result.scenario();
        json.writeStartObject();
        json.writeStringField("format", "ionohaul-summary");
        json.writeNumberField("format_version", FORMAT_VERSION);
        json.writeStringField("program_version", provenance.version());
        json.writeStringField("scenario", scenario.name());
        json.writeStringField("title", scenario.title());
        json.writeNumberField("seed", scenario.seed());
        json.writeNumberField("trials_asked", result.trialsAsked());
        json.writeNumberField("trials_done", result.trialsDone());
        json.writeBooleanField("partial", result.isPartial());
        json.writeNumberField("horizon_s", scenario.horizonSeconds());
        json.writeNumberField("confidence", ModeSummary.CONFIDENCE);
        json.writeStringField("quantile_definition", OrderedSample.QUANTILE_DEFINITION);
        writeInputs(json);
        json.writeArrayFieldStart("cases");
        for (CaseSummary each : summary.cases()) {
            writeCase(json, each);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void writeInputs(JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("inputs");
        for (InputFile input : provenance.inputs()) {
            json.writeStartObject();
            json.writeStringField("name", input.name());
            json.writeStringField("sha256", input.sha256());
            json.writeStringField("text", input.text());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void writeCase(JsonGenerator json, CaseSummary each) throws IOException {
        json.writeStartObject();
        writeTransfer(json, each.transfer());
        json.writeStringField("direction", word(each.direction()));
        json.writeArrayFieldStart("best_first");
        for (int mode : each.ranking()) {
            json.writeString(each.modes().get(mode).mode().name());
        }
        json.writeEndArray();
        json.writeObjectFieldStart("verdict");
        json.writeStringField("reason", word(each.verdict().reason()));
        json.writeStringField("cause", word(each.verdict().cause()));
        writeFinite(json, "saved_s", each.verdict().secondsSaved());
        json.writeBooleanField("clear", each.verdict().isClear());
        json.writeStringField("sentence", each.verdict().sentence());
        json.writeEndObject();
        json.writeArrayFieldStart("modes");
        for (ModeSummary mode : each.modes()) {
            writeMode(json, mode);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("comparisons");
        for (Comparison comparison : each.comparisons()) {
            writeComparison(json, comparison);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void writeTransfer(JsonGenerator json, Transfer transfer) throws IOException {
        json.writeStringField("transfer", transfer.name());
        json.writeNumberField("total_bytes", transfer.totalBytes());
        json.writeArrayFieldStart("files");
        for (PayloadFile file : transfer.files()) {
            json.writeStartObject();
            json.writeStringField("name", file.name());
            json.writeNumberField("bytes", file.bytes());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void writeMode(JsonGenerator json, ModeSummary mode) throws IOException {
        json.writeStartObject();
        json.writeStringField("mode", mode.mode().name());
        json.writeStringField("title", mode.mode().title());
        json.writeNumberField("trials", mode.trials());
        writeEstimate(json, "delivered_share", mode.delivered());
        json.writeArrayFieldStart("completion_quantiles");
        writeQuantile(json, 0.1, mode.tenthSeconds());
        writeQuantile(json, 0.5, mode.medianSeconds());
        writeQuantile(json, 0.9, mode.ninthSeconds());
        json.writeEndArray();
        writeFinite(json, "median_if_nobody_broke_off_s", mode.medianIfNobodyBrokeOffSeconds());
        json.writeArrayFieldStart("deadlines");
        for (DeadlineChance deadline : mode.deadlines()) {
            json.writeStartObject();
            json.writeNumberField("deadline_s", deadline.deadlineSeconds());
            json.writeNumberField("kept", deadline.count().hits());
            writeEstimate(json, "chance", deadline.chance());
            json.writeEndObject();
        }
        json.writeEndArray();
        writeEstimate(json, "median_bytes_per_min", mode.medianBytesPerMinute());
        writeOutcomes(json, mode.outcomes());
        writeCauses(json, mode.causes());
        json.writeNumberField("mean_elapsed_s", mode.meanElapsedSeconds());
        writeLevels(json, mode.levels());
        json.writeNumberField("mean_links_lost", mode.meanLinksLost());
        json.writeEndObject();
    }

    private static void writeQuantile(JsonGenerator json, double probability, Estimate seconds) throws IOException {
        json.writeStartObject();
        json.writeNumberField("probability", probability);
        writeEstimate(json, "completion_s", seconds);
        json.writeEndObject();
    }

    private static void writeOutcomes(JsonGenerator json, List<OutcomeShare> outcomes) throws IOException {
        json.writeObjectFieldStart("outcomes");
        for (OutcomeShare outcome : outcomes) {
            json.writeNumberField(word(outcome.outcome()), outcome.count().hits());
        }
        json.writeEndObject();
    }

    private static void writeCauses(JsonGenerator json, List<CauseTime> causes) throws IOException {
        json.writeObjectFieldStart("mean_time_budget_s");
        for (CauseTime cause : causes) {
            json.writeNumberField(word(cause.cause()), cause.meanSeconds());
        }
        json.writeEndObject();
    }

    private static void writeLevels(JsonGenerator json, List<LevelShare> levels) throws IOException {
        json.writeArrayFieldStart("levels");
        for (LevelShare level : levels) {
            json.writeStartObject();
            json.writeNumberField("level", level.level());
            json.writeNumberField("airtime_share", level.airtimeShare());
            json.writeNumberField("frames_sent", level.framesSent());
            json.writeNumberField("frames_lost", level.framesLost());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void writeComparison(JsonGenerator json, Comparison pair) throws IOException {
        json.writeStartObject();
        json.writeStringField("first", pair.first());
        json.writeStringField("second", pair.second());
        writeCount(json, "first_before", pair.firstBefore());
        writeCount(json, "second_before", pair.secondBefore());
        writeCount(json, "neither", pair.neither());
        writeEstimate(json, "first_before_share", pair.firstBeforeShare());
        writeEstimate(json, "median_lead_s", pair.medianLeadSeconds());
        json.writeNumberField("sign_test_p", pair.signPValue());
        json.writeEndObject();
    }

    private static void writeCount(JsonGenerator json, String name, Proportion count) throws IOException {
        json.writeNumberField(name, count.hits());
    }

    private static void writeEstimate(JsonGenerator json, String name, Estimate estimate) throws IOException {
        json.writeObjectFieldStart(name);
        writeFinite(json, "value", estimate.value());
        writeFinite(json, "low", estimate.low());
        writeFinite(json, "high", estimate.high());
        json.writeEndObject();
    }

    private static void writeFinite(JsonGenerator json, String name, double value) throws IOException {
        if (Double.isFinite(value)) {
            json.writeNumberField(name, value);
        } else {
            json.writeNullField(name);
        }
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
