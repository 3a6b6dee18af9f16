package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ionohaul.analysis.Alike;
import org.ionohaul.analysis.FilePromises;
import org.ionohaul.analysis.Leaders;
import org.ionohaul.analysis.Limit;
import org.ionohaul.analysis.Limits;
import org.ionohaul.analysis.Promise;
import org.ionohaul.analysis.SizePromises;
import org.ionohaul.rendering.Cell;
import org.ionohaul.scenario.Direction;
import org.ionohaul.session.SessionResult;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.InventedStudy;
import org.ionohaul.study.StudyResult;
import org.junit.jupiter.api.Test;

/** What may be promised is told with its bounds, never with what was merely simulated. */
final class PromiseWordsTest {
    private static final double CONFIDENCE = 0.9;
    private static final Limits LATE = new Limits(Map.of(Limit.DEADLINE, 9));

    /** "Ant" always takes 100 s, "Bee" 200 s; so many trials of each. */
    private static FilePromiseWords file(int trials, double deadline) {
        return file(
                Collections.nCopies(trials, InventedStudy.delivered(100)),
                Collections.nCopies(trials, InventedStudy.delivered(200)),
                deadline);
    }

    private static FilePromiseWords file(List<SessionResult> ant, List<SessionResult> bee, double deadline) {
        StudyResult study = InventedStudy.study(List.of(deadline), List.of("ant", "bee"), List.of(ant, bee));
        return new FilePromiseWords(FilePromises.of(study, CONFIDENCE).get(0), new LimitWords(study.scenario()));
    }

    /**
     * All of 100: exactly at least 0.025^(1/100) = 96.4 % with 97.5 % confidence, as one of two modes; by Wilson from
     * 100 / (100 + 1.96^2) = 96.3 %.
     */
    @Test
    void aFilesChanceIsToldByItsSafeEndAndItsTimeByItsBound() {
        assertEquals(
                List.of(
                        "2 kB within 150 s: on at least 96 % of trials with Ant (100 % of those simulated; 96-100 %).",
                        "Promise 2 kB within 100 s with Ant: on at least 9 of 10 trials it is through by then."),
                file(100, 150).sentences());
    }

    /** With 250 s both keep it on all of 100: as far as 100 trials leave it open, and 100 s apart. */
    @Test
    void modesThatKeepADeadlineAlikeAreNamedTogether() {
        String told = file(100, 250).sentences().get(0);
        assertEquals(
                "2 kB within 250 s: on at least 96 % of trials with Ant (100 % of those simulated; 96-100 %). Ant and Bee"
                        + " can't be told apart: by then they are alike within 4 of 100 trials, and within 1 min 40 s on the median.",
                told);
    }

    /** With two modes 0.9^n is at most 0.025 from n = 36 on. */
    @Test
    void onTooFewTrialsNoTimeIsPromisedButHowManyAreNeeded() {
        assertEquals(
                "No deadline can be promised safely for 2 kB on 9 of 10 trials: so few were simulated; 36 are needed.",
                file(35, 150).sentences().get(1));
        assertEquals(
                "Promise 2 kB within 100 s with Ant: on at least 9 of 10 trials it is through by then.",
                file(36, 150).sentences().get(1));
        // 0.95^n <= 0.025 from n = 72 on.
        List<Cell> row = file(71, 150).times().rows().get(0);
        assertEquals(
                List.of("Ant", "1 min 40 s", "1 min 40 s", "1 min 40 s", "?"),
                row.stream().map(Cell::text).toList());
        assertEquals("72 trials", row.get(4).detail());
        assertEquals("1 min 40 s", file(72, 150).times().rows().get(0).get(4).text());
    }

    @Test
    void whatNeverArrivesIsNotPromised() {
        List<SessionResult> never = Collections.nCopies(100, InventedStudy.gaveUp(50));
        assertEquals(
                List.of(
                        "2 kB within 150 s: on none of the simulated trials, with any mode.",
                        "2 kB can't be promised for 9 of 10 trials within the time watched, with any mode."),
                file(never, never, 150).sentences());
        assertEquals(
                "open", file(never, never, 150).times().rows().get(1).get(1).text());
    }

