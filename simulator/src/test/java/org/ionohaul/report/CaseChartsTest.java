package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.DeadlineChance;
import org.ionohaul.analysis.Findings;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ChartRecord;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.CaseTrials;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What charts say, against the tables and against what can be reckoned on paper. */
final class CaseChartsTest {
    private static final CaseTrials TRIALS = FabricatedStudy.result().cases().get(0);
    private static final CaseSummary SUMMARY =
            FabricatedStudy.findings(FabricatedStudy.TRIALS).summary().cases().get(0);

    /** Trial k of fifty (k = 0 to 49) of "Quick" is trial 2k, through after 10 (2k + 1) s; trials from 95 on never. */
    @Test
    void fiftyMarksAreDotsWithinTheAxisThoseBeyondItAndThoseThatNeverArrive() {
        JsonNode plot = read(DotPlot.of(new TimeScale(400), List.of(300.0, 900.0), TRIALS.modes()));
        JsonNode quick = plot.get("rows").get(0);
        assertEquals("Quick", quick.get("mode").asString());
        assertEquals(20, quick.get("at").size(), "10 to 390 s");
        assertEquals(10 / 60.0, quick.get("at").get(0).asDouble(), 1e-5);
        assertEquals("6:30", quick.get("clock").get(19).asString());
        assertEquals(28, quick.get("later").asInt(), "410 to 950 s");
        assertEquals(2, quick.get("never").asInt());
        assertEquals(
                "{\"unit\":\"minutes\",\"end\":6.6667,\"step\":1,\"deadlines\":[{\"label\":\"5 min\",\"at\":5}],\"beyond\":[\"15 min\"]}",
                plot.get("axis").toString(),
                "the later deadline is beyond the axis");
    }

    @Test
    void theLineSaysAtTheDeadlinesWhatTheTableSays() {
        JsonNode completion = read(data(chart("completion")));
        for (int mode = 0; mode < SUMMARY.modes().size(); mode++) {
            JsonNode line = completion.get("modes").get(mode);
            assertEquals(
                    SUMMARY.modes().get(mode).mode().title(), line.get("mode").asString());
            for (DeadlineChance deadline : SUMMARY.modes().get(mode).deadlines()) {
                int at = texts(completion.get("at")).indexOf(Long.toString((long) deadline.deadlineSeconds() / 60));
                Estimate chance = deadline.chance();
                assertEquals(
                        TimeText.clock(deadline.deadlineSeconds()),
                        completion.get("clock").get(at).asString());
                assertEquals(100 * chance.value(), line.get("share").get(at).asDouble(), 1e-3);
                assertEquals(100 * chance.low(), line.get("low").get(at).asDouble(), 1e-3);
                assertEquals(100 * chance.high(), line.get("high").get(at).asDouble(), 1e-3);
                assertEquals(
                        Cells.chance(chance).line(), line.get("says").get(at).asString());
            }
        }
    }

    @Test
    void barsSayWhatTheirTablesSay() {
        for (String name : List.of("causes", "outcomes")) {
            Chart chart = chart(name);
            JsonNode data = read(data(chart));
            List<String> parts = data.get("parts")
                    .valueStream()
                    .map(it -> it.get("name").asString())
                    .toList();
            for (int mode = 0; mode < chart.table().rows().size(); mode++) {
                List<Cell> row = chart.table().rows().get(mode);
                JsonNode bar = data.get("bars").get(mode);
                assertEquals(row.get(0).text(), bar.get("mode").asString());
                for (int part = 0; part < parts.size(); part++) {
                    assertEquals(chart.table().heads().get(part + 1).text(), parts.get(part));
                    assertEquals(
                            row.get(part + 1).text(),
                            bar.get("labels").get(part).asString());
                }
            }
        }
    }

    /** A mode's mean session, 10 causes long, fills its share of the longest; outcomes and data rates fill the whole. */
    @Test
    void partsOfABarAddUp() {
        for (Chart chart : List.of(chart("outcomes"), chart("data_rates"))) {
            read(data(chart)).get("bars").forEach(bar -> assertEquals(1, sum(bar.get("amounts")), 1e-4));
        }
        double longest = SUMMARY.modes().stream()
                .mapToDouble(ModeSummary::meanElapsedSeconds)
                .max()
                .orElseThrow();
        JsonNode bars = read(data(chart("causes"))).get("bars");
        for (int mode = 0; mode < SUMMARY.modes().size(); mode++) {
            assertEquals(
                    SUMMARY.modes().get(mode).meanElapsedSeconds() / longest,
                    sum(bars.get(mode).get("amounts")),
                    1e-4);
        }
    }

    private static double sum(JsonNode numbers) {
        return numbers.valueStream().mapToDouble(JsonNode::asDouble).sum();
    }

    @Test
    void sizesAreDrawnWithTheTimesOfTheTable() {
        Findings findings = FabricatedStudy.findings(FabricatedStudy.TRIALS);
        SizeSection section =
                SizeSection.of(findings.result().scenario(), findings.sizes().get(0));
        Table times = section.chart().table();
        JsonNode data = read(data(section.chart()));
        List<String> sizes = texts(data.get("sizes"));
        for (int mode = 0; mode < times.rows().size(); mode++) {
            JsonNode line = data.get("modes").get(mode);
            assertEquals(times.rows().get(mode).get(0).text(), line.get("mode").asString());
            for (int i = 1; i < times.heads().size(); i++) {
                int at = sizes.indexOf(times.heads().get(i).text());
                assertEquals(
                        times.rows().get(mode).get(i).line(),
                        line.get("says").get(at).asString());
                assertEquals(
                        times.rows().get(mode).get(i).text(),
                        clock(line.get("median").get(at)));
                assertEquals(
                        times.rows().get(mode).get(i).detail(),
                        clock(line.get("ninth").get(at)));
                assertEquals(
                        clock(findings.sizes()
                                .get(0)
                                .curves()
                                .get(mode)
                                .points()
                                .get(at)
                                .tenthSeconds()
                                .value()),
                        clock(line.get("tenth").get(at)));
            }
        }
    }

    private static String clock(JsonNode seconds) {
        return clock(seconds.isNull() ? Double.POSITIVE_INFINITY : seconds.asDouble());
    }

    private static String clock(double seconds) {
        return Double.isFinite(seconds) ? TimeText.clock(seconds) : "-";
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

    private static ChartRecord data(Chart chart) {
        return (ChartRecord) chart.picture();
    }

    private static JsonNode read(ChartRecord data) {
        return new JsonMapper().readTree(data.json());
    }

    private static List<String> texts(JsonNode values) {
        return values.valueStream().map(JsonNode::asString).toList();
    }
}
