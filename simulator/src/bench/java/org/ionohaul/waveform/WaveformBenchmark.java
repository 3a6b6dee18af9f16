package org.ionohaul.waveform;

import java.util.concurrent.TimeUnit;
import org.ionohaul.channel.End;
import org.ionohaul.channel.EndConditions;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.Sky;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SlowVariation;
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
 * What it costs to judge a frame: on a steady path (a few samples) and on the disturbed mid-latitude one of ITU-R F.1487
 * (eight sub-bands, samples as the fading asks for them).
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class WaveformBenchmark {
    private static final Emission EMISSION = new Emission(2400, 3);
    private static final int FRAMES = 8;
    private static final long BURST_NANOS = 5_000_000_000L;
    private static final int BURSTS = 200;

    private final Waveform waveform = Waveforms.of(
            new BurstShape(
                    0.2,
                    -5,
                    ModelledFrame.ofBytes(
                            Coding.oneByOne(Modulation.QPSK, 2400, 0.5),
                            new Receiver(8e-3, 20e-3, 2, 25),
                            1.0 / 3,
                            100,
                            4,
                            0)),
            EMISSION,
            Combining.CHASE);
    private final Reception steady = new SteadyReception(8);
    private final Reception disturbed = new Sky(
                    new SkyConditions(
                            FadingCondition.MID_LATITUDE_DISTURBED.paths(),
                            SlowVariation.NONE,
                            Schedule.NONE,
                            EndConditions.quiet(8),
                            EndConditions.quiet(8)),
                    new TrialStreams(1, 0))
            .reception(End.FAR, EMISSION.passband());
    private int next;

    /** A frame on a steady path, to the probability of decoding. */
    @Benchmark
    public double steadyFrame() {
        return frame(steady);
    }

    /** A frame on the disturbed path, fading included. */
    @Benchmark
    public double fadingFrame() {
        return frame(disturbed);
    }

    /** The SNR of a whole burst on the disturbed path, as measured once a burst. */
    @Benchmark
    public double fadingBurstMeasured() {
        next = (next + 1) % BURSTS;
        return waveform.meanSnrDb(disturbed, next * BURST_NANOS, FRAMES);
    }

    private double frame(Reception reception) {
        next = (next + 1) % (BURSTS * FRAMES);
        long start = next / FRAMES * BURST_NANOS;
        return waveform.decodingProbability(waveform.evidence(reception, start, next % FRAMES, FRAMES));
    }
}
