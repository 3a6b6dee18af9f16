package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ionohaul.GoldenFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a person reads when a file is wrong: the golden files beside each bad one hold it word by word. */
final class ProblemsAsReadTest {
    private static final Path BAD_FILES = Path.of("src", "test", "resources", "golden", "scenario");

    @ParameterizedTest
    @ValueSource(strings = {"everything-wrong", "broken-syntax", "empty", "several-ways", "budget", "modes/wrong-mode"})
    void everyProblemIsToldAtOnce(String name) {
        Path file = BAD_FILES.resolve(name + ".toml");
        ScenarioProblems problems = assertThrows(ScenarioProblems.class, () -> {
            if (name.startsWith("modes/")) {
                ScenarioReader.readMode(file);
            } else {
                ScenarioReader.read(file);
            }
        });
        GoldenFile.of("scenario/" + name + ".txt").assertHolds(told(problems));
    }

    @Test
    void replacedValuesAreCheckedLikeWrittenOnes(@TempDir Path folder) {
        Path file = WrittenScenario.in(folder).written();
        Map<String, String> overrides = Map.of(
                "near.snr", "loud",
                "far.snr", "12",
                "far.sr", "12 dB",
                "transfer.1.files.1.size", "0 B",
                "transfer.2.name", "other",
                "modes.brisk-comb.arq.window", "0",
                "modes.brisk-comb.rate-policy.start", "2",
                "modes.brisk-cob.arq.window", "3",
                "trials", "many");
        ScenarioProblems problems = assertThrows(ScenarioProblems.class, () -> ScenarioReader.read(file, overrides));
        GoldenFile.of("scenario/overrides.txt").assertHolds(told(problems));
    }

    @Test
    void aMissingFileIsAProblemThatNamesTheNearest(@TempDir Path folder) {
        WrittenScenario.in(folder).written();
        ScenarioProblems problems =
                assertThrows(ScenarioProblems.class, () -> ScenarioReader.read(folder.resolve("tests.toml")));
        assertEquals(
                List.of(new Problem(
                        folder.resolve("tests.toml").toString(),
                        0,
                        0,
                        "",
                        "there is no such file",
                        "did you mean \"" + folder.resolve("test.toml") + "\"?")),
                problems.problems());
    }

    @Test
    void aFileThatIsNoTextIsAProblem(@TempDir Path folder) throws IOException {
        Path file = Files.write(
                folder.resolve("latin.toml"), "title = \"H\u00f6he\"".getBytes(StandardCharsets.ISO_8859_1));
        ScenarioProblems problems = assertThrows(ScenarioProblems.class, () -> ScenarioReader.read(file));
        assertEquals("is not a text file in UTF-8", problems.problems().get(0).message());
        assertEquals("", problems.problems().get(0).remedy());
    }

    @Test
    void aFolderInPlaceOfAFileIsCalledSo(@TempDir Path folder) {
        ScenarioProblems problems = assertThrows(ScenarioProblems.class, () -> ScenarioReader.read(folder));
        assertEquals(
                List.of(new Problem(folder.toString(), 0, 0, "", "is a folder, not a file", "")), problems.problems());
    }

    @Test
    void anEmptyListOfModesIsOneProblem(@TempDir Path folder) {
        WrittenScenario scenario = WrittenScenario.in(folder).replacing("", "[\"brisk-comb\"]", "[]");
        assertEquals(
                List.of("[] is not a list with an entry"),
                scenario.problems().stream().map(Problem::message).toList());
    }

    private static String told(ScenarioProblems problems) {
        return problems.problems().stream()
                .map(Problem::text)
                .map(text -> text.replace('\\', '/').replaceAll("^\\S*/(golden/scenario|junit[^/]*)/", "") + "\n")
                .collect(Collectors.joining());
    }
}
