package org.ionohaul.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.channel.EndConditions;
import org.ionohaul.channel.PropagationPath;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.Sky;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SlowVariation;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.report.FabricatedStudy;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.trial.SkyView;
import org.junit.jupiter.api.Test;

/** A level that falls in a straight line over ten minutes, without fading: strips and pictures must fall with it. */
final class FallingSkyTest {
    private static final int COLUMNS = 72;
    private static final double SECONDS = 600;

    /** Falls by so much from 17 dB at the near end, 11 dB at the far one. */
    private static SkyView falling(double db) {
        return following(List.of(new Schedule.Point(0, 0), new Schedule.Point(SECONDS, -db)));
    }

    private static SkyView following(List<Schedule.Point> trend) {
        Scenario scenario = FabricatedStudy.result().scenario();
        SkyConditions sky = new SkyConditions(
                List.of(new PropagationPath(0, 0, 0, 0)),
                SlowVariation.NONE,
                new Schedule(trend),
                EndConditions.quiet(17),
                EndConditions.quiet(11));
        return SkyView.of(scenario, 3, new Sky(sky, new TrialStreams(scenario.seed(), 3)), SECONDS);
    }

    /** Rows of the near end's strip, which comes first. */
    private static List<String> rows(SkyView view) {
        return new SkyText(view)
                .lines().stream()
                        .dropWhile(it -> !it.startsWith("At Weir Cottage"))
                        .skip(1)
                        .takeWhile(it -> it.matches(" *-?\\d+ \\|.*"))
                        .toList();
    }

    /** Over 30 dB rows are 5 dB high; a column is the mean of eight seconds of it. */
    @Test
    void eachColumnHasItsMiddleInTheRowThatHoldsItsLevel() {
        List<String> rows = rows(falling(30));
        assertEquals(
                List.of("15", "10", "5", "0", "-5", "-10", "-15"),
                rows.stream()
                        .limit(7)
                        .map(it -> it.replaceAll(" *(-?\\d+) .*", "$1"))
                        .toList());
        int checked = 0;
        for (int column = 0; column < COLUMNS; column++) {
            double level = 17 - 30 * (column + 0.5) / COLUMNS;
            double inRow = level / 5 - Math.floor(level / 5);
            // A second's step is 0.05 dB; a row is told apart surely where the middle lies three of them within.
            if (Math.min(inRow, 1 - inRow) * 5 > 0.15) {
                int at = column;
                String wanted = String.format("%6.0f |", 5 * Math.floor(level / 5));
                List<String> with = rows.stream()
                        .filter(it -> it.length() > 8 + at && it.charAt(8 + at) == 'o')
                        .map(it -> it.substring(0, 8))
                        .toList();
                assertEquals(List.of(wanted), with, "column " + column + " at " + level + " dB");
                checked++;
            }
        }
        assertTrue(checked > 60, () -> "few columns were checked");
    }

    /** Nine rows of 5 dB hold 45 dB; more takes rows of 10. */
    @Test
    void rowsGrowWithTheSpreadSoThatTheStripStaysLow() {
        assertTrue(
                rows(falling(44)).get(1).startsWith("    10 |"),
                () -> rows(falling(44)).toString());
        assertTrue(
                rows(falling(47)).get(1).startsWith("     0 |"),
                () -> rows(falling(47)).toString());
        assertTrue(
                rows(falling(47)).get(0).startsWith("    10 |"),
                () -> rows(falling(47)).toString());
    }

    /** At 17 dB on two of three seconds and at -3 on the third: the middle is 17 in every column, all between is common. */
    @Test
    void aColumnReachesAsFarAsEightTenthsOfItsTime() {
        List<Schedule.Point> points = IntStream.range(0, (int) SECONDS)
                .mapToObj(i -> new Schedule.Point(i, i % 3 == 0 ? -20 : 0))
                .toList();
        List<String> rows = rows(following(points));
        assertEquals(5, rows.stream().filter(it -> it.length() > 8).count(), rows::toString);
        assertEquals("    15 |" + "o".repeat(COLUMNS), rows.get(0));
        assertEquals("    -5 |" + ":".repeat(COLUMNS), rows.get(4));
        rows.subList(1, 4).forEach(it -> assertEquals(":".repeat(COLUMNS), it.substring(8)));
    }

    @Test
    void thePictureFallsWithTheLevel() {
        List<SkyChart.Panel> ends = SkyChart.of(falling(30)).ends();
        for (int end = 0; end < 2; end++) {
            SkyChart.Panel panel = ends.get(end);
            double top = end == 0 ? 17 : 11;
            int spans = panel.at().size();
            assertTrue(spans > 100, () -> "few spans");
            IntStream.range(0, spans).forEach(i -> {
                double level = top - 30 * 60 * panel.at().get(i) / SECONDS;
                // The axis is in minutes; samples lie a second apart.
                assertEquals(level, panel.median().get(i), 0.06);
                assertTrue(panel.low().get(i) <= panel.median().get(i)
                        && panel.median().get(i) <= panel.high().get(i));
                assertEquals(0, panel.disturbance().get(i), 1e-9);
            });
            assertEquals(top - 30 / 2.0, panel.median().get(spans / 2), 0.3);
        }
        assertEquals("At Flood Desk, hearing Weir Cottage", ends.get(1).heading());
    }
}
