package org.ionohaul.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.ionohaul.analysis.Alike;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.CauseTime;
import org.ionohaul.analysis.Comparison;
import org.ionohaul.analysis.DataRateShare;
import org.ionohaul.analysis.DeadlineChance;
import org.ionohaul.analysis.Difference;
import org.ionohaul.analysis.Failures;
import org.ionohaul.analysis.FileTimes;
import org.ionohaul.analysis.Findings;
import org.ionohaul.analysis.Leaders;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.OutcomeShare;
import org.ionohaul.analysis.SafeTime;
import org.ionohaul.analysis.SavedTime;
import org.ionohaul.analysis.Side;
import org.ionohaul.analysis.Verdict;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.InputFile;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.Ending;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.statistics.Proportion;
import org.ionohaul.study.StudyResult;

/**
 * The summary of a study for programs, as JSON (RFC 8259). What was not reached or has no limit is {@code null}.
 *
 * <p>The promise to its readers: within a format version, names keep their meaning and unit and do not go away; new ones
 * may come.
 */
public record SummaryJson(Findings findings) implements ResultFolder.Text {
    /** Version of the format; grows when a name changes its meaning or goes. */
    static final int FORMAT_VERSION = 2;

    @Override
    public String fileName() {
        return "summary.json";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        printer.indentArraysWith(new DefaultIndenter("  ", "\n"));
        try (JsonGenerator json = new JsonFactory()
                .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
                .createGenerator(writer)) {
            json.setPrettyPrinter(printer);
            writeStudy(json);
            json.writeRaw('\n');
        }
    }

