package org.ionohaul.channel;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What an hour of sky costs, at the instants that the waveforms ask for. To be read as ratios of one run.
 *
 * <p>The path is the disturbed mid-latitude one of ITU-R F.1487: two paths, 1 Hz. Every invocation is a new trial.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SkyBenchmark {
    private static final List<PropagationPath> PATHS = FadingCondition.MID_LATITUDE_DISTURBED.paths();
    private static final double SPREAD_HZ = 1;
    private static final long HOUR_NANOS = 3_600_000_000_000L;
    private static final long STEP_NANOS = 125_000_000;
    private static final int CISOIDS = 32;

    private final double[] gains = new double[2 * PATHS.size()];
    private final double[] hertz = new double[CISOIDS];
    private final double[] phases = new double[CISOIDS];
    private long trial;

    /** Draws the cisoids once: their cost is in the evaluation. */
    public SkyBenchmark() {
        var normal = ZigguratSampler.NormalizedGaussian.of(new TrialStreams(1, 0).openBlock(Purpose.FADING, 0, 0));
        for (int i = 0; i < CISOIDS; i++) {
            hertz[i] = normal.sample() * SPREAD_HZ / 2;
            phases[i] = normal.sample();
        }
    }

    /** The fading of both paths of a new trial. */
    @Benchmark
    public double fading() {
        TrialStreams streams = new TrialStreams(1, trial++);
        PathGain[] paths = {Sky.gain(PATHS.get(0), streams, 0), Sky.gain(PATHS.get(1), streams, 1)};
        double sum = 0;
        for (long t = 0; t < HOUR_NANOS; t += STEP_NANOS) {
            paths[0].at(t, gains, 0);
            paths[1].at(t, gains, 1);
            sum += gains[0] + gains[3];
        }
        return sum;
    }

    /** The same instants by a sum of 32 cisoids a path, each by its sine and cosine. */
    @Benchmark
    public double fadingByCisoids() {
        double sum = 0;
        for (int path = 0; path < PATHS.size(); path++) {
            for (long t = 0; t < HOUR_NANOS; t += STEP_NANOS) {
                double seconds = t * 1e-9;
                double real = 0;
                double imaginary = 0;
                for (int i = 0; i < CISOIDS; i++) {
                    double phase = 2 * Math.PI * hertz[i] * seconds + phases[i];
                    real += Math.cos(phase);
                    imaginary += Math.sin(phase);
                }
                sum += real + imaginary;
            }
        }
        return sum;
    }

    /** No fading: only as many Gaussians drawn, and the kernel's weights looked up and multiplied, as it needs. */
    @Benchmark
    public double fadingBareDrawsAndLookUps() {
        TrialStreams streams = new TrialStreams(1, trial++);
        double steps = HOUR_NANOS * 1e-9 / GaussianKernel.stepSeconds(SPREAD_HZ);
        double sum = 0;
        for (int path = 0; path < PATHS.size(); path++) {
            var normal = ZigguratSampler.NormalizedGaussian.of(streams.openBlock(Purpose.FADING, path, 0));
            double[] noise = new double[2 * (int) steps + 2 * GaussianKernel.POINTS];
            for (int i = 0; i < noise.length; i++) {
                noise[i] = normal.sample();
            }
            double stepsPerSample = STEP_NANOS * 1e-9 / GaussianKernel.stepSeconds(SPREAD_HZ);
            for (int i = 0; i < HOUR_NANOS / STEP_NANOS; i++) {
                double instant = i * stepsPerSample;
                int point = (int) instant;
                GaussianKernel.apply(noise, 2 * point, instant - point, gains, path);
                sum += gains[2 * path];
            }
        }
        return sum;
    }

    /** One end of a new trial's sky with every process on, four sub-bands. */
    @Benchmark
    public double everything() {
        Reception reception = busySky(trial++).reception(End.NEAR, new Passband(2400, 4));
        return hour(reception);
    }

    /** The same with fading alone. */
    @Benchmark
    public double quietSky() {
        EndConditions quiet = EndConditions.quiet(10);
        SkyConditions conditions = new SkyConditions(PATHS, SlowVariation.NONE, Schedule.NONE, quiet, quiet);
        return hour(new Sky(conditions, new TrialStreams(1, trial++)).reception(End.NEAR, new Passband(2400, 4)));
    }

    private static double hour(Reception reception) {
        SinrMeter meter = new SinrMeter();
        double sum = 0;
        for (long t = 0; t < HOUR_NANOS; t += STEP_NANOS) {
            meter.listen(reception, t);
            sum += meter.sinr(0);
        }
        return sum;
    }

    private static Sky busySky(long trial) {
        Schedule dusk = new Schedule(List.of(new Schedule.Point(600, 0), new Schedule.Point(1800, 6)));
        EndConditions busy =
                new EndConditions(10, dusk, new ImpulsiveNoise(0.02, 15, 0.02), Congestion.BUSY_EVENING.populations());
        return new Sky(
                new SkyConditions(PATHS, new SlowVariation(2.5, 45), dusk, busy, busy), new TrialStreams(1, trial));
    }
}
