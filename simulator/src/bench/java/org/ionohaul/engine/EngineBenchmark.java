package org.ionohaul.engine;

import java.util.concurrent.TimeUnit;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The engine's schedule-and-run loop as a hold model: each action schedules itself anew after a drawn delay, so that the
 * list keeps its length. Nanoseconds an event; to be read as ratios of one run.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class EngineBenchmark {
    private static final int EVENTS = 1000;
    private static final int DELAYS = 1 << 12;
    private static final long MEAN_DELAY_NANOS = 1_000_000_000L;

    /** How many events wait at any time; a link has fewer than ten. */
    @Param({"3", "10", "1000", "100000"})
    public int waiting;

    private final Engine engine = new Engine();
    private final long[] delaysNanos = new long[DELAYS];
    private int next;

    /** Fills the list. */
    @Setup
    public void fill() {
        UniformRandomProvider random = new TrialStreams(1, 0).openBlock(Purpose.DIALLING, 0, 0);
        for (int i = 0; i < DELAYS; i++) {
            delaysNanos[i] = random.nextLong(1, 2 * MEAN_DELAY_NANOS);
        }
        for (int i = 0; i < waiting; i++) {
            new Hold().runAgain();
        }
    }

    /** Runs events until an instant in whose span a thousand fall due on average. */
    @Benchmark
    @OperationsPerInvocation(EVENTS)
    public long events() {
        engine.runUntil(engine.nowNanos() + MEAN_DELAY_NANOS * EVENTS / waiting);
        return engine.nowNanos();
    }

    private long delay() {
        next = (next + 1) & (DELAYS - 1);
        return delaysNanos[next];
    }

    /** Bare draws of delays: what of the above is not the engine's. */
    @Benchmark
    @OperationsPerInvocation(EVENTS)
    public long draws() {
        long sum = 0;
        for (int i = 0; i < EVENTS; i++) {
            sum += delay();
        }
        return sum;
    }

    private final class Hold {
        private final Timer timer = engine.timer(this::runAgain);

        void runAgain() {
            timer.start(delay());
        }
    }
}
