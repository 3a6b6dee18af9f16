package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.LongStream;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A prediction's median and deciles from day to day, put into a row of a grid, are what trials draw. */
final class PredictedLevelsTest {
    private static final Path RIVER_WATCH = Path.of("../scenarios/river-watch.toml");
    private static final int TRIALS = 20_000;
    private static final double MEDIAN_DB = 9;

    /** Decile deviations of "mid-latitude" (ITU-R P.842, from memory). */
    private static final double UPPER_DB = 6;

    private static final double LOWER_DB = 8;

    /** Standard deviations from the median to a decile of a normal distribution. */
    private static final double DECILE = 1.2815515655446004;

    /** A right program oversteps this once in 16,000 comparisons. */
    private static final double STANDARD_ERRORS = 4;

    private static double[] levelsDb(String condition) throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(
                RIVER_WATCH, Map.of("near.snr", "9 dB", "sky.day-to-day", "mid-latitude", "sky.condition", condition));
        return LongStream.range(0, TRIALS)
                .mapToDouble(trial -> scenario.sky()
                        .conditions(UncertainDraws.of(scenario.seed(), trial))
                        .near()
                        .snrDb())
                .toArray();
    }

    @Test
    @DisplayName("a tenth, a half and nine tenths of the days lie below the deciles and the median that were put in")
    void theDecilesPutInAreThoseDrawn() throws ScenarioProblems {
        double[] drawn = levelsDb("moderate");
        assertShareBelow(0.1, drawn, MEDIAN_DB - LOWER_DB);
        assertShareBelow(0.5, drawn, MEDIAN_DB);
        assertShareBelow(0.9, drawn, MEDIAN_DB + UPPER_DB);
    }

    private static void assertShareBelow(double share, double[] drawn, double levelDb) {
        double below = (double) Arrays.stream(drawn).filter(it -> it < levelDb).count() / TRIALS;
        assertEquals(share, below, STANDARD_ERRORS * Math.sqrt(share * (1 - share) / TRIALS));
    }

    /**
     * Half a normal on each side: mean (u - l) / (z sqrt(2 pi)), mean square (u^2 + l^2) / (2 z^2). Cutting off beyond three
     * standard deviations takes less than 0.3 % of the variance, which the tolerance allows for.
     */
    @Test
    @DisplayName("the level drawn varies as its deciles say and no more, however the paths fade")
    void fadingIsNotInTheLevelDrawn() throws ScenarioProblems {
        double[] drawn = levelsDb("moderate");
        assertArrayEquals(levelsDb("flat"), drawn);

        double meanDb = (UPPER_DB - LOWER_DB) / (DECILE * Math.sqrt(2 * Math.PI));
        double variance = (UPPER_DB * UPPER_DB + LOWER_DB * LOWER_DB) / (2 * DECILE * DECILE) - meanDb * meanDb;
        double mean = Arrays.stream(drawn).average().orElseThrow();
        double[] squares =
                Arrays.stream(drawn).map(it -> (it - mean) * (it - mean)).toArray();
        double found = Arrays.stream(squares).average().orElseThrow();
        double fourth = Arrays.stream(squares).map(it -> it * it).average().orElseThrow();
        double error = Math.sqrt((fourth - found * found) / TRIALS);
        assertEquals(MEDIAN_DB + meanDb, mean, STANDARD_ERRORS * Math.sqrt(variance / TRIALS));
        assertEquals(variance, found, STANDARD_ERRORS * error + 0.003 * variance);
    }
}
