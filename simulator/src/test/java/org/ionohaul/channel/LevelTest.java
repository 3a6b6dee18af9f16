package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The level over the clock, its slow variation against the closed forms of a Gauss-Markov process in dB. */
final class LevelTest {
    private static final double DEVIATION_DB = 2.5;
    private static final double TIME_CONSTANT_SECONDS = 45;
    private static final SlowVariation VARIATION = new SlowVariation(DEVIATION_DB, TIME_CONSTANT_SECONDS);
    private static final int TRIALS = 20_000;

    /** Normal: mean 0, mean square the variance, from the first instant on. */
    @ParameterizedTest
    @CsvSource({"0", "45", "600"})
    void levelIsStationaryFromTheStart(double atSeconds) {
        sample("slow level at " + atSeconds + " s", 0, level -> levelDb(level, atSeconds));
        sample(
                "mean square of the slow level at " + atSeconds + " s",
                DEVIATION_DB * DEVIATION_DB,
                level -> Math.pow(levelDb(level, atSeconds), 2));
    }

    /** Correlation exp(-lag / time constant); the lags are whole numbers of grid steps. */
    @ParameterizedTest
    @CsvSource({"11.25", "22.5", "45", "90"})
    void correlationDecaysExponentially(double lagSeconds) {
        double theory = DEVIATION_DB * DEVIATION_DB * Math.exp(-lagSeconds / TIME_CONSTANT_SECONDS);
        sample(
                "covariance of the slow level at " + lagSeconds + " s",
                theory,
                level -> levelDb(level, 45) * levelDb(level, 45 + lagSeconds));
    }

    /** The mean of a log-normal power is exp((sigma ln 10 / 10)^2 / 2) times its median. */
    @Test
    void powerIsLogNormal() {
        double nepers = DEVIATION_DB * Math.log(10) / 10;
        sample("mean power of the slow level", Math.exp(nepers * nepers / 2), level -> level.ratio(nanos(90)));
    }

    /** Ten hours to decorrelate, and four minutes in which the scheduled level is 30 dB lower. */
    @ParameterizedTest
    @CsvSource({"600, 0", "719, 0", "721, -30", "840, -30", "959, -30", "961, 0"})
    void aShortScheduledDipIsKeptHoweverSlowTheVariation(double atSeconds, double scheduledDb) {
        Schedule dip = new Schedule(List.of(
                new Schedule.Point(719.5, 0),
                new Schedule.Point(720, -30),
                new Schedule.Point(960, -30),
                new Schedule.Point(960.5, 0)));
        Level level = level(dip, new SlowVariation(1e-4, 36_000), 3);
        assertEquals(scheduledDb, levelDb(level, atSeconds), 1e-3);
    }

    /** On the grid of a schedule, 1 s, as on the grid of the variation alone. */
    @ParameterizedTest
    @CsvSource({"150", "600"})
    void aScheduleLeavesTheCorrelationAlone(double lagSeconds) {
        Schedule flat = new Schedule(List.of(new Schedule.Point(0, 0)));
        SlowVariation slow = new SlowVariation(DEVIATION_DB, 600);
        double[] sample = LongStream.range(0, TRIALS)
                .mapToObj((LongFunction<Level>) trial -> level(flat, slow, trial))
                .mapToDouble(level -> levelDb(level, 10) * levelDb(level, 10 + lagSeconds))
                .toArray();
        double theory = DEVIATION_DB * DEVIATION_DB * Math.exp(-lagSeconds / 600);
        StatisticalCheck.ofMean("covariance under a schedule at " + lagSeconds + " s", sample, theory)
                .verify();
    }

    @Test
    void anyOrderOfAskingGivesTheSameBits() {
        Level forward = level(VARIATION, 3);
        Level backward = level(VARIATION, 3);
        double early = levelDb(forward, 10);
        double late = levelDb(forward, 86_400);
        assertEquals(late, levelDb(backward, 86_400));
        assertEquals(early, levelDb(backward, 10));
    }

    @Test
    void switchedOffItIsNothing() {
        assertEquals(1, level(SlowVariation.NONE, 0).ratio(nanos(100)));
    }

    @Test
    void variationThatIsNotSlowIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new SlowVariation(2, 0.1));
        assertThrows(IllegalArgumentException.class, () -> new SlowVariation(-2, 45));
        assertThrows(IllegalArgumentException.class, () -> new SlowVariation(Double.NaN, 45));
    }

    private static void sample(String name, double theory, LevelStatistic statistic) {
        double[] sample = LongStream.range(0, TRIALS)
                .mapToObj((LongFunction<Level>) trial -> level(VARIATION, trial))
                .mapToDouble(statistic::of)
                .toArray();
        StatisticalCheck.ofMean(name, sample, theory).verify();
    }

    private static Level level(SlowVariation variation, long trial) {
        return level(Schedule.NONE, variation, trial);
    }

    private static Level level(Schedule scheduleDb, SlowVariation variation, long trial) {
        TrialStreams streams = new TrialStreams(20_260_102, trial);
        return new Level(scheduleDb, variation, streams.openBlock(Purpose.SLOW_VARIATION, 0, 0));
    }

    private static double levelDb(Level level, double atSeconds) {
        return Decibels.ofRatio(level.ratio(nanos(atSeconds)));
    }

    private static long nanos(double seconds) {
        return Math.round(seconds * 1e9);
    }

    @FunctionalInterface
    private interface LevelStatistic {
        double of(Level level);
    }
}
