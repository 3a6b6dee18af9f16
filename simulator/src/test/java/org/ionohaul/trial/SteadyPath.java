package org.ionohaul.trial;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Understood;

/** Scenarios of one file, one shipped mode and a path that does not fade, between ordinary stations. */
public final class SteadyPath {
    private static final Path MODES = Path.of("..", "scenarios", "modes");

    private SteadyPath() {}

    /**
     * Reads one: stations with 10 ms of hang, 15 ms of relays, 20 ms of recovery; line 3 has the distance.
     *
     * @param mode name of the mode's file
     */
    public static Understood read(String mode, double snrDb, int bytes, double kilometres)
            throws IOException, ScenarioProblems {
        return read(mode, snrDb, bytes, kilometres, "20 ms");
    }

    /** Reads one with another time of recovery. */
    public static Understood read(String mode, double snrDb, int bytes, double kilometres, String recovery)
            throws IOException, ScenarioProblems {
        String text = """
                title = "Steady path"
                horizon = "2 h"
                distance = "%4$s km"
                modes = ["%1$s"]
                sky = { condition = "flat" }
                [[transfer]]
                name = "text"
                files = [{ name = "text", size = "%3$d B" }]
                directions = ["upload"]
                [near]
                name = "either"
                snr = "%2$s dB"
                station = { hang = "10 ms", relay = "15 ms", recovery = "%5$s" }
                [far]
                name = "other"
                snr = "%2$s dB"
                station = { hang = "10 ms", relay = "15 ms", recovery = "%5$s" }
                """.formatted(mode, snrDb, bytes, kilometres, recovery);
        String modeText = Files.readString(MODES.resolve(mode + ".toml"));
        SourceFiles files = SourceFiles.of(Map.of("steady.toml", text, "modes/" + mode + ".toml", modeText));
        return ScenarioReader.understand(files, Path.of("steady.toml"), Map.of());
    }
}
