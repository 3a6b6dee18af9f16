package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.DeadlineChance;
import org.ionohaul.analysis.Findings;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.Json;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.study.CaseTrials;
import org.junit.jupiter.api.Test;

/** What charts say, against the tables and against what can be reckoned on paper. */
final class CaseChartsTest {
    private static final CaseTrials TRIALS = FabricatedStudy.result().cases().get(0);
    private static final CaseSummary SUMMARY =
            FabricatedStudy.findings(FabricatedStudy.TRIALS).summary().cases().get(0);

    /** Trial k of fifty (k = 0 to 49) of "Quick" is trial 2k, through after 10 (2k + 1) s; trials from 95 on never. */
    @Test
    void fiftyMarksAreDrawnDotsWithinTheAxisRingsBeyondItAndCrossesForNever() {
        String dots = new DotPlot(new TimeScale(400), TRIALS.modes())
                .options(List.of(300.0))
                .text();
        assertEquals(20, count(dots, "Quick: through after \\d+:\\d0\""), "10 to 390 s");
        assertEquals(28, count(dots, "Quick: through later than shown"), "410 to 950 s");
        assertEquals(2, count(dots, "Quick: never through"));
        assertTrue(dots.contains("\"28 later, 2 never\""));
        assertTrue(dots.contains("\"name\": \"5 min\", \"xAxis\": 5"));
    }

    @Test
    void theLineSaysAtTheDeadlinesWhatTheTableSays() {
        String line = chart("completion").options().text();
        for (ModeSummary mode : SUMMARY.modes()) {
            for (DeadlineChance deadline : mode.deadlines()) {
                Json value = Json.of(
                        "{\"value\": ?, \"says\": ",
                        List.of(
                                deadline.deadlineSeconds() / 60,
                                100 * deadline.chance().value()));
                String says = mode.mode().title() + ": "
                        + Cells.chance(deadline.chance()).line();
                Pattern datum = Pattern.compile(Pattern.quote(value.text()) + " \"[^\"]*" + Pattern.quote(says));
                assertTrue(datum.matcher(line).find(), says);
            }
        }
    }

    @Test
    void barsSayWhatTheirTablesSay() {
        for (String name : List.of("causes", "outcomes")) {
            Chart chart = chart(name);
            String options = chart.options().text();
            for (List<Cell> row : chart.table().rows()) {
                for (int part = 1; part < row.size(); part++) {
                    String head = chart.table().heads().get(part).text();
                    String says = row.get(0).text() + "\\n" + head + ": "
                            + row.get(part).text();
                    boolean isDrawn = options.contains("\"name\": \"" + head + "\"");
                    assertTrue(!isDrawn || row.get(part).text().equals("0 %") || options.contains(says), says);
                }
            }
        }
    }

    @Test
    void sizesAreDrawnWithTheTimesOfTheTable() {
        Findings findings = FabricatedStudy.findings(FabricatedStudy.TRIALS);
        SizeSection section =
                SizeSection.of(findings.result().scenario(), findings.sizes().get(0));
        Table times = section.chart().table();
        String options = section.chart().options().text();
        for (List<Cell> row : times.rows()) {
            for (Cell cell : row.subList(1, row.size())) {
                String says = row.get(0).text() + ": " + cell.line();
                assertTrue(options.contains(says), says);
            }
        }
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

    private static long count(String text, String pattern) {
        return Stream.of(Pattern.compile(pattern))
                .flatMap(it -> it.matcher(text).results())
                .count();
    }
}
