package org.ionohaul.whatif;

import static org.ionohaul.whatif.InventedPoints.NEVER;
import static org.ionohaul.whatif.InventedPoints.clear;
import static org.ionohaul.whatif.InventedPoints.effect;
import static org.ionohaul.whatif.InventedPoints.mode;
import static org.ionohaul.whatif.InventedPoints.nothing;
import static org.ionohaul.whatif.InventedPoints.open;
import static org.ionohaul.whatif.InventedPoints.point;
import static org.ionohaul.whatif.InventedPoints.silent;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.ionohaul.analysis.CasePoint;
import org.ionohaul.analysis.Leaders;
import org.ionohaul.analysis.ModePoint;
import org.ionohaul.analysis.PairedEffect;
import org.ionohaul.analysis.Tornado;
import org.ionohaul.analysis.TornadoBar;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Chart;
import org.ionohaul.report.FabricatedStudy;
import org.ionohaul.statistics.Estimate;
import org.junit.jupiter.api.Test;

/**
 * What is said and drawn of a tornado: three keys, of which "snr" changes the time of "Quick" most, "noise" perhaps as much and
 * "wait" nothing.
 */
final class TornadoWordsTest {
    private static final PairedEffect SOONER = effect(new Estimate(-90, -120, -60), 80, 10, true);
    private static final PairedEffect LATER = effect(new Estimate(150, 130, 180), 5, 90, true);
    private static final PairedEffect PERHAPS = effect(new Estimate(20, -10, 140), 30, 40, false);

    private static CasePoint changed(PairedEffect effect) {
        return new CasePoint(
                List.of(mode(effect), mode(InventedPoints.NO_EFFECT)),
                new Leaders(List.of(0), Optional.empty()),
                clear(0).margin());
    }

    private static TornadoBar bar(String key, CasePoint low, CasePoint high) {
        return new TornadoBar(key, point(List.of("few"), low), point(List.of("many"), high));
    }

    private static Tornado tornado(CasePoint reference, TornadoBar... bars) {
        return new Tornado(FabricatedStudy.result().scenario(), 3, point(List.of(), reference), List.of(bars));
    }

    private static Tornado threeKeys() {
        return tornado(
                clear(0),
                bar("wait", clear(0), clear(0)),
                bar("noise", clear(0), changed(PERHAPS)),
                bar("snr", changed(LATER), changed(SOONER)));
    }

    private static List<String> sentences(Tornado tornado) {
        return new TornadoWords(tornado).sentences(0);
    }

    @Test
    void theKeyThatMattersMostIsNamedWithThoseThatChanceLeavesOpenAndWithBothItsEnds() {
        assertEquals(
                List.of(
                        "What matters most for the time of Quick is SNR, though chance leaves open whether more than"
                                + " noise.",
                        "With SNR = few, Quick is through 2 min 30 s later on the median trial (2 min 10 s to 3 min)."
                                + " With SNR = many, Quick is through 1 min 30 s sooner on the median trial (1 min to 2 min).",
                        "As it stands: Quick is best; 9 of 10 trials within 3 min 20 s."),
                sentences(threeKeys()));
    }

    /** What "noise" may come to at most must reach what "snr" comes to at least: 130 s. */
    @Test
    void aKeyMayMatterAsMuchOnlyIfItsRangeReachesTheOthers() {
        for (double most : new double[] {130, 131}) {
            PairedEffect noise = effect(new Estimate(20, -10, most), 30, 40, false);
            assertEquals(
                    "What matters most for the time of Quick is SNR"
                            + (most > 130 ? ", though chance leaves open whether more than noise." : "."),
                    sentences(tornado(
                                    clear(0),
                                    bar("noise", clear(0), changed(noise)),
                                    bar("snr", changed(LATER), changed(SOONER))))
                            .get(0));
        }
    }

    @Test
    void withoutAChangeBeyondChanceNoKeyIsNamed() {
        assertEquals(
                List.of(
                        "None of these changes the time of Quick beyond chance.",
                        "With noise = few, not one trial differs for Quick. With noise = many, nothing changes for Quick"
                                + " that could not be chance (-10 s to +2 min 20 s).",
                        "As it stands: Quick is best; 9 of 10 trials within 3 min 20 s."),
                sentences(tornado(clear(0), bar("noise", clear(0), changed(PERHAPS)))));
    }

    @Test
    void howTheScenarioStandsIsToldWithWhatIsOpen() {
        TornadoBar wait = bar("wait", clear(0), clear(0));
        List<String> open = sentences(tornado(open(), wait));
        assertEquals(
                "As it stands: best is Quick or Tough, which can't be told apart; with Quick 9 of 10 trials within 3 min"
                        + " 20 s.",
                open.get(2));
        assertEquals(
                List.of("As it stands: no mode gets anything through."),
                sentences(tornado(nothing(), bar("wait", nothing(), nothing()))));
    }

