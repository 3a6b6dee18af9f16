package org.ionohaul.whatif;

import static org.ionohaul.whatif.InventedPoints.NEVER;
import static org.ionohaul.whatif.InventedPoints.clear;
import static org.ionohaul.whatif.InventedPoints.deadline;
import static org.ionohaul.whatif.InventedPoints.effect;
import static org.ionohaul.whatif.InventedPoints.mode;
import static org.ionohaul.whatif.InventedPoints.nothing;
import static org.ionohaul.whatif.InventedPoints.open;
import static org.ionohaul.whatif.InventedPoints.variation;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.ionohaul.analysis.CasePoint;
import org.ionohaul.analysis.DeadlineChance;
import org.ionohaul.analysis.ModePoint;
import org.ionohaul.analysis.Variation;
import org.ionohaul.picture.CellMap;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Chart;
import org.ionohaul.report.CaseName;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.KeySweep;
import org.junit.jupiter.api.Test;

/** What a variation's tables and pictures say of each value is what was found there. */
final class VariationTablesTest {
    private static final KeySweep SNR = new KeySweep("near.snr", List.of("3 dB", "6 dB", "12 dB"));
    private static final KeySweep FAR = new KeySweep("distance", List.of("90 km", "400 km"));

    private static VariationTables tables(Variation variation) {
        return new VariationTables(variation, CaseName.all(variation.scenario(), List.of()));
    }

    private static ModePoint in(double seconds, List<DeadlineChance> deadlines) {
        return new ModePoint(
                new Estimate(0.9, 0.8, 0.95),
                new Estimate(seconds, 0.9 * seconds, 1.1 * seconds),
                new Estimate(2 * seconds, 1.9 * seconds, NEVER),
                deadlines,
                effect(new Estimate(30, 20, 40), 1, 60, true));
    }

    private static CasePoint with(ModePoint quick) {
        return new CasePoint(List.of(quick, mode(InventedPoints.NO_EFFECT)), clear(0).leaders(), clear(0).margin());
    }

    /** 300 s: of trials {@code 10 (i + 1)} + 40 a value 30, 26 and 22; 900 s: 90, 86, 82; half of 100 within 500 and so on. */
    @Test
    void aModesRowsAreWhatItComesToAtEachValue() {
        VariationTables tables = tables(FabricatedVariation.oneKey(3));
        List<List<Cell>> rows = tables.ofMode(0, 0).rows();
        assertEquals(
                List.of(
                        List.of("6 dB", "30 %", "90 %", "8 min 20 s", "15 min", "-", "-", "-"),
                        List.of("9 dB", "26 %", "86 %", "9 min", "15 min 40 s", "+40 s", "-4", "-4"),
                        List.of("12 dB", "22 %", "82 %", "9 min 40 s", "16 min 20 s", "+1 min 20 s", "-8", "-8")),
                rows.stream().map(VariationTablesTest::texts).toList());
        assertEquals(
                List.of(
                        "SNR",
                        "by 5 min",
                        "by 15 min",
                        "5 of 10",
                        "9 of 10",
                        "change",
                        "change by 5 min",
                        "change by 15 min"),
                texts(tables.ofMode(0, 0).heads()));
        assertEquals(
                List.of("9 dB", "26 %", "86 %", "9 min", "15 min 40 s", "+40 s"),
                texts(tables.brief(0, 0).rows().get(1)));
    }

    /** A deadline that is varied can't head a column. */
    @Test
    void deadlinesThatDifferAreNumbered() {
        Variation same =
                variation(List.of(SNR), List.of(with(in(60, deadline(300, 0.5))), with(in(90, deadline(300, 0.4)))));
        assertEquals(List.of("by 5 min"), tables(same).deadlineHeads(0).toList());
        Variation varied =
                variation(List.of(SNR), List.of(with(in(60, deadline(300, 0.5))), with(in(90, deadline(600, 0.4)))));
        assertEquals(List.of("by deadline 1"), tables(varied).deadlineHeads(0).toList());
    }

    @Test
    void ofTwoKeysTheLastRunsAcrossAndWhatIsNotDoneIsToldSo() {
        Variation partial = variation(List.of(SNR, FAR), List.of(clear(0), clear(1), open()));
        List<List<Cell>> rows = tables(partial).bestMap(1).rows();
        assertEquals(
                List.of(
                        List.of("3 dB", "Quick", "Tough"),
                        List.of("6 dB", "Quick or Tough", "not done"),
                        List.of("12 dB", "not done", "not done")),
                rows.stream().map(VariationTablesTest::texts).toList());
        assertEquals("3 min 20 s", rows.get(0).get(1).detail());
        assertEquals(
                List.of("SNR at Weir Cottage \\ length of the path", "90 km", "400 km"),
                texts(tables(partial).bestMap(1).heads()));
    }

