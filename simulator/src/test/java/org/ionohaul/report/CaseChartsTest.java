package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class CaseChartsTest {
    @Test
    void everyCauseOfTheTimeBudgetHasItsColourInOrder() {
        assertTrue(CaseCharts.drawsEveryCause());
    }

    @Test
    void fiftyMarksAreDrawnDotsWithinTheAxisRingsBeyondItAndCrossesForNever() {
        List<OptionalDouble> seconds = IntStream.range(0, DotPlot.DOTS)
                .mapToObj(i -> i < 45 ? OptionalDouble.of(10.0 * i) : OptionalDouble.empty())
                .toList();
        String svg = DotPlot.svg("x", List.of(new DotPlot.Row("Quick", seconds)), List.of(300.0), new TimeScale(400));
        assertEquals(40, count(svg, "<circle[^>]*fill=\"" + Palette.colour(0)), "10 s apart before 400 s");
        assertEquals(5, count(svg, "<circle[^>]*fill=\"none\""), "from 400 s on");
        assertEquals(5, count(svg, "<path[^>]*stroke=\"" + Palette.ALERT), "never");
    }

    private static long count(String svg, String pattern) {
        return Pattern.compile(pattern).matcher(svg).results().count();
    }

    @Test
    void marksOfTimeAreLengthsThatPeopleCountIn() {
        assertEquals(List.of(0.0, 300.0, 600.0, 900.0, 1200.0), new TimeScale(1300).marksSeconds(7));
        assertEquals(List.of(0.0, 15.0, 30.0, 45.0, 60.0), new TimeScale(60).marksSeconds(5));
    }
}
