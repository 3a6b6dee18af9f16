package org.ionohaul.whatif;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.analysis.ModePoint;
import org.ionohaul.analysis.Variation;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.report.CaseName;
import org.ionohaul.report.StudyWords;
import org.ionohaul.scenario.Mode;

/** What changes when keys are varied, for a terminal: plain sentences, which mode is best where, a table a mode. */
public final class VariationText {
    private static final int WIDTH = 80;

    private final Variation variation;
    private final VariationWords words;
    private final List<CaseName> cases;
    private final VariationTables tables;

    /** Prepares the report of a variation with at least one point. */
    public VariationText(Variation variation) {
        this.variation = variation;
        this.words = new VariationWords(variation);
        this.cases = CaseName.all(variation.scenario(), words.keys());
        this.tables = new VariationTables(variation, cases);
    }

    /** Returns the report's lines. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>(TextWrap.lines(variation.scenario().title(), "", WIDTH));
        lines.addAll(TextWrap.lines(words.partial() + " " + words.basis(), "", WIDTH));
        for (int i = 0; i < cases.size(); i++) {
            lines.add("");
            addCase(lines, i);
        }
        lines.add("");
        lines.addAll(TextWrap.lines(PointWords.CHANGE, "", WIDTH));
        lines.addAll(TextWrap.lines(PointWords.BEST, "", WIDTH));
        lines.addAll(TextWrap.lines(StudyWords.CAUTION, "", WIDTH));
        return lines;
    }

    private void addCase(List<String> lines, int index) {
        String heading = cases.get(index).heading();
        lines.addAll(TextWrap.lines(heading, "", WIDTH));
        lines.add("=".repeat(Math.min(WIDTH, heading.length())));
        words.sentences(index).forEach(it -> lines.addAll(TextWrap.lines(it, "  ", WIDTH)));
        lines.add("");
        lines.addAll(new TextTable(variation.sweeps().size() == 2 ? tables.bestMap(index) : tables.best(index))
                .lines(WIDTH));
        List<Mode> modes = variation.scenario().modes();
        for (int mode = 0; mode < modes.size(); mode++) {
            lines.add("");
            if (variation.untouched(index).contains(mode)) {
                lines.addAll(TextWrap.lines(untouched(index, mode), "  ", WIDTH));
            } else {
                lines.add("  " + modes.get(mode).title());
                lines.addAll(new TextTable(tables.brief(index, mode)).lines(WIDTH));
            }
        }
    }

    private String untouched(int caseIndex, int mode) {
        ModePoint point =
                variation.points().get(0).cases().get(caseIndex).modes().get(mode);
        return variation.scenario().modes().get(mode).title()
                + ": the same at every value, trial by trial; 5 of 10 "
                + PointWords.time(point.medianSeconds()) + ", 9 of 10 " + PointWords.time(point.ninthSeconds()) + ".";
    }
}
