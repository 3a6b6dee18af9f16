package org.ionohaul.trial;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.session.SessionResult;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One whole trial of the demo with one mode: both transfers, both ways, a new sky each time. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class TrialBenchmark {
    /** The mode, by its file's name. */
    @Param({"brisk-comb", "patient-climber", "slow-whistle", "steady-wagon"})
    public String mode = "";

    private List<Trials> trials = List.of();
    private long trial;

    /** Reads the demo; run from the module's folder. */
    @Setup
    public void read() throws ScenarioProblems {
        Path demo = Path.of("..", "scenarios", "river-watch.toml");
        trials = List.of(new Trials(ScenarioReader.read(demo, Map.of("modes", "[\"" + mode + "\"]"))));
    }

    /** The next trial. */
    @Benchmark
    public List<SessionResult> trial() {
        return trials.get(0).run(trial++);
    }
}