    private void writeStudy(JsonGenerator json) throws IOException {
        StudyResult result = findings.result();
        Scenario scenario = result.scenario();
        json.writeStartObject();
        json.writeStringField("format", "ionohaul-summary");
        json.writeNumberField("format_version", FORMAT_VERSION);
        json.writeStringField("program_version", findings.provenance().version());
        json.writeStringField("scenario", scenario.name());
        json.writeStringField("title", scenario.title());
        json.writeNumberField("seed", scenario.seed());
        json.writeNumberField("trials_asked", result.trialsAsked());
        json.writeNumberField("trials_done", result.trialsDone());
        json.writeBooleanField("partial", findings.isPartial());
        json.writeNumberField("horizon_s", scenario.horizonSeconds());
        json.writeNumberField("confidence", Estimate.CONFIDENCE);
        json.writeStringField("quantile_definition", OrderedSample.QUANTILE_DEFINITION);
        writeInputs(json);
        json.writeArrayFieldStart("changes");
        for (Map.Entry<String, String> change : findings.provenance().changes().entrySet()) {
            json.writeStartObject();
            json.writeStringField("key", change.getKey());
            json.writeStringField("value", change.getValue());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("cases");
        for (int i = 0; i < result.cases().size(); i++) {
            json.writeStartObject();
            writeCase(
                    json,
                    findings.summary().cases().get(i),
                    findings.skies().cases().get(i));
            SpreadsJson.write(
                    json, findings.summary().cases().get(i), findings.spreads().get(i));
            json.writeEndObject();
        }
        json.writeEndArray();
        SizesJson.write(json, findings.sizes());
        SkiesJson.write(json, findings.skies());
        json.writeEndObject();
    }

    private void writeInputs(JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("inputs");
        for (InputFile input : findings.provenance().inputs()) {
            json.writeStartObject();
            json.writeStringField("name", input.name());
            json.writeStringField("sha256", input.sha256());
            json.writeStringField("text", input.text());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void writeCase(JsonGenerator json, CaseSummary each, List<Optional<Difference>> differences)
            throws IOException {
        writeTransfer(json, each.transfer());
        json.writeStringField("direction", JsonValues.word(each.direction()));
        json.writeArrayFieldStart("best_first");
        for (int mode : each.ranking()) {
            json.writeString(each.modes().get(mode).mode().name());
        }
        json.writeEndArray();
        writeLeaders(json, "leaders", each, each.leaders());
        json.writeArrayFieldStart("deadline_leaders");
        for (int i = 0; i < each.deadlineLeaders().size(); i++) {
            json.writeStartObject();
            json.writeNumberField(
                    "deadline_s", each.transfer().deadlinesSeconds().get(i));
            writeLeaders(json, "leaders", each, each.deadlineLeaders().get(i));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeObjectFieldStart("verdict");
        json.writeStringField("reason", JsonValues.word(each.verdict().reason()));
        writeCause(json, each.verdict());
        json.writeBooleanField("clear", each.leaders().isSole());
        json.writeStringField("standing", JsonValues.word(each.verdict().standing()));
        json.writeStringField("more_arrives", side(each.verdict().moreArrives()));
        json.writeStringField("usually_first", side(each.verdict().usuallyFirst()));
        json.writeStringField("sentence", VerdictWords.sentences(each));
        json.writeEndObject();
        json.writeArrayFieldStart("modes");
        for (ModeSummary mode : each.modes()) {
            writeMode(json, mode);
        }
        json.writeEndArray();
        int ofBest = each.comparisons().size();
        writeComparisons(json, "comparisons", each.comparisons(), differences.subList(0, ofBest));
        writeComparisons(json, "other_pairs", each.otherPairs(), differences.subList(ofBest, differences.size()));
    }

    private static void writeLeaders(JsonGenerator json, String name, CaseSummary each, Leaders leaders)
            throws IOException {
        json.writeObjectFieldStart(name);
        json.writeArrayFieldStart("modes");
        for (int mode : leaders.modes()) {
            json.writeString(each.modes().get(mode).mode().name());
        }
        json.writeEndArray();
        JsonValues.writeFinite(
                json, "alike_within_share", leaders.alike().map(Alike::share).orElse(Double.NaN));
        JsonValues.writeFinite(
                json, "alike_within_s", leaders.alike().map(Alike::seconds).orElse(Double.NaN));
        json.writeEndObject();
    }

    /** The first of the two is the best mode. */
    private static String side(Side side) {
        return switch (side) {
            case FIRST -> "best";
            case SECOND -> "next";
            case NEITHER -> "neither";
        };
    }

    /** Where more arrives, no cause of lost time decides; where there is no next mode, no time is saved. */
    private static void writeCause(JsonGenerator json, Verdict verdict) throws IOException {
        Optional<CauseTime> cause = verdict.saved().map(SavedTime::cause).or(verdict::most);
        if (cause.isPresent()) {
            json.writeStringField("cause", JsonValues.word(cause.get().cause()));
        } else {
            json.writeNullField("cause");
        }
        Optional<SavedTime> saved = verdict.saved();
        JsonValues.writeFinite(
                json, "saved_s", saved.map(it -> it.cause().meanSeconds()).orElse(Double.NaN));
        JsonValues.writeFinite(json, "lead_s", saved.map(SavedTime::leadSeconds).orElse(Double.NaN));
        json.writeBooleanField(
                "cause_is_most", saved.map(SavedTime::isMostOfLead).orElse(false));
    }

    private static void writeComparisons(
            JsonGenerator json, String name, List<Comparison> pairs, List<Optional<Difference>> differences)
            throws IOException {
        json.writeArrayFieldStart(name);
        for (int i = 0; i < pairs.size(); i++) {
            json.writeStartObject();
            writeComparison(json, pairs.get(i));
            SkiesJson.writeDifference(json, differences.get(i));
            json.writeEndObject();
        }
        json.writeEndArray();
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
        JsonValues.writeEstimate(json, "delivered_share", mode.delivered());
        writeQuantiles(json, mode.tenthSeconds(), mode.medianSeconds(), mode.ninthSeconds());
        json.writeArrayFieldStart("plans");
        writePlan(json, mode.ninthPlan());
        writePlan(json, mode.plan());
        json.writeEndArray();
        json.writeArrayFieldStart("deadlines");
        for (DeadlineChance deadline : mode.deadlines()) {
            json.writeStartObject();
            json.writeNumberField("deadline_s", deadline.deadlineSeconds());
            json.writeNumberField("kept", deadline.count().hits());
            JsonValues.writeEstimate(json, "chance", deadline.chance());
            json.writeEndObject();
        }
        json.writeEndArray();
        JsonValues.writeEstimate(json, "median_bytes_per_min", mode.medianBytesPerMinute());
        writeOutcomes(json, mode.outcomes());
        writeCauses(json, mode.causes());
        json.writeNumberField("mean_elapsed_s", mode.meanElapsedSeconds());
        writeDataRates(json, mode.dataRates());
        json.writeNumberField("mean_links_lost", mode.meanLinksLost());
        writeFailures(json, mode.failures());
        writeFiles(json, mode.files());
        json.writeEndObject();
    }

    private static void writeQuantiles(JsonGenerator json, Estimate tenth, Estimate median, Estimate ninth)
            throws IOException {
        json.writeArrayFieldStart("completion_quantiles");
        writeQuantile(json, 0.1, tenth);
        writeQuantile(json, 0.5, median);
        writeQuantile(json, 0.9, ninth);
        json.writeEndArray();
    }

    private static void writePlan(JsonGenerator json, SafeTime plan) throws IOException {
        json.writeStartObject();
        json.writeNumberField("share", plan.share());
        JsonValues.writeFinite(json, "completion_s", plan.seconds().orElse(Double.NaN));
        json.writeNumberField("fewest_trials", plan.fewestTrials());
        json.writeEndObject();
    }

    private static void writeFailures(JsonGenerator json, Failures failures) throws IOException {
        json.writeObjectFieldStart("failures");
        writeCount(json, "never_linked", failures.neverLinked());
        writeCount(json, "links_lost", failures.linksLost());
        writeCount(json, "out_of_patience", failures.outOfPatience());
        writeCount(json, "still_sending", failures.stillSending());
        writeCount(json, "never_linked_out_of_patience", failures.of(Ending.NEVER_LINKED_OUT_OF_PATIENCE));
        writeCount(json, "never_linked_at_horizon", failures.of(Ending.NEVER_LINKED_AT_HORIZON));
        json.writeEndObject();
    }

    private static void writeFiles(JsonGenerator json, List<FileTimes> files) throws IOException {
        json.writeArrayFieldStart("file_completions");
        for (FileTimes file : files) {
            json.writeStartObject();
            json.writeStringField("file", file.file().name());
            JsonValues.writeEstimate(json, "delivered_share", file.delivered());
            writeQuantiles(json, file.tenthSeconds(), file.medianSeconds(), file.ninthSeconds());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void writeQuantile(JsonGenerator json, double probability, Estimate seconds) throws IOException {
        json.writeStartObject();
        json.writeNumberField("probability", probability);
        JsonValues.writeEstimate(json, "completion_s", seconds);
        json.writeEndObject();
    }

    private static void writeOutcomes(JsonGenerator json, List<OutcomeShare> outcomes) throws IOException {
        json.writeObjectFieldStart("outcomes");
        for (OutcomeShare outcome : outcomes) {
            json.writeNumberField(
                    JsonValues.word(outcome.outcome()), outcome.count().hits());
        }
        json.writeEndObject();
    }

    private static void writeCauses(JsonGenerator json, List<CauseTime> causes) throws IOException {
        json.writeObjectFieldStart("mean_time_budget_s");
        for (CauseTime cause : causes) {
            json.writeNumberField(JsonValues.word(cause.cause()), cause.meanSeconds());
        }
        json.writeEndObject();
    }

    private static void writeDataRates(JsonGenerator json, List<DataRateShare> dataRates) throws IOException {
        json.writeArrayFieldStart("data_rates");
        for (DataRateShare dataRate : dataRates) {
            json.writeStartObject();
            json.writeNumberField("data_rate", dataRate.dataRate());
            json.writeNumberField("airtime_share", dataRate.airtimeShare());
            json.writeNumberField("frames_sent", dataRate.framesSent());
            json.writeNumberField("frames_lost", dataRate.framesLost());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void writeComparison(JsonGenerator json, Comparison pair) throws IOException {
        json.writeStringField("first", pair.first());
        json.writeStringField("second", pair.second());
        writeCount(json, "first_before", pair.firstBefore());
        writeCount(json, "second_before", pair.secondBefore());
        writeCount(json, "neither", pair.neither());
        JsonValues.writeEstimate(json, "first_before_share", pair.firstBeforeShare());
        JsonValues.writeEstimate(json, "median_lead_s", pair.medianLeadSeconds());
        json.writeNumberField("sign_test_p", pair.signPValue());
        JsonValues.writeFinite(json, "variance_ratio", pair.varianceRatio());
        writeTrial(json, "first_furthest_ahead_trial", pair.firstFurthestAhead());
        writeTrial(json, "second_furthest_ahead_trial", pair.secondFurthestAhead());
    }

    private static void writeTrial(JsonGenerator json, String name, OptionalInt trial) throws IOException {
        if (trial.isPresent()) {
            json.writeNumberField(name, trial.getAsInt());
        } else {
            json.writeNullField(name);
        }
    }

    private static void writeCount(JsonGenerator json, String name, Proportion count) throws IOException {
        json.writeNumberField(name, count.hits());
    }
}
