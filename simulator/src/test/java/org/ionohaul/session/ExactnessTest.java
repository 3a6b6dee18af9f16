package org.ionohaul.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.apache.commons.statistics.distribution.PascalDistribution;
import org.ionohaul.channel.End;
import org.ionohaul.link.ArqScheme;
import org.ionohaul.link.StationTimes;
import org.junit.jupiter.api.Test;

/**
 * With independent losses a link must equal closed forms and textbooks' examples. The seed is fixed; a simulated mean may
 * be four standard errors off, which a right program oversteps once in 16 000 comparisons.
 *
 * <p>The table is kept in {@code results/reference/arq-oracles.csv}; renew it with {@code mvn test -Dtest=ExactnessTest
 * -Dgolden.renew=true} and review the difference.
 */
final class ExactnessTest {
    private static final Path TABLE = Path.of("..", "results", "reference", "arq-oracles.csv");
    private static final int TRIALS = 20_000;
    private static final long FRAMES = 200_000;
    private static final double EXACT = 1e-12;
    private static final StationTimes AT_ONCE = new StationTimes(0, 0, 0, 0);

    private final List<String> lines = new ArrayList<>(List.of("oracle,quantity,expected,observed,standard error,z"));

    @Test
    void theLinkEqualsItsClosedForms() throws IOException {
        selectiveRepeatInRounds(1, 0.5, 2.000000, 0.750000, 2, 2);
        selectiveRepeatInRounds(10, 0.1, 1.758005, 0.904382, 11.1111, 1.2346);
        selectiveRepeatInRounds(10, 0.5, 4.725559, 0.056314, 20, 20);
        selectiveRepeatInRounds(100, 0.1, 2.740210, 0.366032, 111.1111, 12.3457);
        selectiveRepeatInRounds(128, 0.1, 2.858090, 0.276252, 142.2222, 15.8025);
        stopAndWaitWithLostAcknowledgements();
        goBackN(1, 0.2);
        goBackN(4, 0.1);
        goBackN(8, 0.3);
        goBackN(16, 0.05);
        selectiveRepeatWithWindow(1, 0.2);
        selectiveRepeatWithWindow(8, 0.3);
        selectiveRepeatWithWindow(16, 0.05);
        textbookExamples();
        assertEquals(1 + 5 * 3 + 6 + 4 + 3 + 5, lines.size());
        if (Boolean.getBoolean("golden.renew")) {
            Files.write(TABLE, lines);
        }
        assertEquals(Files.readAllLines(TABLE), lines);
    }

    /** {@code P(T <= t) = (1 - p^t)^N} rounds, its sum E[T]; frames sent: mean N / (1 - p), variance N p / (1 - p)^2. */
    private void selectiveRepeatInRounds(
            int frames, double loss, double meanRounds, double withinTwo, double meanFrames, double varianceFrames) {
        Bench bench = lossy(frames, loss);
        bench.cargo = Cargo.from(End.NEAR, List.of(10L * frames));
        double[] rounds = new double[TRIALS];
        double[] sent = new double[TRIALS];
        for (int trial = 0; trial < TRIALS; trial++) {
            SessionResult result = bench.run(trial);
            rounds[trial] = result.oversSent();
            sent[trial] = result.dataRates().get(0).framesSent();
        }
        String name = String.format(Locale.ROOT, "selective repeat in rounds N=%d p=%.1f", frames, loss);
        compare(name, "mean rounds", meanRounds, mean(rounds), error(rounds));
        compareShare(name, "P(rounds <= 2)", withinTwo, rounds, 2);
        compare(name, "mean frames", meanFrames, mean(sent), Math.sqrt(varianceFrames / TRIALS));
    }

    /** N = 50, frame loss 0.2, acknowledgement loss 0.1: negative binomial, mean 69.44, SD 5.197, 69/78/83. */
    private void stopAndWaitWithLostAcknowledgements() {
        Bench bench = lossy(1, 0.2);
        bench.scheme = ArqScheme.STOP_AND_WAIT;
        bench.acknowledgement = PlainWaveform.losing(0, 50 * Bench.MILLI, 50 * Bench.MILLI, 0.1);
        bench.cargo = Cargo.from(End.NEAR, List.of(500L));
        double[] overs = new double[TRIALS];
        for (int trial = 0; trial < TRIALS; trial++) {
            overs[trial] = bench.run(trial).oversSent();
        }
        String name = "stop-and-wait N=50 p=0.2 q=0.1";
        compare(name, "mean overs", 69.4444, mean(overs), 5.197 / Math.sqrt(TRIALS));
        compare(name, "SD of overs", 5.197, Math.sqrt(variance(overs)), 5.197 / Math.sqrt(2.0 * TRIALS));
        PascalDistribution failures = PascalDistribution.of(50, 0.8 * 0.9);
        double[] probabilities = {0.5, 0.95, 0.99};
        int[] quantiles = {69, 78, 83};
        for (int at = 0; at < quantiles.length; at++) {
            assertEquals(quantiles[at], 50 + failures.inverseCumulativeProbability(probabilities[at]));
            double expected = failures.cumulativeProbability(quantiles[at] - 50);
            compareShare(name, "P(overs <= " + quantiles[at] + ")", expected, overs, quantiles[at]);
        }
        compareShare(name, "P(overs <= 60)", failures.cumulativeProbability(10), overs, 60);
    }

