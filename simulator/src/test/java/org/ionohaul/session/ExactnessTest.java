package org.ionohaul.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.statistics.distribution.PascalDistribution;
import org.ionohaul.channel.End;
import org.ionohaul.link.ArqScheme;
import org.ionohaul.link.StationTimes;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * With independent losses a link must equal closed forms. Tolerance throughout: four standard errors, which a right
 * program oversteps once in 16 000 comparisons; the seed is fixed.
 */
final class ExactnessTest {
    private static final int TRIALS = 20_000;

    @ParameterizedTest
    @CsvSource({
        // Selective repeat in rounds: P(T <= t) = (1 - p^t)^N, E[T] its sum; frames N / (1 - p), variance N p / (1 -
        // p)^2.
        "1, 0.5, 2.000000, 0.750000, 2, 2",
        "10, 0.1, 1.758005, 0.904382, 11.1111, 1.2346",
        "10, 0.5, 4.725559, 0.056314, 20, 20",
        "100, 0.1, 2.740210, 0.366032, 111.1111, 12.3457",
        "128, 0.1, 2.858090, 0.276252, 142.2222, 15.8025"
    })
    void selectiveRepeatTakesTheRoundsOfItsClosedForm(
            int frames, double loss, double meanRounds, double withinTwo, double meanFrames, double varianceFrames) {
        Bench bench = new Bench();
        bench.window = frames;
        bench.shortOver = frames;
        bench.longOver = frames;
        bench.levels = List.of(PlainWaveform.losing(10, 200 * Bench.MILLI, 100 * Bench.MILLI, loss));
        bench.silencesToLost = 1000;
        bench.cargo = Cargo.from(End.NEAR, List.of(10L * frames));
        double[] rounds = new double[TRIALS];
        double[] sent = new double[TRIALS];
        for (int trial = 0; trial < TRIALS; trial++) {
            SessionResult result = bench.run(trial);
            rounds[trial] = result.oversSent();
            sent[trial] = result.levels().get(0).framesSent();
        }
        assertMean(meanRounds, rounds);
        double share = Arrays.stream(rounds).filter(it -> it <= 2).count() / (double) TRIALS;
        assertEquals(withinTwo, share, 4 * Math.sqrt(withinTwo * (1 - withinTwo) / TRIALS));
        assertEquals(meanFrames, mean(sent), 4 * Math.sqrt(varianceFrames / TRIALS) + 5e-5);
        assertEquals(varianceFrames, variance(sent), 0.1 * varianceFrames);
    }

    @Test
    @DisplayName("Stop-and-wait with lost acknowledgements follows the negative binomial law (N 50, loss 0.2 and 0.1)")
    void stopAndWaitIsNegativeBinomial() {
        Bench bench = new Bench();
        bench.scheme = ArqScheme.STOP_AND_WAIT;
        bench.silencesToLost = 1000;
        bench.levels = List.of(PlainWaveform.losing(10, 200 * Bench.MILLI, 100 * Bench.MILLI, 0.2));
        bench.acknowledgement = PlainWaveform.losing(0, 50 * Bench.MILLI, 50 * Bench.MILLI, 0.1);
        bench.cargo = Cargo.from(End.NEAR, List.of(500L));
        double[] overs = new double[TRIALS];
        for (int trial = 0; trial < TRIALS; trial++) {
            overs[trial] = bench.run(trial).oversSent();
        }
        assertEquals(69.44, mean(overs), 4 * 5.197 / Math.sqrt(TRIALS) + 0.005);
        assertEquals(5.197, Math.sqrt(variance(overs)), 4 * 5.197 / Math.sqrt(2.0 * TRIALS));
        PascalDistribution failures = PascalDistribution.of(50, 0.8 * 0.9);
        for (int most : new int[] {60, 65, 69, 74, 78, 83}) {
            double expected = failures.cumulativeProbability(most - 50);
            double share = Arrays.stream(overs).filter(it -> it <= most).count() / (double) TRIALS;
            assertEquals(expected, share, 4 * Math.sqrt(expected * (1 - expected) / TRIALS));
        }
        assertEquals(69, 50 + failures.inverseCumulativeProbability(0.5));
        assertEquals(78, 50 + failures.inverseCumulativeProbability(0.95));
        assertEquals(83, 50 + failures.inverseCumulativeProbability(0.99));
    }

    @ParameterizedTest
    @CsvSource({"1, 0.2", "4, 0.1", "8, 0.3", "16, 0.05"})
    void goBackNDeliversTheMeanRunBeforeTheFirstLossEachCycle(int window, double loss) {
        Bench bench = new Bench();
        bench.scheme = ArqScheme.GO_BACK_N;
        bench.window = window;
        bench.shortOver = window;
        bench.longOver = window;
        bench.levels = List.of(PlainWaveform.losing(10, 200 * Bench.MILLI, 100 * Bench.MILLI, loss));
        bench.silencesToLost = 1000;
        bench.cargo = Cargo.from(End.NEAR, List.of(2_000_000L));
        int overs = bench.run(0).oversSent();
        // Sum over k = 1..W of (1-p)^k; its variance is at most W^2 / 4.
        double mean = (1 - loss) * (1 - Math.pow(1 - loss, window)) / loss;
        assertEquals(mean, 200_000.0 / overs, 4 * window / 2.0 / Math.sqrt(overs));
    }

