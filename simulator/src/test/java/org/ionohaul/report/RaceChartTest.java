package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.Findings;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.Race;
import org.ionohaul.analysis.Race.Lane;
import org.ionohaul.analysis.Race.Mark;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Table;
import org.junit.jupiter.api.Test;

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
        RaceChart picture = picture();
        assertEquals("kB", picture.unit());
        assertEquals(50, picture.end());
        RaceChart.Line tough = picture.modes().get(1);
        assertEquals("Tough", tough.mode());
        int last = tough.held().size() - 1;
        assertEquals(50, tough.held().get(last));
        assertEquals(445 / 60.0, tough.median().get(last), 1e-12);
        double half = 445 / 120.0;
        double all = 445 / 60.0;
        assertEquals(
                List.of(List.of(0.0, 0.0), List.of(half, 25.0), List.of(all, 50.0), List.of(all, 50.0)), tough.one());
        assertFalse(picture.sky().at().isEmpty());
        picture.sky().at().forEach(it -> assertTrue(it <= picture.axis().end()));
    }

    /** On linear axes 25 kB after half of 445 s lie halfway between the corner and 50 kB after all of it. */
    @Test
    void theAxesAreLinearAndMeetAtNothing() {
        String svg = picture().svg(RaceChart.WIDE);
        double[] corner = places("<path class=\"axis\" d=\"M([0-9.]+) ([0-9.]+)h", "", svg);
        String tough = "<circle class=\"point m1 d1\" cx=\"([0-9.]+)\" cy=\"([0-9.]+)\" r=\"7\"><title>Tough: ";
        double[] half = places(tough, "25 kB held after 2 min 3 s, 3 min 43 s, 5 min 23 s on 1, 5, 9 of 10", svg);
        double[] all = places(tough, "50 kB held after 4 min 5 s, 7 min 25 s, 10 min 45 s on 1, 5, 9 of 10", svg);
        for (int i = 0; i < 2; i++) {
            assertEquals((corner[i] + all[i]) / 2, half[i], 0.1, "tenths of a pixel");
        }
    }

    private static double[] places(String pattern, String then, String svg) {
        Matcher found = Pattern.compile(pattern + then).matcher(svg);
        assertTrue(found.find(), then);
        return new double[] {Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2))};
    }

    /** Each mode's first byte, the whole, and the sizes that are the first not below its quarters. */
    @Test
    void theNumbersBehindItAreThoseOfTheLines() {
        Table table = RaceChart.chart("race", findings.result().scenario(), summary, race)
                .table();
        assertEquals(
                List.of("mode", "first byte", "12.5 kB", "25 kB", "40 kB", "50 kB"),
                table.heads().stream().map(Cell::text).toList());
        assertEquals(
                List.of("Tough", "3 min 43 s", "3 min 43 s", "3 min 43 s", "7 min 25 s", "7 min 25 s"),
                table.rows().get(1).stream().map(Cell::text).toList());
        assertEquals("4 min 5 s to 10 min 45 s", table.rows().get(1).get(5).detail());
    }

    @Test
    void theSamePictureIsTheSameTextAndEachModeHasItsLineItsBandAndItsSteps() {
        String svg = picture().svg(RaceChart.WIDE);
        assertEquals(svg, picture().svg(RaceChart.WIDE));
        for (String mode : List.of("m0 d0", "m1 d1")) {
            for (String part : List.of("line ", "band ", "steps ")) {
                assertTrue(svg.contains("<path class=\"" + part + mode + "\""), part + mode);
            }
        }
        assertTrue(svg.contains("cross m0 d0"), "Quick gives up");
        assertFalse(svg.contains("cross m1 d1"), "Tough never does");
    }

    private RaceChart picture() {
        return (RaceChart) RaceChart.chart("race", findings.result().scenario(), summary, race)
                .picture();
    }
}
