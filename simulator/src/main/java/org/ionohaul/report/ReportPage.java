package org.ionohaul.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ionohaul.analysis.Findings;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.rendering.Chart;
import org.ionohaul.scenario.InputFile;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.sheet.SkySection;
import org.ionohaul.study.StudyResult;

/**
 * The page of a study, as the template wants it.
 *
 * @param title the scenario's title
 * @param basis what the numbers rest on
 * @param partial the warning on an interrupted study; empty if it was not
 * @param answers the answer grid
 * @param sentences a sentence a case
 * @param races the race of each case
 * @param cases a section a case
 * @param sizes files of other sizes, an entry a direction; may be empty
 * @param rates how fast each mode goes at each SNR; empty if that was not simulated
 * @param sky one trial's sky
 * @param caution what must be said
 * @param limits what the model leaves out
 * @param method how the numbers were made
 * @param stress the items of the STRESS guidelines
 * @param inputs the files that went in
 * @param changes what was taken instead of what the files say, an entry a key; may be empty
 * @param origin what made the page
 */
public record ReportPage(
        String title,
        String basis,
        String partial,
        AnswerTable answers,
        List<String> sentences,
        List<Chart> races,
        List<CaseSection> cases,
        List<SizeSection> sizes,
        Optional<Chart> rates,
        SkySection sky,
        String caution,
        List<String> limits,
        List<MethodItem> method,
        List<MethodItem> stress,
        List<InputFile> inputs,
        List<String> changes,
        String origin) {

    /** Returns whether the study was interrupted. */
    public boolean isPartial() {
        return !partial.isEmpty();
    }

    static ReportPage of(Findings findings) {
        StudyResult result = findings.result();
        StudySummary summary = findings.summary();
        Provenance provenance = findings.provenance();
        return new ReportPage(
                result.scenario().title(),
                StudyWords.basis(findings),
                StudyWords.partial(findings),
                AnswerTable.of(result, summary),
                summary.cases().stream()
                        .map(it -> AnswerWords.sentence(result.scenario(), it))
                        .toList(),
                IntStream.range(0, summary.cases().size())
                        .mapToObj(i -> RaceChart.chart(
                                "race-" + (i + 1),
                                result.scenario(),
                                summary.cases().get(i),
                                findings.races().get(i)))
                        .toList(),
                IntStream.range(0, summary.cases().size())
                        .mapToObj(i -> CaseSection.of(
                                "case-" + (i + 1),
                                result.scenario(),
                                summary.cases().get(i),
                                result.cases().get(i),
                                findings.spreads().get(i),
                                findings.skies().cases().get(i)))
                        .toList(),
                findings.sizes().stream()
                        .map(it -> SizeSection.of(result.scenario(), it))
                        .toList(),
                findings.rates().map(it -> RateChart.chart(result.scenario(), it, findings.skies())),
                SkySection.of(findings.sky(), SkiesTables.ends(result.scenario(), findings.skies())),
                StudyWords.CAUTION,
                StudyWords.LIMITS,
                MethodItem.all(result),
                StressItems.of(result, provenance),
                provenance.inputs(),
                provenance.changes().entrySet().stream()
                        .map(it -> it.getKey() + " = " + it.getValue())
                        .toList(),
                StudyWords.origin(result, provenance));
    }
}
