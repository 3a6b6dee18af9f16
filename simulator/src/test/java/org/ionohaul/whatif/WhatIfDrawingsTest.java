package org.ionohaul.whatif;

import static org.ionohaul.whatif.InventedPoints.NEVER;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ionohaul.picture.CellMap;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Shade;
import org.ionohaul.study.KeySweep;
import org.junit.jupiter.api.Test;

/** What is drawn lies where its numbers say, to a tenth of a pixel as pictures are written. */
final class WhatIfDrawingsTest {
    private static final int WIDTH = 520;
    private static final double TENTH = 0.1001;
    private static final Pattern BAR = Pattern.compile(
            "<rect class=\"part ([^\"]*)\" x=\"([\\d.]+)\" y=\"([\\d.]+)\" width=\"([\\d.]+)\" height=\"([\\d.]+)\">");
    private static final Pattern TILE = Pattern.compile("<path class=\"part ([^\"]*)\" d=\"M([\\d.]+)[ ]?([\\d.]+)h");
    private static final Pattern DOT =
            Pattern.compile("<circle class=\"dot ([^\"]*)\" cx=\"([\\d.]+)\" cy=\"([\\d.]+)\"");

    private static List<MatchResult> found(Pattern shape, Picture picture) {
        return shape.matcher(picture.svg(WIDTH)).results().toList();
    }

    private static double number(MatchResult shape, int group) {
        return Double.parseDouble(shape.group(group));
    }

    /** From 2 to 518 pixels lie 6.6 minutes: the zero line at 260. */
    @Test
    void aTornadosBarsReachFromTheZeroLineToTheirChange() {
        TornadoChart chart = new TornadoChart(
                "change, minutes",
                3.3,
                List.of(
                        new TornadoChart.Bar("snr = few", false, 2, 2.5, 3),
                        new TornadoChart.Bar("snr = many", true, -2, -1.5, -1)));
        List<MatchResult> bars = found(BAR, chart);
        assertEquals(2, bars.size());
        assertEquals(260, number(bars.get(0), 2), TENTH);
        assertEquals(516 * 2.5 / 6.6, number(bars.get(0), 4), TENTH);
        assertEquals(260 - 516 * 1.5 / 6.6, number(bars.get(1), 2), TENTH);
        assertEquals(516 * 1.5 / 6.6, number(bars.get(1), 4), TENTH);
        assertTrue(number(bars.get(1), 3) >= number(bars.get(0), 3) + number(bars.get(0), 5), "bars lie apart");
        assertTrue(!bars.get(0).group(1).equals(bars.get(1).group(1)), "the two ends of a key look different");
    }

    /** A hundred of 100 trials reach from 2 to 494 pixels, two letters' heights from the edge. */
    @Test
    void theBarOfTheBestIsAsLongAsItsShareAndHasItsColour() {
        BestStrip strip = new BestStrip(List.of(
                new BestStrip.Bar(
                        "3 dB", "Tough", "", OptionalInt.of(8), 69, OptionalDouble.of(59), OptionalDouble.of(77)),
                new BestStrip.Bar(
                        "6 dB",
                        "none",
                        "says",
                        OptionalInt.empty(),
                        25,
                        OptionalDouble.empty(),
                        OptionalDouble.empty())));
        List<MatchResult> bars = Pattern.compile(BAR.pattern().replace("height=\"([\\d.]+)\">", "height=\"([\\d.]+)\""))
                .matcher(strip.svg(WIDTH))
                .results()
                .toList();
        assertEquals(
                List.of("tint m1", "open"), bars.stream().map(it -> it.group(1)).toList());
        assertEquals(2, number(bars.get(0), 2), TENTH);
        assertEquals(492 * 0.69, number(bars.get(0), 4), TENTH);
        assertEquals(492 * 0.25, number(bars.get(1), 4), TENTH);
        long whiskers = strip.svg(WIDTH).split("class=\"whisker", -1).length - 1L;
        String without = new BestStrip(strip.bars().subList(1, 2)).svg(WIDTH);
        assertTrue(whiskers > 0 && !without.contains("class=\"whisker"), without);
    }

