package org.ionohaul.trial;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;

/**
 * How a trial's cost grows: the demo with one key changed at a time, on one thread. Rounds go through all cases in turn, so
 * that whatever else the machine does meets all alike; told is the median round. Prints a table as CSV.
 */
public final class CostGrowth {
    private static final List<String> MODES = List.of("brisk-comb", "patient-climber", "slow-whistle", "steady-wagon");
    private static final int ROUNDS = 5;
    private static final int TRIALS_A_ROUND = 8;
    private static final String REFERENCE = "the demo";
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private CostGrowth() {}

    /**
     * Measures and prints.
     *
     * @param arguments the demo's file
     */
    public static void main(String... arguments) throws IOException, ScenarioProblems {
        Path demo = Path.of(arguments[0]);
        Map<String, Case> cases = new LinkedHashMap<>();
        for (Map.Entry<String, Map<String, String>> change : changes().entrySet()) {
            cases.put(change.getKey(), new Case(ScenarioReader.read(demo, change.getValue())));
        }
        for (int paths = 1; paths <= 4; paths++) {
            cases.put("paths of 1 Hz: " + paths, new Case(withPaths(demo, paths)));
        }
        // The first round warms the compiler up and counts for nothing.
        for (int round = 0; round <= ROUNDS; round++) {
            for (Case one : cases.values()) {
                one.measure(round);
            }
        }
        double reference = median(cases.get(REFERENCE).millis);
        System.out.println("case,processor ms a trial,over the demo,allocated kB a trial");
        cases.forEach((name, one) -> System.out.println(String.format(
                Locale.ROOT,
                "%s,%.1f,%.2f,%.0f",
                name,
                median(one.millis),
                median(one.millis) / reference,
                median(one.kilobytes))));
    }

    private static Map<String, Map<String, String>> changes() {
        Map<String, Map<String, String>> changes = new LinkedHashMap<>();
        changes.put(REFERENCE, Map.of());
        for (String mode : MODES) {
            changes.put(mode + " alone", Map.of("modes", "[\"" + mode + "\"]"));
        }
        changes.put("photo of 19 kB", Map.of("transfer.1.files.1.size", "19 kB"));
        changes.put("photo of 76 kB", Map.of("transfer.1.files.1.size", "76 kB"));
        changes.put("horizon 30 min", Map.of("horizon", "30 min", "near.patience", "29 min"));
        changes.put("horizon 2 h", Map.of("horizon", "2 h"));
        changes.put("patience and horizon 2 h", Map.of("horizon", "2 h", "near.patience", "119 min"));
        changes.put("2 paths of 0.1 Hz", Map.of("sky.condition", "mid-latitude quiet"));
        changes.put("2 paths of 0.5 Hz", Map.of("sky.condition", "mid-latitude moderate"));
        changes.put("2 paths of 10 Hz", Map.of("sky.condition", "low-latitude disturbed"));
        changes.put("2 paths of 30 Hz", Map.of("sky.condition", "high-latitude disturbed"));
        return changes;
    }

    /** Returns the demo with so many equal paths, 2 ms apart, in place of its fading condition. */
    private static Scenario withPaths(Path demo, int paths) throws IOException, ScenarioProblems {
        StringBuilder text =
                new StringBuilder(Files.readString(demo).replace("condition = \"mid-latitude disturbed nvis\"", ""));
        for (int path = 0; path < paths; path++) {
            text.append("\n[[sky.path]]\ndelay = \"").append(2 * path).append(" ms\"\ndoppler-spread = \"1 Hz\"\n");
        }
        Map<String, String> files = new HashMap<>(Map.of("demo.toml", text.toString()));
        for (String mode : MODES) {
            files.put("modes/" + mode + ".toml", Files.readString(demo.resolveSibling("modes/" + mode + ".toml")));
        }
        return ScenarioReader.read(SourceFiles.of(files), Path.of("demo.toml"), Map.of());
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static final class Case {
        private final Trials trials;
        private final double[] millis = new double[ROUNDS];
        private final double[] kilobytes = new double[ROUNDS];

        Case(Scenario scenario) {
            trials = new Trials(scenario);
        }

        void measure(int round) {
            long nanos = THREADS.getCurrentThreadCpuTime();
            long bytes = THREADS.getCurrentThreadAllocatedBytes();
            // The same trials each round: rounds differ only by the machine.
            for (int trial = 0; trial < TRIALS_A_ROUND; trial++) {
                trials.run(trial);
            }
            if (round > 0) {
                millis[round - 1] = (THREADS.getCurrentThreadCpuTime() - nanos) / 1e6 / TRIALS_A_ROUND;
                kilobytes[round - 1] = (THREADS.getCurrentThreadAllocatedBytes() - bytes) / 1e3 / TRIALS_A_ROUND;
            }
        }
    }
}
