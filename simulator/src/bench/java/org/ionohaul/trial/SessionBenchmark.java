package org.ionohaul.trial;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.ionohaul.channel.End;
import org.ionohaul.link.Burst;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.SessionTrace;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Whole sessions of the demo's photo under its sky, a new trial each time, for each of its modes. Beside the sessions a
 * second it counts simulated seconds and bursts a second; each burst is two events of the engine, and mostly a timer.
 */
@State(Scope.Thread)
@BenchmarkMode(org.openjdk.jmh.annotations.Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class SessionBenchmark {
    private static final Path DEMO = Path.of("..", "scenarios", "river-watch.toml");

    /** Name of the mode. */
    @Param({"brisk-comb", "patient-climber", "slow-whistle", "steady-wagon"})
    public String modeName = "";

    private Scenario scenario;
    private Trials trials;
    private Mode mode;
    private long trial;

    /** What was simulated. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.OPERATIONS)
    public static class Simulated {
        /** Simulated seconds. */
        public double seconds;

        /** Bursts on the air. */
        public long bursts;

        /** Begins to count anew. */
        @Setup(Level.Iteration)
        public void clear() {
            seconds = 0;
            bursts = 0;
        }
    }

    /** Reads the demo. */
    @Setup
    public void read() throws ScenarioProblems {
        Path file = DEMO.toFile().exists() ? DEMO : Path.of("scenarios", "river-watch.toml");
        scenario = ScenarioReader.read(file);
        trials = new Trials(scenario);
        mode = scenario.modes().stream()
                .filter(it -> it.name().equals(modeName))
                .findFirst()
                .orElseThrow();
    }

    /** One session, dialling to hang-up, sky included. */
    @Benchmark
    public SessionResult session(Simulated simulated) {
        SessionResult result =
                trials.run(scenario.transfers().get(0), Direction.UPLOAD, mode, trial++, new SessionTrace() {
                    @Override
                    public void onSent(End from, Burst burst, long durationNanos) {
                        simulated.bursts++;
                    }
                });
        simulated.seconds += result.endedNanos() * 1e-9;
        return result;
    }
}
