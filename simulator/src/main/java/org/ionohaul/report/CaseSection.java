package org.ionohaul.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.Difference;
import org.ionohaul.analysis.SpreadSplit;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.Table;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.CaseTrials;

/**
 * One case on the page.
 *
 * @param id a name unique on the page
 * @param heading what is sent
 * @param route which way
 * @param answer the sentence that answers the question
 * @param deadlines how surely the deadlines are kept, and with which modes something else than time decides that
 * @param decides what decides it
 * @param completion the main table
 * @param files the same a file; empty if there is one file only
 * @param charts the pictures
 * @param spread luck against ignorance with the best mode, in a sentence; empty if every input is known
 * @param spreads the same for every mode; without rows if every input is known
 * @param comparisons pairs of modes; may be empty
 * @param differences when each pair differs most, a sentence a pair
 */
public record CaseSection(
        String id,
        String heading,
        String route,
        String answer,
        List<String> deadlines,
        String decides,
        Table completion,
        List<Table> files,
        List<Chart> charts,
        String spread,
        Table spreads,
        Table comparisons,
        List<String> differences) {
    static CaseSection of(
            String id,
            Scenario scenario,
            CaseSummary summary,
            CaseTrials trials,
            List<Optional<SpreadSplit>> spreads,
            List<Optional<Difference>> differences) {
        return new CaseSection(
                id,
                CaseWords.heading(summary.transfer()),
                CaseWords.route(scenario, summary),
                CaseWords.answer(summary),
                Stream.concat(CaseWords.deadlines(summary).stream(), new LimitWords(scenario).ofModes(summary).stream())
                        .toList(),
                VerdictWords.sentences(summary),
                CaseTables.completion(summary.modes()),
                CaseTables.files(summary),
                new CaseCharts(id, summary, trials).all(),
                SpreadWords.ofBest(scenario, summary, spreads).orElse(""),
                SpreadWords.table(
                        scenario,
                        summary.modes().stream().map(it -> it.mode().title()).toList(),
                        spreads),
                CaseTables.comparisons(summary),
                CaseWords.differences(
                        scenario, summary, differences, summary.pairs().size()));
    }
}
