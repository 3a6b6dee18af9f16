package org.ionohaul.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ionohaul.study.CaseSummary;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.StudySummary;
import org.ionohaul.study.TornadoBar;
import org.ionohaul.study.VariationPoint;

/** Which inputs matter most, for a terminal: for the best mode of each case, the keys in order of what they change. */
public final class TornadoText {
    private static final int WIDTH = 80;

    private final StudyResult reference;
    private final List<TornadoBar> bars;

    /**
     * Prepares the report.
     *
     * @param reference the scenario as it stands
     * @param bars one entry a key
     */
    public TornadoText(StudyResult reference, List<TornadoBar> bars) {
        this.reference = reference;
        this.bars = List.copyOf(bars);
    }

    /** Returns the report's lines. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>(TextWrap.lines(reference.scenario().title(), "", WIDTH));
        lines.addAll(TextWrap.lines(
                SizeText.grouped(reference.trialsDone())
                        + " simulated evenings a value, the same skies for every value. Each key alone is set to either end"
                        + " of its range; the key that matters most comes first.",
                "",
                WIDTH));
        List<CaseSummary> cases = StudySummary.of(reference).cases();
        for (int i = 0; i < cases.size(); i++) {
            lines.add("");
            addCase(lines, cases.get(i), i);
        }
        lines.add("");
        lines.addAll(TextWrap.lines(VariationText.CHANGE, "", WIDTH));
        lines.addAll(TextWrap.lines(StudyWords.CAUTION, "", WIDTH));
        return lines;
    }

    private void addCase(List<String> lines, CaseSummary summary, int index) {
        String heading = CaseWords.heading(summary.transfer()) + ", " + CaseWords.route(reference.scenario(), summary);
        lines.addAll(TextWrap.lines(heading, "", WIDTH));
        lines.add("=".repeat(Math.min(WIDTH, heading.length())));
        int best = summary.ranking().get(0);
        lines.add("  " + summary.best().mode().title() + ": 9 of 10 evenings within "
                + VariationText.time(summary.best().ninthSeconds()) + " as it stands");
        List<List<Cell>> rows = bars.stream()
                .sorted(Comparator.comparingDouble((TornadoBar bar) -> bar.swingSeconds(index, best))
                        .reversed())
                .map(bar -> row(bar, index, best))
                .toList();
        List<Cell> heads = List.of(Cell.of("key"), Cell.of("at one end"), Cell.of("at the other"));
        lines.addAll(new TextTable(new Table("Which inputs matter", heads, rows)).lines(WIDTH));
    }

    private static List<Cell> row(TornadoBar bar, int caseIndex, int mode) {
        return List.of(Cell.of(bar.key()), change(bar.low(), caseIndex, mode), change(bar.high(), caseIndex, mode));
    }

    private static Cell change(VariationPoint point, int caseIndex, int mode) {
        return new Cell(
                point.values().get(0) + ": "
                        + VariationText.change(point.effects().get(caseIndex).get(mode)),
                "9 of 10: "
                        + VariationText.time(
                                point.cases().get(caseIndex).modes().get(mode).ninthSeconds()));
    }
}
