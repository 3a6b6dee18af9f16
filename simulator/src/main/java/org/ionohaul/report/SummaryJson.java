package org.ionohaul.report;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.analysis.Findings;
import org.ionohaul.rendering.JsonForm;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.InputFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.study.StudyResult;

/**
 * The summary of a study for programs, as JSON. What was not reached or has no limit is {@code null}.
 *
 * <p>The promise to its readers: within a format version, names keep their meaning and unit and do not go away; new ones
 * may come. The records below and in the classes named {@code Published...} are the format.
 */
public record SummaryJson(Findings findings) implements ResultFolder.Text {
    /** Version of the format; grows when a name changes its meaning or goes. */
    static final int FORMAT_VERSION = 2;

    /** The whole of it. */
    record Summary(
            String format,
            int formatVersion,
            String programVersion,
            String scenario,
            String title,
            long seed,
            int trialsAsked,
            int trialsDone,
            boolean partial,
            double horizonSeconds,
            double confidence,
            String quantileDefinition,
            List<Input> inputs,
            List<Change> changes,
            List<PublishedCase> cases,
            List<PublishedSizes> sizes,
            PublishedSky sky) {}

    /** A file that went in. */
    record Input(String name, String sha256, String text) {
        static Input of(InputFile file) {
            return new Input(file.name(), file.sha256(), file.text());
        }
    }

    /** A key that got another value than the files give it. */
    record Change(String key, String value) {}

    @Override
    public String fileName() {
        return "summary.json";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        JsonForm.writeFile(writer, summary());
    }

    private Summary summary() {
        StudyResult result = findings.result();
        Scenario scenario = result.scenario();
        return new Summary(
                "ionohaul-summary",
                FORMAT_VERSION,
                findings.provenance().version(),
                scenario.name(),
                scenario.title(),
                scenario.seed(),
                result.trialsAsked(),
                result.trialsDone(),
                findings.isPartial(),
                scenario.horizonSeconds(),
                Estimate.CONFIDENCE,
                OrderedSample.QUANTILE_DEFINITION,
                findings.provenance().inputs().stream().map(Input::of).toList(),
                findings.provenance().changes().entrySet().stream()
                        .map(it -> new Change(it.getKey(), it.getValue()))
                        .toList(),
                IntStream.range(0, result.cases().size())
                        .mapToObj(i -> PublishedCase.of(findings, i))
                        .toList(),
                findings.sizes().stream().map(PublishedSizes::of).toList(),
                PublishedSky.of(findings.skies()));
    }
}