    @Test
    void aMapsCellSaysWhoIsBestAndItsColourOnlyIfThatIsClear() {
        Variation whole =
                variation(List.of(SNR, FAR), List.of(clear(0), clear(1), open(), nothing(), clear(1), clear(0)));
        List<Chart> maps = new SweepMaps(whole, tables(whole), 0).charts("x");
        List<CellMap.Place> best = ((CellMap) maps.get(0).picture()).cells();
        assertEquals(
                List.of("A 69", "B 69", "AB", "none", "B 69", "A 69"),
                best.stream().map(CellMap.Place::label).toList());
        assertEquals(
                List.of(true, true, false, false, true, true),
                best.stream().map(it -> it.mode().isPresent()).toList());
        assertEquals(
                "3 dB, 400 km\nTough (before Quick on 69 % (59-77 %))",
                best.get(1).says());
        List<CellMap.Place> ninth = maps.stream()
                .map(it -> ((CellMap) it.picture()).cells())
                .filter(it -> it.get(0).label().equals("3 min 20 s"))
                .findFirst()
                .orElseThrow();
        assertEquals(OptionalDouble.of(200), ninth.get(0).value());
        assertEquals("never", ninth.get(3).label());
        assertEquals(OptionalDouble.empty(), ninth.get(3).value());
    }

    @Test
    void barsOfTheBestAreAsLongAsItsLeadAndGreyIfThatIsOpen() {
        Variation variation = variation(List.of(SNR), List.of(clear(1), open(), nothing()));
        List<BestStrip.Bar> bars = ((BestStrip)
                        BestStrip.chart("x", variation, tables(variation), 0).picture())
                .bars();
        assertEquals(69, bars.get(0).ahead(), 1e-12);
        assertEquals(59, bars.get(0).low().orElseThrow(), 1e-12);
        assertEquals(77, bars.get(0).high().orElseThrow(), 1e-12);
        assertTrue(bars.get(0).mode().isPresent());
        assertEquals("3 dB: Tough: before Quick on 69 % (59-77 %)", bars.get(0).says());
        assertEquals(69, bars.get(1).ahead(), 1e-12);
        assertEquals(OptionalInt.empty(), bars.get(1).mode());
        assertEquals(0, bars.get(2).ahead(), 1e-12);
        assertEquals(OptionalDouble.empty(), bars.get(2).low());
        assertEquals(OptionalInt.empty(), bars.get(2).mode());
    }

    /** Longest is 400 s, and 440 s the highest end that is not half as far again; a twentieth beyond. */
    @Test
    void linesRunThroughWhatWasFoundAndTheAxisHoldsThemAll() {
        Variation variation = variation(
                List.of(SNR),
                List.of(
                        with(in(60, deadline(300, 0.5))),
                        with(in(400, deadline(300, 0.4))),
                        with(InventedPoints.silent())));
        List<Chart> charts = new SweepCurves(variation, tables(variation), 0).charts("x");
        SweepCurve medians = (SweepCurve) charts.get(0).picture();
        assertEquals("minutes after pressing send", medians.height().name());
        assertEquals(1.05 * 440 / 60, medians.height().top(), 1e-9);
        SweepCurve.Line quick = medians.modes().get(0);
        assertEquals(List.of(1.0, 400 / 60.0, NEVER), quick.value());
        assertEquals(54 / 60.0, quick.low().get(0), 1e-12);
        assertEquals(66 / 60.0, quick.high().get(0), 1e-9);
        assertEquals(
                List.of("1 min (54 s to 1 min 6 s)", "6 min 40 s (6 min to 7 min 20 s)", "not reached"), quick.says());
        SweepCurve chances = (SweepCurve) charts.get(2).picture();
        assertEquals(List.of(50.0, 40.0, 0.0), chances.modes().get(0).value());
        assertEquals(List.of(40.0, 30.0, 0.0), rounded(chances.modes().get(0).low()));
        assertTrue(chances.height().isPercent());
    }

    /** True to scale only for numbers of one unit; marked one by one only where the steps are alike and few. */
    @Test
    void anAxisIsTrueToScaleForNumbersOfOneUnit() {
        SweepAxis even = SweepAxis.of("it", new KeySweep("snr", List.of("3 dB", "6 dB", "9 dB")));
        assertEquals(List.of(3.0, 6.0, 9.0), even.positions());
        assertEquals("dB", even.unit());
        assertEquals(OptionalDouble.of(3), even.step());
        assertEquals(OptionalDouble.empty(), SweepAxis.of("SNR", SNR).step(), "3, 6 and 12 are not evenly spread");
        SweepAxis falling = SweepAxis.of("it", new KeySweep("snr", List.of("9 dB", "6 dB", "3 dB")));
        assertEquals(OptionalDouble.of(3), falling.step());
        assertEquals(10, falling.scale(10, 100).at(3), 1e-9);
        assertEquals(100, falling.scale(10, 100).at(9), 1e-9);
        SweepAxis named = SweepAxis.of("it", new KeySweep("noise", List.of("city", "rural")));
        assertEquals(List.of(0.0, 1.0), named.positions());
        assertEquals(OptionalDouble.empty(), named.step());
        SweepAxis mixed = SweepAxis.of("it", new KeySweep("patience", List.of("30 s", "2 min")));
        assertEquals(List.of(0.0, 1.0), mixed.positions());
    }

    private static List<Double> rounded(List<Double> numbers) {
        return numbers.stream().map(it -> Math.round(1e9 * it) / 1e9).toList();
    }

    private static List<String> texts(List<Cell> cells) {
        return cells.stream().map(Cell::text).toList();
    }
}
