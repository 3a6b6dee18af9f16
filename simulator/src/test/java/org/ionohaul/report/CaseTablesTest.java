package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.session.SessionResult;
import org.ionohaul.study.InventedStudy;
import org.ionohaul.study.StudyResult;
import org.junit.jupiter.api.Test;

/** Tables of a case and of its skies, each number reckoned by hand from the rule of {@link FabricatedStudy}. */
final class CaseTablesTest {
    private static final CaseSummary SUMMARY =
            StudySummary.of(FabricatedStudy.result()).cases().get(0);

    private static List<String> texts(List<Cell> row) {
        return row.stream().map(Cell::text).toList();
    }

    private static ModeSummary ant(SessionResult... sessions) {
        StudyResult study = InventedStudy.study(List.of(60.0), List.of("ant"), List.of(List.of(sessions)));
        return StudySummary.of(study).cases().get(0).best();
    }

    /**
     * "Tough" takes 200 + 5 i s, "quick" 10 + 10 i: later by 5 i - 190, in the middle (trial 49) by 55; quicker up to trial 37 and
     * most so on trial 0, even on 38, never there from 95 on. Spread of the difference over those of both: 25 / (100 + 25).
     */
    @Test
    void aPairIsToldTrialByTrial() {
        Table pairs = CaseTables.comparisons(SUMMARY);
        assertEquals(1, pairs.rows().size());
        List<Cell> row = pairs.rows().get(0);
        assertEquals(List.of("Tough", "61 %", "38 %", "0 %", "55 s", "trial 95", "5.0 trials"), texts(row));
        assertEquals("and Quick", row.get(0).detail());
        assertEquals("trial 0", row.get(5).detail());
    }

    /** On most trials just one gets through; without a trial on which both do, nothing tells what common skies are worth. */
    @Test
    void aLeadThatNeverEndsNamesTheModeThatGetsThroughAlone() {
        List<SessionResult> through = Collections.nCopies(20, InventedStudy.delivered(50));
        List<SessionResult> never = Collections.nCopies(20, InventedStudy.gaveUp(50));
        StudyResult study = InventedStudy.study(List.of(60.0), List.of("ant", "bee"), List.of(never, through));
        List<Cell> row = CaseTables.comparisons(StudySummary.of(study).cases().get(0))
                .rows()
                .get(0);
        assertEquals(List.of("Bee", "100 %", "0 %", "0 %", "only the first", "trial 0", "open"), texts(row));
        assertEquals("on no trial", row.get(5).detail());
        StudyResult none = InventedStudy.study(List.of(60.0), List.of("ant", "bee"), List.of(never, never));
        assertEquals(
                "100 %",
                CaseTables.comparisons(StudySummary.of(none).cases().get(0))
                        .rows()
                        .get(0)
                        .get(3)
                        .text());
    }

    /** Airtime goes as 1/2 : 1/3 : 1/4 = 6 : 4 : 3; of 100, 200 and 300 frames a trial 0, 10 and 20 are lost. */
    @Test
    void dataRatesAreToldByAirtimeAndLossAndThoseThatAModeHasNotAreBlank() {
        ModeSummary ant = ant(InventedStudy.delivered(50));
        ModeSummary idle = ant(InventedStudy.gaveUp(50));
        List<List<Cell>> rows =
                CaseTables.dataRates(List.of(SUMMARY.modes().get(0), ant, idle)).rows();
        assertEquals(List.of("Quick", "46 %", "31 %", "23 %"), texts(rows.get(0)));
        assertEquals(
                List.of("0 %", "5 %", "7 %"),
                rows.get(0).stream().skip(1).map(Cell::detail).toList());
        assertEquals(List.of("Ant", "100 %", "", ""), texts(rows.get(1)));
        assertEquals("20 %", rows.get(1).get(1).detail());
        assertEquals(List.of("Ant", "0 %", "", ""), texts(rows.get(2)));
        assertEquals("", rows.get(2).get(1).detail(), "no frame was sent");
    }

    @Test
    void sessionsEndAsTheyWereCounted() {
        Table table = CaseTables.outcomes(SUMMARY.modes());
        assertEquals(
                List.of(
                        "mode",
                        "delivered, closed",
                        "delivered, hang-up not heard",
                        "delivered, sender not told",
                        "gave up",
                        "still running at the end"),
                texts(table.heads()));
        assertEquals(
                List.of(
                        List.of("Quick", "95 %", "0 %", "0 %", "5 %", "0 %"),
                        List.of("Tough", "100 %", "0 %", "0 %", "0 %", "0 %")),
                table.rows().stream().map(CaseTablesTest::texts).toList());
    }

    /** Of 50 s five are for dialling, the rest for new bytes. */
    @Test
    void whereTheTimeGoesAddsUp() {
        Table table = CaseTables.causes(List.of(ant(InventedStudy.delivered(50))));
        List<String> row = texts(table.rows().get(0));
        assertEquals("50 s", row.get(row.size() - 1));
        assertEquals(
                List.of("5 s", "45 s"),
                row.stream()
                        .filter(it -> it.endsWith("s") && !it.equals("0 s"))
                        .limit(2)
                        .toList());
    }

    /** Trials differ in what the far end hears: 20 dB on the first, a tenth of a decibel less a trial. */
    @Test
    void skiesAreToldByTheMiddleTrialAndEightOfTen() {
        List<List<Cell>> rows = SkiesTables.ends(
                        FabricatedStudy.result().scenario(),
                        FabricatedStudy.findings(100).skies())
                .rows();
        assertEquals(List.of("Weir Cottage", "17 dB", "12 dB", "25 %"), texts(rows.get(0)));
        assertEquals("", rows.get(0).get(1).detail());
        assertEquals(List.of("Flood Desk", "15 dB", "11 dB", "50 %"), texts(rows.get(1)));
        assertEquals("11 dB to 19 dB", rows.get(1).get(1).detail());
    }

    /** Sixty columns for 1,000 s: 100 s at column 6, 300 at 18, 500 at 30, 900 at 53. */
    @Test
    void theStripShowsWhenOneFiveAndNineOfTenAreThrough() {
        List<ModeSummary> quick = List.of(SUMMARY.modes().get(0));
        String line = new TimeStrip(quick, new TimeScale(1000), 80).lines().get(0);
        assertEquals("  Quick        1-----------|-----------5----------------------9", line);
        String beyond = new TimeStrip(quick, new TimeScale(600), 80).lines().get(0);
        assertEquals("> 9 15 min", beyond.substring(beyond.indexOf('>')));
        assertEquals(
                "> 5 8 min 20 s",
                Stream.of(new TimeStrip(quick, new TimeScale(499), 80).lines().get(0))
                        .map(it -> it.substring(it.indexOf('>')))
                        .findFirst()
                        .orElseThrow());
        String never = new TimeStrip(List.of(ant(InventedStudy.gaveUp(50))), new TimeScale(100), 80)
                .lines()
                .get(0);
        assertEquals("> 1 never", never.substring(never.indexOf('>')));
    }
}