    private static SizePromiseWords sizes(Promise ant, Promise bee, Optional<Leaders> leaders) {
        List<SizePromises.OfMode> modes = List.of(ofMode("ant", ant), ofMode("bee", bee));
        SizePromises promises =
                new SizePromises(Direction.UPLOAD, 600, CONFIDENCE, List.of(0.5, CONFIDENCE), modes, 1, leaders);
        return new SizePromiseWords(
                promises, new LimitWords(FabricatedStudy.impatient(2700).scenario()));
    }

    private static SizePromises.OfMode ofMode(String name, Promise promise) {
        return new SizePromises.OfMode(
                InventedStudy.mode(name),
                promise,
                List.of(new SizePromises.ByDeadline(promise, List.of(promise, promise))),
                List.of());
    }

    private static Promise upTo(double value, double low, double high, boolean areTrialsEnough, Limits limits) {
        return new Promise(600, CONFIDENCE, new Estimate(value, low, high), 36, areTrialsEnough, limits);
    }

    /** The best is the second; with what may be so beside it, but not what was simulated. */
    @Test
    void theSizePromisedIsTheSafeOneOfTheBestMode() {
        Promise small = upTo(2000, 1000, 3000, true, LATE);
        Promise large = upTo(18_000, 16_000, 20_000, true, LATE);
        assertEquals(
                "Within 10 min promise up to 16 kB with Bee: on at least 9 of 10 trials it is through by then (perhaps"
                        + " up to 20 kB).",
                sizes(small, large, Optional.empty()).headline());
        assertEquals(
                "Within 10 min promise up to 16 kB with Bee: on at least 9 of 10 trials it is through by then (perhaps"
                        + " up to 20 kB). What stops a larger one is not the deadline: mostly the operator's 45 min ran"
                        + " out. With such a file Bee and Ant can't be told apart: by then they are alike within 5 of 100"
                        + " trials.",
                sizes(
                                small,
                                upTo(
                                        18_000,
                                        16_000,
                                        20_000,
                                        true,
                                        new Limits(Map.of(Limit.PATIENCE, 3, Limit.DEADLINE, 2))),
                                Optional.of(new Leaders(
                                        List.of(1, 0), Optional.of(new Alike(0.05, Double.POSITIVE_INFINITY)))))
                        .headline());
    }

    @Test
    void whereNothingIsSafeThatIsSaid() {
        assertEquals(
                "Within 10 min not even 1 kB can be promised for 9 of 10 trials, with any mode.",
                sizes(upTo(0, 0, 0, true, LATE), upTo(500, 0, 2000, true, LATE), Optional.empty())
                        .headline());
        assertEquals(
                "Within 10 min nothing can be promised safely on so few trials: 36 are needed. On 9 of 10 of those"
                        + " simulated up to 5 kB was through with one mode at least.",
                sizes(upTo(0, 0, 0, false, LATE), upTo(5000, 0, 20_000, false, LATE), Optional.empty())
                        .headline());
    }

    @Test
    void aSizeStandsInItsTableWithWhatMayBeSo() {
        Promise open = upTo(0, 0, 2000, true, LATE);
        Promise sharp = upTo(16_000, 16_000, 16_000, true, LATE);
        Promise few = upTo(5000, 0, 20_000, false, LATE);
        SizePromiseWords words = sizes(open, sharp, Optional.empty());
        assertEquals(new Cell("nothing", "to 2 kB"), cell(words, open));
        assertEquals(new Cell("16 kB", ""), cell(words, sharp));
        assertEquals(new Cell("?", "36 trials"), cell(words, few));
        assertEquals("nothing", words.safe(open));
        assertEquals("up to 16 kB", words.safe(sharp));
        assertEquals("too few trials, 36 are needed", words.safe(few));
    }

    private static Cell cell(SizePromiseWords words, Promise promise) {
        return words.byDeadline(ofMode("ant", promise)).rows().get(0).get(1);
    }
}
