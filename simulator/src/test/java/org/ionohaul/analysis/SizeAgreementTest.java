package org.ionohaul.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.statistics.DiscordantPairs;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.PairedTimes;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.SizeGrid;
import org.ionohaul.study.SizeTransfers;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.StudyRunner;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What progress says about a file size, against really sending such files under the same skies.
 *
 * <p>Progress may be late, as a longer queue may go into longer overs, but by one over at most; it must not be early. Files
 * that never arrive stay in the comparison, as later than any that does: they are counted among pairs and ranks. Each of
 * the sign tests may fail by chance once in 16,000 (4 standard errors).
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class SizeAgreementTest {
    private static final double HORIZON_SECONDS = 3000;
    private static final double CHANCE = 6.3e-5;

    private final Scenario scenario;
    private final StudyResult progress;

    SizeAgreementTest() throws ScenarioProblems {
        scenario = ScenarioReader.read(Path.of("..", "scenarios", "river-watch.toml"), Map.of("trials", "40"));
        progress = run(SizeTransfers.in(scenario, 50_000, HORIZON_SECONDS));
    }

    /** Three sizes beyond those that are really sent. */
    @ParameterizedTest
    @ValueSource(longs = {35_500, 40_000, 45_000})
    void progressIsNeverEarlyAndLateByOneOverAtMost(long bytes) {
        StudyResult sent = run(sending(bytes));
        int compared = 0;
        for (CaseTrials trials : sent.cases()) {
            List<SizeTimes> times = SizeTimes.of(progress, trials.direction());
            for (int mode = 0; mode < times.size(); mode++) {
                PairedTimes pairs = PairedTimes.of(
                        times.get(mode).seconds(SizeGrid.BYTES.indexOf(bytes)),
                        trials.modes().get(mode).completionSeconds());
                compared += pairs.neither().share() < 1 ? 1 : 0;
                assertAsManyArrive(pairs);
                assertLateByOneOverAtMost(
                        pairs, scenario.modes().get(mode).arq().longestOverNanos() / 1e9);
            }
        }
        // The slow mode is through with none of them.
        assertEquals(6, compared);
    }

    private static void assertAsManyArrive(PairedTimes pairs) {
        DiscordantPairs arrivedOnce = pairs.deadlineKeptByOne(Double.MAX_VALUE);
        assertTrue(arrivedOnce.exactPValue() > CHANCE, arrivedOnce.toString());
    }

    /** The median lead of progress over really sending lies between minus one over and nothing, within its interval. */
    private static void assertLateByOneOverAtMost(PairedTimes pairs, double longestOverSeconds) {
        Estimate lead = pairs.lead(0.5, 1 - CHANCE);
        assertTrue(lead.low() <= 0 && lead.high() >= -longestOverSeconds, lead.toString());
        DiscordantPairs signs = pairs.signs();
        assertTrue(signs.first() <= signs.second() || signs.exactPValue() > CHANCE, "early: " + signs);
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
