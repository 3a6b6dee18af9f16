package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.CaseSummary;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.ModeSummary;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.StudySummary;

/** What a study found, for a terminal. */
public final class TextReport {
    private static final int WIDTH = 80;

    private final StudyResult result;
    private final StudySummary summary;

    /**
     * Prepares the report.
     *
     * @param result what was found, with at least one trial done
     * @param summary its summary
     */
    public TextReport(StudyResult result, StudySummary summary) {
        this.result = result;
        this.summary = summary;
    }

    /** Returns the report's lines. */
    public List<String> lines() {
        Scenario scenario = result.scenario();
        List<String> lines = new ArrayList<>(TextWrap.lines(scenario.title(), "", WIDTH));
        lines.addAll(TextWrap.lines(StudyWords.basis(result), "", WIDTH));
        for (int i = 0; i < summary.cases().size(); i++) {
            lines.add("");
            addCase(lines, summary.cases().get(i), result.cases().get(i));
        }
        lines.add("");
        lines.addAll(TextWrap.lines(StudyWords.CAUTION, "", WIDTH));
        return lines;
    }

    private void addCase(List<String> lines, CaseSummary summary, CaseTrials trials) {
        String heading = CaseWords.heading(summary.transfer()) + ", " + CaseWords.route(result.scenario(), summary);
        lines.addAll(TextWrap.lines(heading, "", WIDTH));
        lines.add("=".repeat(Math.min(WIDTH, heading.length())));
        lines.addAll(TextWrap.lines(CaseWords.answer(summary, trials), "  ", WIDTH));
        CaseWords.deadlines(summary).forEach(it -> lines.addAll(TextWrap.lines(it, "  ", WIDTH)));
        lines.addAll(TextWrap.lines("What decides it: " + summary.verdict().sentence(), "  ", WIDTH));
        lines.add("");
        lines.addAll(new TextTable(CaseTables.soon(summary.modes())).lines(WIDTH));
        lines.add("");
        lines.addAll(new TextTable(CaseTables.sure(summary.modes())).lines(WIDTH));
        lines.add("");
        lines.addAll(strip(summary));
    }

    private static List<String> strip(CaseSummary summary) {
        List<ModeSummary> modes = summary.modes();
        List<String> lines = new ArrayList<>();
        lines.add("  1, 5, 9: by then 1, 5, 9 of 10 evenings are through"
                + (summary.transfer().deadlinesSeconds().isEmpty() ? "" : "; |: deadline"));
        lines.addAll(new TimeStrip(modes, CaseScale.of(summary), WIDTH).lines());
        return lines;
    }
}