    /** Three values across, two down; the darker the more. */
    @Test
    void aMapsCellsLieByRowsAndAreAsDarkAsTheirValue() {
        List<CellMap.Place> cells = Stream.of(10.0, 20.0, 30.0, 25.0)
                .map(it -> new CellMap.Place(it.toString(), "says", OptionalInt.empty(), OptionalDouble.of(it)))
                .toList();
        CellMap map = new CellMap(
                new CellMap.Side("snr", List.of("3 dB", "6 dB")),
                new CellMap.Side("distance", List.of("1 km", "2 km", "3 km")),
                cells,
                CellMap.Shading.of(cells));
        List<MatchResult> drawn = found(TILE, map);
        assertEquals(4, drawn.size());
        assertEquals(
                List.of(Shade.style(0), Shade.style(0.5), Shade.style(1), Shade.style(0.75)),
                drawn.stream().map(it -> it.group(1)).toList());
        double wide = number(drawn.get(1), 2) - number(drawn.get(0), 2);
        assertEquals(wide, number(drawn.get(2), 2) - number(drawn.get(1), 2), 2 * TENTH);
        assertEquals(WIDTH, number(drawn.get(2), 2) + wide, 3 * TENTH);
        assertEquals(number(drawn.get(0), 2), number(drawn.get(3), 2));
        assertEquals(38, number(drawn.get(3), 3) - number(drawn.get(0), 3), TENTH);
        assertEquals(number(drawn.get(0), 3), number(drawn.get(2), 3));
    }

    @Test
    void aMapOfOneValueIsLightAndOneOfModesHasTheirColours() {
        CellMap.Side two = new CellMap.Side("snr", List.of("3 dB", "6 dB"));
        CellMap.Side one = new CellMap.Side("distance", List.of("1 km"));
        List<CellMap.Place> alike = List.of(
                new CellMap.Place("a", "says", OptionalInt.empty(), OptionalDouble.of(5)),
                new CellMap.Place("b", "says", OptionalInt.empty(), OptionalDouble.of(5)));
        assertEquals(
                List.of(Shade.style(0), Shade.style(0)),
                found(TILE, new CellMap(two, one, alike, CellMap.Shading.of(alike))).stream()
                        .map(it -> it.group(1))
                        .toList());
        List<CellMap.Place> modes = List.of(
                new CellMap.Place("a", "says", OptionalInt.of(9), OptionalDouble.empty()),
                new CellMap.Place("none", "says", OptionalInt.empty(), OptionalDouble.empty()));
        assertEquals(
                List.of("tint m2", "open"),
                found(TILE, new CellMap(two, one, modes, CellMap.Shading.of(modes))).stream()
                        .map(it -> it.group(1))
                        .toList());
    }

    /** 230 pixels stand for 8 minutes; 3 dB to 12 dB run from left to right, true to scale. */
    @Test
    void aCurvesDotsLieAtTheirValuesAndWhatIsNotReachedHasNone() {
        SweepAxis axis = SweepAxis.of("SNR", new KeySweep("snr", List.of("3 dB", "6 dB", "12 dB")));
        List<String> says = List.of("a", "b", "c");
        SweepCurve curve = new SweepCurve(
                axis,
                new SweepCurve.Height("minutes", false, 8, 2),
                List.of(
                        new SweepCurve.Line(
                                "Quick", List.of(6.0, 2.0, 1.0), List.of(5.0, 1.0, 0.5), List.of(7.0, 3.0, 2.0), says),
                        new SweepCurve.Line(
                                "Tough",
                                List.of(4.0, 4.0, NEVER),
                                List.of(3.0, 3.0, NEVER),
                                List.of(5.0, 5.0, NEVER),
                                says)));
        List<MatchResult> dots = found(DOT, curve);
        assertEquals(5, dots.size());
        assertEquals(230 * 4 / 8.0, number(dots.get(1), 3) - number(dots.get(0), 3), 2 * TENTH);
        assertEquals(230 / 8.0, number(dots.get(2), 3) - number(dots.get(1), 3), 2 * TENTH);
        double third = (number(dots.get(2), 2) - number(dots.get(0), 2)) / 3;
        assertTrue(third > 100, "it fills the picture");
        assertEquals(third, number(dots.get(1), 2) - number(dots.get(0), 2), 2 * TENTH);
        assertEquals(number(dots.get(3), 3), number(dots.get(4), 3));
        assertEquals((number(dots.get(0), 3) + number(dots.get(1), 3)) / 2, number(dots.get(3), 3), 2 * TENTH);
        assertTrue(curve.svg(WIDTH).contains("SNR = 12 dB\nQuick: c\nTough: c"));
    }
}
