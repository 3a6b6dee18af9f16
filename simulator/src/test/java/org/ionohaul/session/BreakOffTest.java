package org.ionohaul.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.ionohaul.channel.End;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;

/**
 * Links that break off: what restarting costs and resuming cures. Breaks come at exponential times, 20 minutes apart on
 * average, and last just long enough to lose the link.
 */
final class BreakOffTest {
    private static final long MINUTE = 60 * Bench.SECOND;
    private static final double MEAN_BETWEEN_MINUTES = 20;
    private static final long OUTAGE = 11 * Bench.SECOND;
    private static final int TRIALS = 1500;

    @Test
    void anHourOfAirtimeTakesSixHoursWithRestartsAndLittleMoreThanOneWithResumption() {
        double[] restart = minutes(false);
        double[] resume = minutes(true);
        // Restart: (e^(T / m) - 1) (m + c) for T of airtime, breaks every m, c lost a break (exponential failures; e.g.
        // the
        // computer-science folklore of checkpointing, A. Duda 1983). A break costs the rest of the silence and
        // redialling.
        double restarts = Math.expm1(60 / MEAN_BETWEEN_MINUTES);
        double breakMinutes = 0.4;
        double expected = restarts * (MEAN_BETWEEN_MINUTES + breakMinutes);
        double mean = mean(restart);
        assertEquals(expected, mean, 4 * standardError(restart) + 0.02 * expected);
        assertEquals(60 + 3 * breakMinutes, mean(resume), 1.5);
        // Even for one fixed size the time with restarts is as good as exponential: its 99th in 100 is ln 100 / ln 2 =
        // 6.6
        // times its median; with resumption hardly more than the median itself.
        assertTrue(quantile(restart, 0.99) > 5 * quantile(restart, 0.5));
        assertTrue(quantile(resume, 0.99) < 1.1 * quantile(resume, 0.5));
    }

    @Test
    void withRestartsLightTailedSizesGiveHeavyTailedTimes() {
        // Exponential sizes of mean 10 minutes: P(time > t) falls like t^-2, 2 = 20 / 10 (P. Jelenkovic and J. Tan,
        // arXiv:0709.1138), so its mean is finite and its variance is not; with resumption the tail is as light as the
        // sizes'. Hill's estimator on the largest 2 % reads off the power; a light tail gives a much larger number.
        double[] restart = minutesOfDrawnSizes(false);
        double[] resume = minutesOfDrawnSizes(true);
        double restartPower = hill(restart, restart.length / 50);
        double resumePower = hill(resume, resume.length / 50);
        assertEquals(2, restartPower, 4 * 2 / Math.sqrt(restart.length / 50.0));
        assertTrue(resumePower > 1.6 * restartPower, "restart " + restartPower + ", resume " + resumePower);
    }

    private static double[] minutes(boolean resumes) {
        double[] minutes = new double[TRIALS];
        for (int trial = 0; trial < TRIALS; trial++) {
            minutes[trial] = run(trial, 360, resumes);
        }
        return minutes;
    }

    private static double[] minutesOfDrawnSizes(boolean resumes) {
        ContinuousSampler sizes =
                ZigguratSampler.Exponential.of(new TrialStreams(8, 0).open(Purpose.UNCERTAIN_INPUT, 0), 60);
        double[] minutes = new double[20_000];
        for (int trial = 0; trial < minutes.length; trial++) {
            minutes[trial] = run(trial, (int) Math.ceil(sizes.sample()), resumes);
        }
        return minutes;
    }

    /** Runs a transfer of so many cycles of 10 s. */
    private static double run(long trial, int cycles, boolean resumes) {
        Outages outages = new Outages(new TrialStreams(4, trial).open(Purpose.INTERFERENCE, 0));
        Bench bench = new Bench();
        bench.window = 1;
        bench.shortOver = 1;
        bench.longOver = 1;
        bench.silencesToLost = 1;
        bench.dataRates = List.of(certain(100, 9800 * Bench.MILLI).with(outages));
        bench.acknowledgement = certain(0, 180 * Bench.MILLI);
        bench.call = certain(0, 100 * Bench.MILLI).with(outages);
        bench.control = certain(0, 100 * Bench.MILLI);
        bench.rules = new SessionRules(1000, Bench.SECOND, 0, 1000, resumes, 1_000_000, true, OUTAGE);
        bench.cargo = Cargo.from(End.NEAR, List.of(100L * cycles));
        return bench.run(trial, Long.MAX_VALUE - 1).deliveredNanos().orElseThrow() / (double) MINUTE;
    }

    private static PlainWaveform certain(int payloadBytes, long nanos) {
        return PlainWaveform.certain(payloadBytes, 0, nanos);
    }

    private static double mean(double[] sample) {
        return Arrays.stream(sample).average().orElseThrow();
    }

    private static double standardError(double[] sample) {
        double mean = mean(sample);
        double squares =
                Arrays.stream(sample).map(it -> (it - mean) * (it - mean)).sum();
        return Math.sqrt(squares / (sample.length - 1) / sample.length);
    }

    private static double quantile(double[] sample, double probability) {
        double[] sorted = sample.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.ceil(probability * sorted.length) - 1];
    }

    /** Returns Hill's estimate of the power of the tail from the largest values. */
    private static double hill(double[] sample, int largest) {
        double[] sorted = sample.clone();
        Arrays.sort(sorted);
        double threshold = Math.log(sorted[sorted.length - 1 - largest]);
        double sum = 0;
        for (int at = sorted.length - largest; at < sorted.length; at++) {
            sum += Math.log(sorted[at]) - threshold;
        }
        return largest / sum;
    }

    /** Whether the path is up, asked forwards in time. */
    private static final class Outages implements PlainWaveform.Chance {
        private final ContinuousSampler gaps;
        private long nextNanos;

        Outages(UniformRandomProvider random) {
            gaps = ZigguratSampler.Exponential.of(random, MEAN_BETWEEN_MINUTES);
            nextNanos = Math.round(gaps.sample() * MINUTE);
        }

        @Override
        public double of(End listener, long startNanos) {
            while (startNanos >= nextNanos + OUTAGE) {
                nextNanos += OUTAGE + Math.round(gaps.sample() * MINUTE);
            }
            return startNanos >= nextNanos ? 0 : 1;
        }
    }
}