    /** Half-duplex go-back-N delivers the run before the first loss: the sum over k = 1..W of (1 - p)^k a cycle. */
    private void goBackN(int window, double loss) {
        Bench bench = lossy(window, loss);
        bench.scheme = ArqScheme.GO_BACK_N;
        double success = 1 - loss;
        double mean = success * (1 - Math.pow(success, window)) / loss;
        // E[run^2] from P(run >= k) = (1 - p)^k.
        double square = 0;
        for (int k = 1; k <= window; k++) {
            square += (2 * k - 1) * Math.pow(success, k);
        }
        int overs = bench.run(0).oversSent();
        double error = Math.sqrt((square - mean * mean) / overs);
        compare(named("go-back-N", window, loss), "frames a cycle", mean, (double) FRAMES / overs, error);
    }

    /** With a long queue half-duplex selective repeat delivers W (1 - p) frames a cycle. */
    private void selectiveRepeatWithWindow(int window, double loss) {
        int overs = lossy(window, loss).run(0).oversSent();
        double error = Math.sqrt(window * loss * (1 - loss) / overs);
        double observed = (double) FRAMES / overs;
        compare(named("selective repeat", window, loss), "frames a cycle", window * (1 - loss), observed, error);
    }

    private static String named(String scheme, int window, double loss) {
        return String.format(Locale.ROOT, "%s W=%d p=%.2f", scheme, window, loss);
    }

    /**
     * A textbook's full-duplex pipeline gets the acknowledgement of a window's first frame while it sends the others; a
     * half-duplex link has the same cycle when the round trip is shorter by those frames.
     */
    private void textbookExamples() {
        // Exercise (solutionsadda.in q7941): 2000 B at 1 Mb/s, 20 B acknowledgement, 0.75 ms each way, 0.25 ms
        // processing.
        example("stop-and-wait 2000 B 1 Mb/s", "16/17.91", 1, 16_000_000, 750_000, 160_000, 250_000, 16 / 17.91);
        // 1000 bit at 64 kb/s, 240 ms each way: idle 480/495.6 of the time; the frame takes 15.625 ms.
        example("stop-and-wait 64 kb/s satellite", "1-480/495.6", 1, 15_625_000, 240_000_000, 0, 0, 1 - 480 / 495.625);
        // 512 B at 64 kb/s, 540 ms round trip: 6.7815 and 47.4702 kb/s.
        example("window 512 B 64 kb/s W=1", "6.7815/64", 1, 64_000_000, 270_000_000, 0, 0, 64 / 604.0);
        example("window 512 B 64 kb/s W=7", "47.4702/64", 7, 64_000_000, 78_000_000, 0, 0, 448 / 604.0);
        // Go-back-N, 20 kb/s, 100 B, 400 ms each way, N = 10.
        example("go-back-N 20 kb/s N=10", "10/21", 10, 40_000_000, 220_000_000, 0, 0, 10 / 21.0);
    }

    private void example(
            String name,
            String quantity,
            int window,
            long frameNanos,
            long propagationNanos,
            long answerNanos,
            long processingNanos,
            double expected) {
        Bench bench = lossy(window, 0);
        bench.scheme = window == 1 ? ArqScheme.STOP_AND_WAIT : ArqScheme.GO_BACK_N;
        bench.propagation = propagationNanos;
        bench.near = AT_ONCE;
        bench.far = new StationTimes(0, 0, 0, processingNanos);
        bench.dataRates = List.of(PlainWaveform.certain(10, 0, frameNanos));
        bench.acknowledgement = PlainWaveform.certain(0, 0, answerNanos);
        bench.cargo = Cargo.from(End.NEAR, List.of(10L * window * 50));
        double observed = efficiency(bench.run(0).progress(), frameNanos);
        assertEquals(expected, observed, EXACT, name);
        lines.add(String.format(Locale.ROOT, "%s,%s,%.6f,%.6f,0,exact", name, quantity, expected, observed));
    }

    /** Share of the time of whole cycles that new frames of 10 bytes are on the air. */
    private static double efficiency(ProgressCurve progress, long frameNanos) {
        int cycles = progress.size() - 1;
        long frames = (progress.heldBytes(cycles) - progress.heldBytes(0)) / 10;
        return (double) frames * frameNanos / (progress.atNanos(cycles) - progress.atNanos(0));
    }

    /** A bench with frames of 10 bytes that get lost, overs as long as the window, and a long queue. */
    private static Bench lossy(int window, double loss) {
        Bench bench = new Bench();
        bench.window = window;
        bench.shortOver = window;
        bench.longOver = window;
        bench.silencesToLost = 1000;
        bench.dataRates = List.of(PlainWaveform.losing(10, 200 * Bench.MILLI, 100 * Bench.MILLI, loss));
        bench.cargo = Cargo.from(End.NEAR, List.of(10L * FRAMES));
        return bench;
    }

    private void compareShare(String name, String quantity, double expected, double[] sample, double most) {
        double share = (double) Arrays.stream(sample).filter(it -> it <= most).count() / sample.length;
        compare(name, quantity, expected, share, Math.sqrt(expected * (1 - expected) / sample.length));
    }

    private void compare(String name, String quantity, double expected, double observed, double error) {
        double z = (observed - expected) / error;
        lines.add(
                String.format(Locale.ROOT, "%s,%s,%.6f,%.6f,%.6f,%+.2f", name, quantity, expected, observed, error, z));
        assertTrue(Math.abs(z) <= 4, lines.get(lines.size() - 1));
    }

    private static double mean(double[] sample) {
        return DoubleStream.of(sample).average().orElseThrow();
    }

    private static double error(double[] sample) {
        return Math.sqrt(variance(sample) / sample.length);
    }

    private static double variance(double[] sample) {
        double mean = mean(sample);
        return DoubleStream.of(sample).map(it -> (it - mean) * (it - mean)).sum() / (sample.length - 1);
    }
}
