package org.ionohaul.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What progress says about a file size, against really sending such files under the same skies.
 *
 * <p>Progress may be late, as a longer queue may go into longer overs, but by one over at most; it must not be early.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class SizeAgreementTest {
    private static final double HORIZON_SECONDS = 600;

    private final Scenario scenario;
    private final StudyResult progress;

    SizeAgreementTest() throws ScenarioProblems {
        scenario = ScenarioReader.read(Path.of("..", "scenarios", "river-watch.toml"), Map.of("trials", "40"));
        progress = run(SizeTransfers.in(scenario, 50_000, HORIZON_SECONDS));
    }

    /** Three sizes between those that are really sent. */
    @ParameterizedTest
    @ValueSource(longs = {2800, 11_200, 45_000})
    void progressIsNeverEarlyAndLateByOneOverAtMost(long bytes) {
        StudyResult sent = run(sending(bytes));
        int compared = 0;
        for (CaseTrials trials : sent.cases()) {
            List<SizeTimes> times = SizeTimes.of(progress, trials.direction());
            for (int mode = 0; mode < times.size(); mode++) {
                double[] late = late(
                        times.get(mode).seconds(SizeGrid.BYTES.indexOf(bytes)),
                        trials.modes().get(mode).completionSeconds());
                compared += late.length > 0 ? 1 : 0;
                assertLateByOneOverAtMost(late, scenario.modes().get(mode).arq().longestOverNanos() / 1e9);
            }
        }
        // The slow mode is through with the smallest of the three only.
        assertEquals(bytes < 5000 ? 8 : 6, compared);
    }

    private static void assertLateByOneOverAtMost(double[] late, double longestOverSeconds) {
        if (late.length > 0) {
            double median = OrderedSample.of(late).quantile(0.5);
            double mean = DoubleStream.of(late).average().orElseThrow();
            assertTrue(median >= 0 && median <= longestOverSeconds, "median " + median + " s");
            assertTrue(mean >= 0 && mean <= longestOverSeconds, "mean " + mean + " s");
        }
    }

    private static double[] late(double[] progress, double[] sent) {
        return IntStream.range(0, sent.length)
                .filter(i -> Double.isFinite(progress[i]) && Double.isFinite(sent[i]))
                .mapToDouble(i -> progress[i] - sent[i])
                .toArray();
    }

    private Scenario sending(long bytes) {
        Transfer transfer =
                new Transfer("file", List.of(new PayloadFile("file", bytes)), List.of(Direction.values()), List.of());
        return scenario.sending(List.of(transfer), HORIZON_SECONDS);
    }

    private static StudyResult run(Scenario scenario) {
        return new StudyRunner(scenario, new Trials(scenario)::run, 2, (done, asked) -> {}, () -> false).run();
    }
}
