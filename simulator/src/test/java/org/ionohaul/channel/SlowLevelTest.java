package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The slow variation against the closed forms of a Gauss-Markov process in dB. */
final class SlowLevelTest {
    private static final double DEVIATION_DB = 2.5;
    private static final double TIME_CONSTANT_SECONDS = 45;
    private static final SlowVariation VARIATION = new SlowVariation(DEVIATION_DB, TIME_CONSTANT_SECONDS);
    private static final int TRIALS = 20_000;

    /** Normal: mean 0, mean square the variance, from the first instant on. */
    @ParameterizedTest
    @CsvSource({"0", "45", "600"})
    void levelIsStationaryFromTheStart(double atSeconds) {
        sample("slow level at " + atSeconds + " s", 0, level -> level.levelDb(nanos(atSeconds)));
        sample(
                "its mean square at " + atSeconds + " s",
                DEVIATION_DB * DEVIATION_DB,
                level -> Math.pow(level.levelDb(nanos(atSeconds)), 2));
    }

    /** Correlation exp(-lag / time constant); the lags are whole numbers of grid steps. */
    @ParameterizedTest
    @CsvSource({"11.25", "22.5", "45", "90"})
    void correlationDecaysExponentially(double lagSeconds) {
        double theory = DEVIATION_DB * DEVIATION_DB * Math.exp(-lagSeconds / TIME_CONSTANT_SECONDS);
        sample(
                "covariance of the slow level at " + lagSeconds + " s",
                theory,
                level -> level.levelDb(nanos(45)) * level.levelDb(nanos(45 + lagSeconds)));
    }

    /** The mean of a log-normal power is exp((sigma ln 10 / 10)^2 / 2) times its median. */
    @Test
    void powerIsLogNormal() {
        double nepers = DEVIATION_DB * Math.log(10) / 10;
        sample(
                "mean power of the slow level",
                Math.exp(nepers * nepers / 2),
                level -> Decibels.toRatio(level.levelDb(nanos(90))));
    }

    @Test
    void anyOrderOfAskingGivesTheSameBits() {
        SlowLevel forward = level(3);
        SlowLevel backward = level(3);
        double early = forward.levelDb(nanos(10));
        double late = forward.levelDb(nanos(86_400));
        assertEquals(late, backward.levelDb(nanos(86_400)));
        assertEquals(early, backward.levelDb(nanos(10)));
    }

    @Test
    void switchedOffItIsNothing() {
        assertEquals(0, new SlowLevel(SlowVariation.NONE, new TrialStreams(1, 0)).levelDb(nanos(100)));
    }

    @Test
    void variationThatIsNotSlowIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new SlowVariation(2, 0.1));
        assertThrows(IllegalArgumentException.class, () -> new SlowVariation(-2, 45));
        assertThrows(IllegalArgumentException.class, () -> new SlowVariation(Double.NaN, 45));
    }

    private static void sample(String name, double theory, LevelStatistic statistic) {
        double[] sample = LongStream.range(0, TRIALS)
                .mapToObj((LongFunction<SlowLevel>) SlowLevelTest::level)
                .mapToDouble(statistic::of)
                .toArray();
        StatisticalCheck.ofMean(name, sample, theory).verify();
    }

    private static SlowLevel level(long trial) {
        return new SlowLevel(VARIATION, new TrialStreams(20_260_102, trial));
    }

    private static long nanos(double seconds) {
        return Math.round(seconds * 1e9);
    }

    @FunctionalInterface
    private interface LevelStatistic {
        double of(SlowLevel level);
    }
}
