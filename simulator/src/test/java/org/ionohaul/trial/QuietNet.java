package org.ionohaul.trial;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.ionohaul.scenario.NetReader;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.SourceFiles;

/**
 * A net of two stations, "One" and "Two", that hear the gateway well over paths that don't fade, in which nothing happens but what a
 * test asks for: each has one message, written when the trial begins.
 *
 * @param mode what all work
 * @param changes values by key
 */
record QuietNet(String mode, Map<String, String> changes) {
    private static final Path SCENARIOS = Path.of("..", "scenarios");

    /** Returns the same with another value. */
    QuietNet with(String key, String value) {
        Map<String, String> all = new HashMap<>(changes);
        all.put(key, value);
        return new QuietNet(mode, all);
    }

    /** Returns the net. */
    NetScenario scenario() {
        return read(TEXT.replace("MODE", mode), mode, changes);
    }

    /** Returns the net that a text describes, with one of the modes that come along. */
    static NetScenario read(String text, String mode, Map<String, String> changes) {
        String file = "modes/" + mode + ".toml";
        try {
            SourceFiles files =
                    SourceFiles.of(Map.of("net.toml", text, file, Files.readString(SCENARIOS.resolve(file))));
            return NetReader.read(files, Path.of("net.toml"), changes).scenario();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ScenarioProblems e) {
            throw new AssertionError(e.told().toString(), e);
        }
    }

    /** Returns its first trial, with all that was on the air. */
    NetTrial trial() {
        return new NetTrials(scenario()).run(0, true);
    }

    private static final String TEXT = """
            title = "Two stations"
            seed = 3
            trials = 1
            horizon = "20 min"
            distance = "0 km"
            modes = ["MODE"]
            audibility = "-40 dB"

            [gateway]
            name = "Desk"
            station = { hang = "0 ms", relay = "0 ms", recovery = "0 ms" }

            [[group]]
            name = "One"
            count = 1
            snr = "30 dB"
            gateway = { snr = "30 dB" }
            station = { hang = "0 ms", relay = "0 ms", recovery = "0 ms" }

            [[group.message]]
            name = "report"
            size = "2 kB"
            at = ["0 s"]

            [[group]]
            name = "Two"
            count = 1
            snr = "30 dB"
            gateway = { snr = "30 dB" }
            station = { hang = "0 ms", relay = "0 ms", recovery = "0 ms" }

            [[group.message]]
            name = "report"
            size = "2 kB"
            at = ["0 s"]

            [operators]
            listens = "0 s"
            redial = "20 s"
            redial-growth = 1.0
            calls-in-a-row = 1

            [sky]
            condition = "flat"
            """;
}
