package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.Findings;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.Race;
import org.ionohaul.analysis.Race.Lane;
import org.ionohaul.analysis.Race.Mark;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The race of the fabricated study, where half of the 50,000 bytes are held after half of the time. */
final class RaceChartTest {
    private final Findings findings = FabricatedStudy.findings(FabricatedStudy.TRIALS);
    private final CaseSummary summary = findings.summary().cases().get(0);
    private final Race race = findings.races().get(0);

    /** Lines and table are read off the same trials. */
    @Test
    void linesEndWhereTheTableSaysThatTrialsAreThrough() {
        for (int i = 0; i < race.lanes().size(); i++) {
            ModeSummary mode = summary.modes().get(i);
            List<Mark> marks = race.lanes().get(i).marks();
            assertEquals(
                    new Mark(
                            50_000,
                            mode.tenthSeconds().value(),
                            mode.medianSeconds().value(),
                            mode.ninthSeconds().value()),
                    marks.get(marks.size() - 1));
        }
    }

    /** Quick's 50th trial takes 500 s; 1,000 bytes come with the first half, 28 kB with the second. */
    @Test
    void theyRiseFromTheFirstByte() {
        List<Mark> marks = race.lanes().get(0).marks();
        assertEquals(new Mark(0, 50, 250, 450), marks.get(0));
        assertEquals(new Mark(1000, 50, 250, 450), marks.get(1));
        assertEquals(new Mark(28_000, 100, 500, 900), marks.get(marks.size() - 6));
        for (int i = 1; i < marks.size(); i++) {
            assertTrue(marks.get(i).bytes() > marks.get(i - 1).bytes());
            assertTrue(marks.get(i).medianSeconds() >= marks.get(i - 1).medianSeconds());
        }
    }

    /** Tough is best; its 50th of 100 trials, number 49, takes 445 s: the median. */
    @Test
    void theOneTrialIsTheMiddleOneOfTheBestMode() {
        assertEquals("tough", summary.best().mode().name());
        assertEquals(49, race.trial());
        Lane best = race.lanes().get(1);
        assertEquals(summary.best().medianSeconds().value(), best.oneEndedSeconds());
        assertTrue(best.isOneDelivered());
        assertEquals(50_000, best.one().heldBytes(best.one().size() - 1));
    }

    /** Trials 95 to 99 of Quick give up 4 s after the time at which they would be through, with half of it. */
    @Test
    void itIsToldWhereTrialsGiveUp() {
        List<Race.Stop> stops = race.lanes().get(0).stops();
        assertEquals(5, stops.size());
        assertEquals(new Race.Stop(964, 25_000), stops.get(0));
        assertTrue(race.lanes().get(1).stops().isEmpty());
    }

    @Test
    void thePictureHasTheSameInKilobytesAndMinutes() {
        JsonNode picture = new JsonMapper()
                .readTree(RaceChart.chart("race", findings.result().scenario(), summary, race)
                        .data()
                        .json());
        assertEquals("kB", picture.get("unit").asString());
        assertEquals(50, picture.get("end").asDouble());
        double end = picture.get("axis").get("end").asDouble();
        JsonNode tough = picture.get("modes").get(1);
        assertEquals("Tough", tough.get("mode").asString());
        int last = tough.get("held").size() - 1;
        assertEquals(50, tough.get("held").get(last).asDouble());
        assertEquals(445 / 60.0, tough.get("median").get(last).asDouble(), 1e-3);
        assertEquals(
                "[[0,0],[3.7083,25],[7.4167,50],[7.4167,50]]", tough.get("one").toString());
        assertFalse(picture.get("sky").get("at").isEmpty());
        picture.get("sky").get("at").forEach(it -> assertTrue(it.asDouble() <= end));
    }
}
