package org.ionohaul.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.Draws;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.InventedStudy;
import org.ionohaul.study.ModeTrials;
import org.ionohaul.study.StudyRunner;
import org.ionohaul.study.TrialRow;
import org.ionohaul.study.TrialSource;
import org.ionohaul.trial.UncertainDraws;
import org.junit.jupiter.api.Test;

/** Luck against ignorance, in invented trials whose shares are known. */
final class SpreadSplitTest {
    private static final int TRIALS = 2000;
    private static final List<Double> DEADLINES = List.of(130.0, 160.0);

    /** Time: 100 s, up to 60 s more by the noise, up to 30 s by the path, up to 30 s by luck; the band does not matter. */
    private final Scenario scenario = scenario(List.of("band", "noise", "path"));

    @Test
    void theInputThatMattersMostIsWorthMeasuring() {
        SpreadSplit split =
                SpreadSplit.of(scenario, DEADLINES, trials(scenario)).orElseThrow();
        assertEquals(List.of("noise"), split.worthMeasuring());
        assertEquals(
                List.of("band", "noise", "path"),
                split.inputs().stream().map(SpreadSplit.InputShare::key).toList());
        // Variances are as 60^2 : 30^2 : 30^2; ranks bend that a little.
        assertEquals(0, split.inputs().get(0).share().value(), 0.015);
        assertEquals(4 / 6.0, split.inputs().get(1).share().value(), 0.06);
        assertEquals(1 / 6.0, split.inputs().get(2).share().value(), 0.06);
        assertEquals(1 / 6.0, split.rest().value(), 0.06);
    }

    @Test
    void whereNoInputMattersNothingIsWorthMeasuring() {
        Scenario known = scenario(List.of("band"));
        SpreadSplit split = SpreadSplit.of(known, DEADLINES, trials(known)).orElseThrow();
        assertEquals(List.of(), split.worthMeasuring());
        assertTrue(split.rest().low() > 0.95, split.toString());
        assertFalse(split.mayCombine());
    }

    /** Each of twelve inputs explains a little less or more than nothing by chance, so that together they take none. */
    @Test
    void manyInputsThatDoNotMatterTakeNothingFromLuckButBlurIt() {
        List<String> keys =
                IntStream.range(0, 12).mapToObj(i -> "band-" + (char) ('a' + i)).toList();
        Scenario known = scenario(keys);
        SpreadSplit split = SpreadSplit.of(known, DEADLINES, trials(known)).orElseThrow();
        assertEquals(List.of(), split.worthMeasuring());
        assertTrue(split.inputs().stream().anyMatch(it -> it.share().value() > 0), split.toString());
        assertEquals(1, split.rest().high());
        // Shares of 12 x 19 spurious degrees of freedom have a standard deviation of sqrt(2 x 12 x 19) / 2000.
        assertEquals(1, split.rest().value(), 4 * Math.sqrt(2 * 12 * 19) / TRIALS);
    }

    @Test
    void whereEverythingIsKnownThereIsOnlyLuck() {
        Scenario known = scenario(List.of());
        assertEquals(Optional.empty(), SpreadSplit.of(known, DEADLINES, trials(known)));
    }

    @Test
    void whereNoTrialDiffersThereIsNothingToSplit() {
        ModeTrials alike = new ModeTrials(
                trials(scenario).mode(),
                IntStream.range(0, 200)
                        .mapToObj(i -> TrialRow.of(i, InventedStudy.gaveUp(60)))
                        .toList());
        assertEquals(Optional.empty(), SpreadSplit.of(scenario, DEADLINES, alike));
    }

    private static ModeTrials trials(Scenario scenario) {
        TrialSource source = trial -> {
            Draws draws = UncertainDraws.of(scenario.seed(), trial);
            double luck = new TrialStreams(scenario.seed(), trial)
                    .open(Purpose.FADING, 0)
                    .nextDouble();
            double seconds = 100 + 60 * draws.probability("noise") + 30 * draws.probability("path") + 30 * luck;
            return List.of(InventedStudy.delivered(seconds), InventedStudy.delivered(seconds));
        };
        return new StudyRunner(scenario, source, 2, (done, asked) -> {}, () -> false)
                .run()
                .cases()
                .get(0)
                .modes()
                .get(0);
    }

    private static Scenario scenario(List<String> uncertainKeys) {
        return InventedStudy.unknown(42, TRIALS, uncertainKeys);
    }
}