    /** Fewer than 9 of 10 trials get through: then it is told how many do. */
    @Test
    void aModeThatOftenFailsIsToldByHowOftenItGetsThrough() {
        ModePoint often = mode(InventedPoints.NO_EFFECT);
        ModePoint fails = new ModePoint(
                often.delivered(),
                often.medianSeconds(),
                new Estimate(NEVER, 500, NEVER),
                often.deadlines(),
                often.effect());
        CasePoint stands =
                new CasePoint(List.of(fails, silent()), new Leaders(List.of(0), Optional.empty()), clear(0).margin());
        assertEquals(
                "As it stands: Quick is best; on 6 of 10 trials it gets through.",
                sentences(tornado(stands, bar("wait", stands, stands))).get(2));
    }

    @Test
    void anInterruptionIsTold() {
        TornadoWords whole = new TornadoWords(threeKeys());
        assertEquals("", whole.partial());
        assertEquals(
                "100 simulated trials a value, the same skies for every value and mode, seed 4711. Set to either end"
                        + " of its range, each alone: wait (wait), noise (noise) and SNR (snr). What matters most comes"
                        + " first below.",
                whole.basis());
        assertEquals(
                "PARTIAL: interrupted after 1 of 3 inputs.",
                new TornadoWords(tornado(clear(0), bar("wait", clear(0), clear(0)))).partial());
    }

    @Test
    void tablesHaveTheKeyThatMattersMostOnTop() {
        List<List<Cell>> rows = new TornadoTables(threeKeys()).ofMode(0, 0).rows();
        assertEquals(
                List.of(
                        "SNR few +2 min 30 s",
                        "SNR many -1 min 30 s",
                        "noise few none",
                        "noise many (+20 s)",
                        "wait few none",
                        "wait many none"),
                rows.stream()
                        .map(it -> it.get(0).text() + " " + it.get(1).text() + " "
                                + it.get(2).text())
                        .toList());
        assertEquals("+2 min 10 s to +3 min", rows.get(0).get(2).detail());
        assertEquals(
                List.of(
                        "as it stands",
                        "wait = few",
                        "wait = many",
                        "noise = few",
                        "noise = many",
                        "SNR = few",
                        "SNR = many"),
                new TornadoTables(threeKeys())
                        .best(0, List.of(300.0)).rows().stream()
                                .map(it -> it.get(0).text())
                                .toList());
    }

    /** Longest of all ends is 180 s, so that the axis is in minutes and reaches a tenth beyond 3. */
    @Test
    void barsAreAsLongAsTheChangesTheyStandFor() {
        List<Chart> charts =
                new TornadoCharts(threeKeys(), 0, 0, new TornadoTables(threeKeys()).ofMode(0, 0)).charts("x");
        TornadoChart times = (TornadoChart) charts.get(0).picture();
        assertEquals("change, minutes", times.axis());
        assertEquals(3.3, times.end(), 1e-12);
        TornadoChart.Bar few = times.bars().get(0);
        assertEquals("SNR = few\n+2 min 30 s (+2 min 10 s to +3 min)", few.label());
        assertEquals(List.of(130 / 60.0, 2.5, 3.0), List.of(few.low(), few.change(), few.high()));
        assertEquals(
                List.of(false, true, false, true, false, true),
                times.bars().stream().map(TornadoChart.Bar::isLast).toList());
        assertEquals(-1.5, times.bars().get(1).change(), 1e-12);
        TornadoChart chances = (TornadoChart) charts.get(1).picture();
        assertEquals("change, of 100 trials", chances.axis());
        assertEquals(1.1, chances.end(), 1e-12);
    }

    /** Up to two minutes the axis is in seconds; a change that never ends reaches the axis's end. */
    @Test
    void barsWithoutEndReachTheEndOfTheAxis() {
        for (double longest : new double[] {120, 121}) {
            Tornado tornado = tornado(
                    clear(0),
                    bar(
                            "snr",
                            changed(effect(new Estimate(NEVER, longest, NEVER), 5, 90, true)),
                            changed(effect(new Estimate(-NEVER, -NEVER, -60), 90, 5, true))));
            TornadoChart chart =
                    (TornadoChart) new TornadoCharts(tornado, 0, 0, new TornadoTables(tornado).ofMode(0, 0))
                            .charts("x")
                            .get(0)
                            .picture();
            double unit = longest > 120 ? 60 : 1;
            assertEquals(1.1 * longest / unit, chart.end(), 1e-12);
            assertEquals(chart.end(), chart.bars().get(0).change());
            assertEquals(longest / unit, chart.bars().get(0).low());
            assertEquals(-chart.end(), chart.bars().get(1).low());
            assertEquals(-60 / unit, chart.bars().get(1).high());
        }
    }
}
