package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.DeadlineChance;
import org.ionohaul.analysis.Findings;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.picture.Picture;
import org.ionohaul.rendering.CauseLegend;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeAxis;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.session.Cause;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.CaseTrials;
import org.junit.jupiter.api.Test;

/** What charts say, against the tables and against what can be reckoned on paper. */
final class CaseChartsTest {
    private static final CaseTrials TRIALS = FabricatedStudy.result().cases().get(0);
    private static final CaseSummary SUMMARY =
            FabricatedStudy.findings(FabricatedStudy.TRIALS).summary().cases().get(0);

    /** Trial k of fifty (k = 0 to 49) of "Quick" is trial 2k, through after 10 (2k + 1) s; trials from 95 on never. */
    @Test
    void fiftyMarksAreDotsWithinTheAxisThoseBeyondItAndThoseThatNeverArrive() {
        DotPlot plot = DotPlot.of(new TimeScale(400), List.of(300.0, 900.0), TRIALS.modes());
        DotPlot.Row quick = plot.rows().get(0);
        assertEquals("Quick", quick.mode());
        assertEquals(20, quick.at().size(), "10 to 390 s");
        assertEquals(10 / 60.0, quick.at().get(0), 1e-12);
        assertEquals("6 min 30 s", quick.clock().get(19));
        assertEquals(28, quick.later(), "410 to 950 s");
        assertEquals(2, quick.never());
        assertEquals(List.of(new TimeAxis.Deadline("5 min", 5)), plot.axis().deadlines());
        assertEquals(List.of("15 min"), plot.axis().beyond(), "the later deadline is told all the same");
        assertTrue(plot.svg(plot.wide()).contains("15 min: beyond the right edge"));
    }

    /** A dot left of a deadline is a trial that keeps it, and lies there with its whole disc. */
    @Test
    void dotsNeverStraddleADeadline() {
        for (double deadline : List.of(120.0, 150.0, 203.0, 355.0)) {
            DotPlot plot = DotPlot.of(new TimeScale(400), List.of(deadline), TRIALS.modes());
            for (int width : List.of(Picture.NARROW, plot.wide())) {
                String svg = plot.svg(width);
                double line =
                        numbers("<path class=\"deadline\" d=\"M([0-9.]+)", svg).get(0);
                List<Double> middles = numbers("<circle class=\"dot m0 d0\" cx=\"([0-9.]+)\"", svg);
                List<Double> radii = numbers("<circle class=\"dot m0 d0\"[^>]* r=\"([0-9.]+)\"", svg);
                assertEquals(20, middles.size());
                long kept = 0;
                for (int i = 0; i < middles.size(); i++) {
                    assertTrue(Math.abs(middles.get(i) - line) >= radii.get(i) - 0.1, "tenths of a pixel");
                    kept += middles.get(i) < line ? 1 : 0;
                }
                assertEquals(
                        plot.rows().get(0).at().stream()
                                .filter(it -> it <= deadline / 60)
                                .count(),
                        kept);
            }
        }
    }

    private static List<Double> numbers(String pattern, String svg) {
        return Pattern.compile(pattern)
                .matcher(svg)
                .results()
                .map(it -> Double.valueOf(it.group(1)))
                .toList();
    }

    @Test
    void theLineSaysAtTheDeadlinesWhatTheTableSays() {
        CompletionChart completion = (CompletionChart) chart("completion").picture();
        for (int mode = 0; mode < SUMMARY.modes().size(); mode++) {
            CompletionChart.Line line = completion.modes().get(mode);
            assertEquals(SUMMARY.modes().get(mode).mode().title(), line.mode());
            for (DeadlineChance deadline : SUMMARY.modes().get(mode).deadlines()) {
                int at = completion.at().indexOf(deadline.deadlineSeconds() / 60);
                Estimate chance = deadline.chance();
                assertEquals(
                        TimeText.length(deadline.deadlineSeconds()),
                        completion.clock().get(at));
                assertEquals(100 * chance.value(), line.share().get(at));
                assertEquals(100 * chance.low(), line.low().get(at));
                assertEquals(100 * chance.high(), line.high().get(at));
                assertEquals(Cells.chance(chance).line(), line.says().get(at));
                assertTrue(
                        completion
                                .svg(completion.wide())
                                .contains(
                                        line.mode() + ": " + escaped(line.says().get(at))),
                        "told when pointed at");
            }
        }
    }

