package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.Difference;
import org.ionohaul.analysis.Findings;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.SizeAnswers;
import org.ionohaul.analysis.SpreadSplit;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.StudyResult;

/** What a study found, for a terminal. */
public final class TextReport {
    private static final int USUAL_WIDTH = 80;

    private final Findings findings;
    private final StudyResult result;
    private final int width;

    /**
     * Prepares the report for 80 characters.
     *
     * @param findings what was found
     */
    public TextReport(Findings findings) {
        this(findings, USUAL_WIDTH);
    }

    /**
     * Prepares the report.
     *
     * @param findings what was found
     * @param mostCharacters longest line allowed, 60 or more
     */
    public TextReport(Findings findings, int mostCharacters) {
        this.findings = findings;
        this.result = findings.result();
        this.width = mostCharacters;
    }

    /** Returns the report's lines. */
    public List<String> lines() {
        Scenario scenario = result.scenario();
        List<String> lines = new ArrayList<>(TextWrap.lines(scenario.title(), "", width));
        lines.addAll(TextWrap.lines(StudyWords.basis(findings), "", width));
        lines.addAll(details());
        return lines;
    }

    /** Returns all but what the study is: what stands below the {@link FirstScreen}. */
    public List<String> details() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < result.cases().size(); i++) {
            lines.add("");
            addCase(
                    lines,
                    findings.summary().cases().get(i),
                    findings.spreads().get(i),
                    findings.skies().cases().get(i));
        }
        findings.sizes().forEach(it -> addSizes(lines, it));
        addSkies(lines);
        lines.add("");
        lines.addAll(TextWrap.lines(StudyWords.RANGES, "", width));
        lines.addAll(TextWrap.lines(StudyWords.CAUTION, "", width));
        return lines;
    }

    private void addCase(
            List<String> lines,
            CaseSummary summary,
            List<Optional<SpreadSplit>> spreads,
            List<Optional<Difference>> differences) {
        addHeading(lines, CaseWords.heading(summary.transfer()) + ", " + CaseWords.route(result.scenario(), summary));
        lines.addAll(TextWrap.lines(CaseWords.answer(summary), "  ", width));
        CaseWords.deadlines(summary).forEach(it -> lines.addAll(TextWrap.lines(it, "  ", width)));
        new LimitWords(result.scenario()).ofModes(summary).forEach(it -> lines.addAll(TextWrap.lines(it, "  ", width)));
        lines.addAll(TextWrap.lines("What decides it: " + VerdictWords.sentences(summary), "  ", width));
        CaseWords.pair(summary).ifPresent(it -> lines.addAll(TextWrap.lines(it, "  ", width)));
        CaseWords.differences(result.scenario(), summary, differences, 1)
                .forEach(it -> lines.addAll(TextWrap.lines(it, "  ", width)));
        SpreadWords.ofBest(result.scenario(), summary, spreads)
                .ifPresent(it -> lines.addAll(TextWrap.lines(it, "  ", width)));
        lines.add("");
        lines.addAll(new TextTable(CaseTables.soon(summary.modes())).lines(width));
        lines.add("");
        lines.addAll(new TextTable(CaseTables.sure(summary.modes())).lines(width));
        for (Table file : CaseTables.files(summary)) {
            lines.add("");
            lines.addAll(TextWrap.lines(file.caption() + ":", "  ", width));
            lines.addAll(new TextTable(file).lines(width));
        }
        lines.add("");
        lines.addAll(strip(summary));
    }

    private void addSizes(List<String> lines, SizeAnswers answers) {
        lines.add("");
        addHeading(lines, "Files of other sizes, " + SizeTables.route(result.scenario(), answers));
        lines.addAll(TextWrap.lines(SizeTables.basis(answers), "  ", width));
        SizeTables.crossings(answers).forEach(it -> lines.addAll(TextWrap.lines(it, "  ", width)));
        lines.add("");
        lines.addAll(new TextTable(SizeTables.pace(answers)).lines(width));
    }

    private void addSkies(List<String> lines) {
        Table table = SkiesTables.ends(result.scenario(), findings.skies());
        lines.add("");
        addHeading(lines, "The sky");
        lines.addAll(TextWrap.lines(table.caption() + ".", "  ", width));
        lines.add("");
        lines.addAll(new TextTable(table).lines(width));
    }

    private void addHeading(List<String> lines, String heading) {
        lines.addAll(TextWrap.lines(heading, "", width));
        lines.add("=".repeat(Math.min(width, heading.length())));
    }

    private List<String> strip(CaseSummary summary) {
        List<ModeSummary> modes = summary.modes();
        String reading = "1, 5, 9: by then 1, 5, 9 of 10 trials are through"
                + (summary.transfer().deadlinesSeconds().isEmpty() ? "" : "; |: deadline");
        List<String> lines = new ArrayList<>(TextWrap.lines(reading, "  ", width));
        lines.addAll(new TimeStrip(modes, CaseScale.of(summary), width).lines());
        return lines;
    }
}