    @ParameterizedTest
    @CsvSource({"1, 0.2", "8, 0.3", "16, 0.05"})
    void selectiveRepeatWithAWindowDeliversTheShareNotLostEachCycle(int window, double loss) {
        Bench bench = new Bench();
        bench.window = window;
        bench.shortOver = window;
        bench.longOver = window;
        bench.levels = List.of(PlainWaveform.losing(10, 200 * Bench.MILLI, 100 * Bench.MILLI, loss));
        bench.silencesToLost = 1000;
        bench.cargo = Cargo.from(End.NEAR, List.of(2_000_000L));
        int overs = bench.run(0).oversSent();
        double error = Math.sqrt(window * loss * (1 - loss) / overs);
        assertEquals(window * (1 - loss), 200_000.0 / overs, 4 * error + 1e-3 * window);
    }

    @Test
    @DisplayName(
            "Stop-and-wait example: 2000 B at 1 Mb/s, 20 B acknowledgement, 0.75 ms each way, 0.25 ms processing: 16/17.91")
    void stopAndWaitExampleOfTheTextbook() {
        Bench bench = new Bench();
        bench.scheme = ArqScheme.STOP_AND_WAIT;
        bench.propagation = 750_000;
        bench.near = new StationTimes(0, 0, 0, 0);
        bench.far = new StationTimes(0, 0, 0, 250_000);
        bench.levels = List.of(PlainWaveform.certain(1980, 0, 16 * Bench.MILLI));
        bench.acknowledgement = PlainWaveform.certain(0, 0, 160_000);
        bench.cargo = Cargo.from(End.NEAR, List.of(1980L * 100));
        assertEquals(16 / 17.91, efficiency(bench, 16 * Bench.MILLI), 1e-12);
    }

    @Test
    @DisplayName("Stop-and-wait example: 1000 bit at 64 kb/s, 240 ms each way: idle 480/495.6 of the time")
    void stopAndWaitOverASatellite() {
        Bench bench = new Bench();
        bench.scheme = ArqScheme.STOP_AND_WAIT;
        bench.propagation = 240 * Bench.MILLI;
        bench.near = new StationTimes(0, 0, 0, 0);
        bench.far = new StationTimes(0, 0, 0, 0);
        bench.levels = List.of(PlainWaveform.certain(125, 0, 15_625_000));
        bench.acknowledgement = PlainWaveform.certain(0, 0, 0);
        bench.cargo = Cargo.from(End.NEAR, List.of(125L * 100));
        // The example rounds the frame's 15.625 ms to 15.6 ms.
        assertEquals(1 - 480 / 495.625, efficiency(bench, 15_625_000), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"1, 6.7815", "7, 47.4702"})
    @DisplayName("Window example: 512 B at 64 kb/s, 270 ms each way")
    void windowExample(int window, double kilobitsPerSecond) {
        Bench bench = new Bench();
        bench.window = window;
        bench.shortOver = window;
        bench.longOver = window;
        // A full-duplex pipeline gets the acknowledgement of a window's first frame while it sends the others; a
        // half-duplex
        // link has the same cycle when the round trip is shorter by those frames.
        long frameNanos = 64 * Bench.MILLI;
        bench.propagation = 270 * Bench.MILLI - (window - 1) * frameNanos / 2;
        bench.near = new StationTimes(0, 0, 0, 0);
        bench.far = new StationTimes(0, 0, 0, 0);
        bench.levels = List.of(PlainWaveform.certain(512, 0, frameNanos));
        bench.acknowledgement = PlainWaveform.certain(0, 0, 0);
        bench.cargo = Cargo.from(End.NEAR, List.of(512L * window * 50));
        assertEquals(kilobitsPerSecond, 64 * efficiency(bench, frameNanos), 5e-5);
    }

    @Test
    @DisplayName("Go-back-N example: 20 kb/s, 400 ms each way, 100 B, N = 10: 10/21")
    void goBackNExample() {
        Bench bench = new Bench();
        bench.scheme = ArqScheme.GO_BACK_N;
        bench.window = 10;
        bench.shortOver = 10;
        bench.longOver = 10;
        long frameNanos = 40 * Bench.MILLI;
        bench.propagation = 400 * Bench.MILLI - 9 * frameNanos / 2;
        bench.near = new StationTimes(0, 0, 0, 0);
        bench.far = new StationTimes(0, 0, 0, 0);
        bench.levels = List.of(PlainWaveform.certain(100, 0, frameNanos));
        bench.acknowledgement = PlainWaveform.certain(0, 0, 0);
        bench.cargo = Cargo.from(End.NEAR, List.of(100L * 10 * 50));
        assertEquals(10 / 21.0, efficiency(bench, frameNanos), 1e-12);
    }

    /** Share of the time of whole cycles that new frames are on the air. */
    private static double efficiency(Bench bench, long frameNanos) {
        SessionResult result = bench.run(0);
        ProgressCurve progress = result.progress();
        int cycles = progress.size() - 1;
        long nanos = progress.atNanos(cycles) - progress.atNanos(0);
        long bytes = progress.heldBytes(cycles) - progress.heldBytes(0);
        long frames = bytes / bench.levels.get(0).payloadBytes();
        assertTrue(cycles > 10);
        return (double) frames * frameNanos / nanos;
    }

    private static void assertMean(double expected, double[] sample) {
        assertEquals(expected, mean(sample), 4 * Math.sqrt(variance(sample) / sample.length) + 5e-7);
    }

    private static double mean(double[] sample) {
        return Arrays.stream(sample).average().orElseThrow();
    }

    private static double variance(double[] sample) {
        double mean = mean(sample);
        return Arrays.stream(sample).map(it -> (it - mean) * (it - mean)).sum() / (sample.length - 1);
    }
}
