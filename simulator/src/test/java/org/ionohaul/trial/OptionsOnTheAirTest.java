package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What may be stated of a sky or a station reaches the sessions. Under the same skies what is not met leaves every session as it
 * was, to the nanosecond; so six that change are enough. Where a direction is told, 20 of 24 must lie on its side, which if
 * either were as likely happens less than once in 1000 (sign test).
 */
final class OptionsOnTheAirTest {
    private static final int TRIALS = 24;
    private static final int NEARLY_ALL = 20;
    private static final int SOME = 6;
    private static final String MODE = "steady-wagon";
    private static final String SCENARIO = """
            title = "Options"
            seed = 6
            horizon = "1 h"
            distance = "300 km"
            modes = ["steady-wagon"]
            [[transfer]]
            name = "text"
            files = [{ name = "text", size = "3000 B" }]
            directions = ["upload"]
            [near]
            name = "either"
            snr = "4 dB"
            station = { hang = "10 ms", relay = "15 ms", recovery = "20 ms" }
            [far]
            name = "other"
            snr = "4 dB"
            station = { hang = "10 ms", relay = "15 ms", recovery = "20 ms" }
            [[near.interference]]
            visits = "0 /h"
            visit = "1 min"
            over = "10 s"
            pause = "5 s"
            median = "10 dB"
            deviation = "3 dB"
            band-share = "60 %"
            [[far.interference]]
            visits = "0 /h"
            visit = "1 min"
            over = "10 s"
            pause = "5 s"
            median = "10 dB"
            deviation = "3 dB"
            band-share = "60 %"
            [sky]
            condition = "mid-latitude-moderate"
            """;

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "later  | sky.drop-outs.between=30 s, sky.drop-outs.length=10 s, sky.drop-outs.depth=40 dB",
                "sooner | sky.sporadic-e.between=5 s, sky.sporadic-e.length=1 h, sky.sporadic-e.gain=15 dB",
                "sooner | sky.ground-wave.over-ground=40 km, sky.ground-wave.level=15 dB",
                "other  | sky.slow-variation.deviation=8 dB, sky.slow-variation.time-constant=30 s",
                "other  | sky.day-to-day=mid-latitude",
                "later  | near.tuning.offset=90 Hz",
                "later  | near.fold-back.after=1 s, near.fold-back.drop=20 dB",
                "later  | far.gain-control.range=3 dB, far.gain-control.attack=5 ms, far.gain-control.recovery=300 ms",
                "other  | far.gain-control.range=50 dB, far.gain-control.attack=900 ms, far.gain-control.recovery=0 s, far.interference.1.visits=60 /h",
                "other  | far.gain-control.range=15 dB, far.gain-control.attack=0 s, far.gain-control.recovery=10 s, far.interference.1.visits=60 /h",
                "later  | far.impulses.share=20 %, far.impulses.rise=20 dB, far.impulses.slot=10 ms",
                "other  | far.atmospherics.vd=9 dB",
                "later  | far.interference.1.visits=60 /h",
                "other  | near.station.busy-detection=4 s, near.interference.1.visits=60 /h",
            })
    void whatIsStatedIsMetOnTheAir(String how, String option) throws IOException, ScenarioProblems {
        Map<String, String> changes = new HashMap<>();
        for (String change : option.split(", ", -1)) {
            String[] parts = change.split("=", -1);
            changes.put(parts[0], parts[1]);
        }
        // What is told of a receiver or a listener beside a crowd is compared beside the crowd.
        Map<String, String> without = new HashMap<>(changes);
        without.keySet().removeIf(key -> changes.size() == 1 || !key.endsWith("visits"));
        double[] with = seconds(changes);
        double[] plain = seconds(without);
        int later = 0;
        int sooner = 0;
        for (int i = 0; i < TRIALS; i++) {
            later += with[i] > plain[i] ? 1 : 0;
            sooner += with[i] < plain[i] ? 1 : 0;
        }
        String found = later + " later, " + sooner + " sooner";
        switch (how) {
            case "later" -> assertTrue(later >= NEARLY_ALL, found);
            case "sooner" -> assertTrue(sooner >= NEARLY_ALL, found);
            default -> assertTrue(later + sooner >= SOME, found);
        }
    }

    /** Returns the times until each trial's session has ended, whatever came of it. */
    private static double[] seconds(Map<String, String> changes) throws IOException, ScenarioProblems {
        String mode = Files.readString(Path.of("..", "scenarios", "modes", MODE + ".toml"));
        SourceFiles files = SourceFiles.of(Map.of("options.toml", SCENARIO, "modes/" + MODE + ".toml", mode));
        Scenario scenario = ScenarioReader.read(files, Path.of("options.toml"), changes);
        Trials trials = new Trials(scenario);
        double[] seconds = new double[TRIALS];
        for (int trial = 0; trial < TRIALS; trial++) {
            seconds[trial] = trials.run(trial).get(0).endedNanos() / 1e9;
        }
        return seconds;
    }
}
