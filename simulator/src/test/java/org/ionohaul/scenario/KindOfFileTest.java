package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A file of the other kind is recognised: that is the one thing to tell, and not each of its keys. */
final class KindOfFileTest {
    private final Path folder;

    KindOfFileTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @ParameterizedTest
    @MethodSource("org.ionohaul.scenario.ShippedFilesTest#modeFiles")
    void aModeFileIsNoScenario(Path file) {
        ScenarioProblems refused =
                assertThrows(ScenarioProblems.class, () -> ScenarioReader.read(file, Map.of("near.snr", "3 dB")));
        assertEquals(
                List.of(file + ":1:1: is a mode file, not a scenario\n    ionohaul mode " + file
                        + " shows what the mode can do; a scenario names it under modes"),
                refused.told());
    }

    @ParameterizedTest
    @MethodSource("org.ionohaul.scenario.ShippedFilesTest#scenarioFiles")
    void aScenarioIsNoModeFile(Path file) {
        ScenarioProblems refused = assertThrows(ScenarioProblems.class, () -> ScenarioReader.readMode(file));
        assertEquals(
                List.of(file + ":1:1: is a scenario, not a mode file\n    ionohaul check " + file
                        + " says what it means; modes lie in the folder modes beside it"),
                refused.told());
    }

    @Test
    void aScenarioNamedAmongTheModesIsRecognisedToo() {
        WrittenScenario scenario = WrittenScenario.in(folder).replacing("", "brisk-comb", "../test");
        ScenarioProblems refused = assertThrows(ScenarioProblems.class, scenario::read);
        assertEquals(
                List.of("is a scenario, not a mode file"),
                refused.problems().stream().map(Problem::message).toList());
    }

    /** What is just misspelt is told key by key, and so is a file with keys of both kinds. */
    @Test
    void aFileWithKeysOfItsOwnKindIsReadAsSuch() {
        WrittenScenario scenario = WrittenScenario.in(folder)
                .replacing("", "clock = \"18:00\"", "clock = \"18:00\"\narq = { window = 3 }");
        ScenarioProblems refused = assertThrows(ScenarioProblems.class, scenario::read);
        assertEquals(
                List.of("there is no such key"),
                refused.problems().stream().map(Problem::message).toList());
    }
}
