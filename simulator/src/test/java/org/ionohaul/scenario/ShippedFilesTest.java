package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ionohaul.channel.End;
import org.ionohaul.channel.SkyConditions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every scenario and mode file that we ship can be read and means something. */
final class ShippedFilesTest {
    static final Path SCENARIOS = Path.of("..", "scenarios");

    private static final Pattern EXAMPLE_IN_COMMENT = Pattern.compile("(?m)^# ([a-z-]+ = .+)$");

    static List<Path> scenarioFiles() throws IOException {
        return tomlFilesIn(SCENARIOS);
    }

    static List<Path> modeFiles() throws IOException {
        return tomlFilesIn(SCENARIOS.resolve("modes"));
    }

    private static List<Path> tomlFilesIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".toml"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("scenarioFiles")
    void everyScenarioDescribesASkyInEveryDraw(Path file) throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(file);
        for (double probability : new double[] {1e-9, 0.5, 1 - 1e-9}) {
            SkyConditions sky = scenario.sky().conditions(key -> probability);
            assertTrue(Double.isFinite(sky.at(End.NEAR).snrDb()));
        }
        assertFalse(scenario.modes().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("modeFiles")
    void everyModeCanBeRead(Path file) throws ScenarioProblems {
        Mode mode = ScenarioReader.readMode(file);
        assertEquals(file.getFileName().toString(), mode.name() + ".toml");
    }

    @ParameterizedTest
    @MethodSource("scenarioFiles")
    void everyScenarioSaysThatItIsInvented(Path file) throws IOException {
        assertTrue(Files.readString(file).contains("Everything here is invented"), file::toString);
    }

    /** An example that stands behind a mark of a comment must be right when somebody takes the mark off. */
    @Test
    void everyExampleInACommentIsInOrderOnceTheMarkIsTakenOff() throws IOException, ScenarioProblems {
        int examples = 0;
        for (Path file : scenarioFiles()) {
            String text = Files.readString(file);
            String open = EXAMPLE_IN_COMMENT.matcher(text).replaceAll("$1");
            if (!open.equals(text)) {
                examples++;
                SourceFiles files = SourceFiles.DISK.with(file, open);
                assertEquals(
                        List.of(),
                        ScenarioReader.understand(files, file, Map.of()).warnings());
            }
        }
        assertTrue(examples > 0);
    }

    @Test
    void theManualsNameEveryFile() throws IOException {
        assertNamed(SCENARIOS.resolve("README.md"), scenarioFiles());
        assertNamed(SCENARIOS.resolve("modes").resolve("README.md"), modeFiles());
    }

    private static void assertNamed(Path manual, List<Path> files) throws IOException {
        String text = Files.readString(manual);
        files.forEach(file -> assertTrue(text.contains("`" + file.getFileName() + "`"), file::toString));
    }
}