    private static String escaped(String words) {
        return words.replace("<", "&lt;").replace(">", "&gt;");
    }

    @Test
    void barsSayWhatTheirTablesSay() {
        for (String name : List.of("causes", "outcomes")) {
            Chart chart = chart(name);
            StackedBars bars = (StackedBars) chart.picture();
            for (int mode = 0; mode < chart.table().rows().size(); mode++) {
                List<Cell> row = chart.table().rows().get(mode);
                StackedBars.Bar bar = bars.bars().get(mode);
                assertEquals(row.get(0).text(), bar.mode());
                for (int part = 0; part < bars.parts().size(); part++) {
                    assertEquals(
                            chart.table().heads().get(part + 1).text(),
                            bars.parts().get(part).name());
                    assertEquals(row.get(part + 1).text(), bar.labels().get(part));
                }
            }
        }
    }

    /** All bars of time are on one scale: a mode's mean session is as long as its share of the longest. */
    @Test
    void partsOfABarAddUp() {
        for (Chart chart : List.of(chart("outcomes"), chart("data_rates"))) {
            ((StackedBars) chart.picture()).bars().forEach(bar -> assertEquals(1, sum(bar.amounts()), 1e-12));
        }
        double longest = SUMMARY.modes().stream()
                .mapToDouble(ModeSummary::meanElapsedSeconds)
                .max()
                .orElseThrow();
        StackedBars bars = (StackedBars) chart("causes").picture();
        for (int mode = 0; mode < SUMMARY.modes().size(); mode++) {
            assertEquals(
                    SUMMARY.modes().get(mode).meanElapsedSeconds() / longest,
                    sum(bars.bars().get(mode).amounts()),
                    1e-12);
        }
    }

    /** Quick gives up on 5 of 100 trials: the red part begins 8 pixels after the grey one ends. */
    @Test
    void failuresStandApartFromSuccesses() {
        String svg = chart("outcomes").picture().svg(520);
        String part = "<rect class=\"part %s\" x=\"%s\" [^>]*><title>Quick";
        String failed = CauseLegend.of(Cause.REPEATED_PAYLOAD).style();
        assertEquals(
                486.4,
                numbers("<rect class=\"part g6\" x=\"0\" y=\"[0-9.]+\" width=\"([0-9.]+)\"", svg)
                        .get(0),
                0.1);
        assertTrue(Pattern.compile(part.formatted(failed, "494.4")).matcher(svg).find(), svg);
    }

    private static double sum(List<Double> numbers) {
        return numbers.stream().mapToDouble(it -> it).sum();
    }

    @Test
    void sizesAreDrawnWithTheTimesOfTheTable() {
        Findings findings = FabricatedStudy.findings(FabricatedStudy.TRIALS);
        SizeSection section =
                SizeSection.of(findings.result().scenario(), findings.sizes().get(0));
        Table times = section.chart().table();
        SizeChart chart = (SizeChart) section.chart().picture();
        for (int mode = 0; mode < times.rows().size(); mode++) {
            SizeChart.Line line = chart.modes().get(mode);
            assertEquals(times.rows().get(mode).get(0).text(), line.mode());
            for (int i = 1; i < times.heads().size(); i++) {
                int at = chart.sizes().indexOf(times.heads().get(i).text());
                Cell cell = times.rows().get(mode).get(i);
                assertEquals(cell.line(), line.says().get(at));
                assertEquals(cell.text(), clock(line.median().get(at)));
                assertEquals(cell.detail(), clock(line.ninth().get(at)));
                assertEquals(
                        clock(findings.sizes()
                                .get(0)
                                .curves()
                                .get(mode)
                                .points()
                                .get(at)
                                .tenthSeconds()
                                .value()),
                        clock(line.tenth().get(at)));
            }
        }
    }

    private static String clock(double seconds) {
        return Double.isFinite(seconds) ? TimeText.length(seconds) : "-";
    }

    @Test
    void marksOfTimeAreLengthsThatPeopleCountIn() {
        assertEquals(List.of(0.0, 300.0, 600.0, 900.0, 1200.0), new TimeScale(1300).marksSeconds(7));
        assertEquals(List.of(0.0, 15.0, 30.0, 45.0, 60.0), new TimeScale(60).marksSeconds(5));
    }

    private static Chart chart(String name) {
        return new CaseCharts("case", SUMMARY, TRIALS)
                .all().stream()
                        .filter(it -> it.id().equals("case-" + name))
                        .findFirst()
                        .orElseThrow();
    }
}
