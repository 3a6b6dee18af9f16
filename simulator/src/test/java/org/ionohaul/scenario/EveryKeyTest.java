package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Runs through every key of both formats: none is documented but not read, and every wrong value is found at its key. */
final class EveryKeyTest {
    /** Ways of stating the same thing, of which a file uses one. */
    private static final String[] OTHER_WAYS = {
        "near.signal", "near.noise", "near.noise-environment", "far.snr", "far.noise", "sky.path"
    };

    private static final List<String> ABSURD = List.of(
            "-1",
            "0",
            "1000000000000",
            "nan",
            "inf",
            "\"\"",
            "\"-1\"",
            "\"-1 %\"",
            "\"101 %\"",
            "\"-1 dB\"",
            "\"-1 s\"",
            "\"1000000000 h\"",
            "\"0 s\"",
            "\"-5 Hz\"",
            "\"100000 MHz\"",
            "\"0 Hz\"",
            "\"0 B\"",
            "\"999 MB\"",
            "\"9999 dB\"",
            "\"0 Bd\"",
            "\"99999 kBd\"",
            "\"-1 /h\"",
            "\"99999 /h\"",
            "\"99999999 km\"",
            "\"0 W\"",
            "\"5 dB ± 900 dB\"",
            "\"0 s .. 9999999 h\"",
            "true",
            "[]",
            "[\"\"]",
            "{}",
            "18:00:00");

    private final Path folder;

    EveryKeyTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @BeforeEach
    void writeTheExamples() throws IOException {
        Files.createDirectories(folder.resolve("modes"));
        Files.writeString(folder.resolve("scenario.toml"), WrittenExamples.of(ScenarioFormat.TOP, OTHER_WAYS));
        String ladder =
                "start-level = 1\ngood-to-rise = 3\nbad-to-fall = 2\nbad-share = 0.5\ndoubles-patience = true\n";
        Files.writeString(
                folder.resolve("modes").resolve("fieldpost.toml"),
                WrittenExamples.of(ModeFormat.TOP).replace("[ladder]\n", "[ladder]\n" + ladder));
    }

    static Stream<WrittenExamples.Place> scenarioKeys() {
        return WrittenExamples.places(ScenarioFormat.TOP).stream();
    }

    static Stream<WrittenExamples.Place> modeKeys() {
        return WrittenExamples.places(ModeFormat.TOP).stream();
    }

    static Stream<LadderFormat.Policy> policies() {
        return LadderFormat.POLICIES.stream();
    }

    @Test
    void theExamplesOfAllKeysGoTogether() {
        assertEquals(List.of(), problems(Map.of()));
    }

    @ParameterizedTest
    @MethodSource("scenarioKeys")
    void everyAbsurdValueInAScenarioIsFoundAtItsKey(WrittenExamples.Place place) {
        for (String value : ABSURD) {
            assertFoundAtItsKey(place.name(), place.name(), value);
        }
    }

    @ParameterizedTest
    @MethodSource("modeKeys")
    void everyAbsurdValueInAModeIsFoundAtItsKey(WrittenExamples.Place place) {
        for (String value : ABSURD) {
            assertFoundAtItsKey("modes.fieldpost." + place.name(), place.name(), value);
        }
    }

    @ParameterizedTest
    @MethodSource("policies")
    void everyAbsurdValueInALadderIsFoundAtItsKey(LadderFormat.Policy policy) throws IOException {
        Path file = folder.resolve("modes").resolve("fieldpost.toml");
        Group top = new Group(
                "",
                "",
                ModeFormat.TOP.keys(),
                ModeFormat.TOP.parts().stream()
                        .map(part -> part.name().equals("ladder") ? policy.group() : part)
                        .toList(),
                false);
        Files.writeString(file, WrittenExamples.of(top).replace("\"count\"", "\"" + policy.name() + "\""));
        assertEquals(List.of(), problems(Map.of()));
        for (Key<?> key : policy.keys()) {
            for (String value : ABSURD) {
                assertFoundAtItsKey("modes.fieldpost.ladder." + key.name(), "ladder." + key.name(), value);
            }
        }
    }

    @Test
    void keysOfAGroupFillDifferentComponents() {
        assertNamedOnce(ScenarioFormat.TOP);
        assertNamedOnce(ModeFormat.TOP);
        LadderFormat.POLICIES.forEach(policy -> assertNamedOnce(policy.group()));
    }

    private static void assertNamedOnce(Group group) {
        Set<String> names = new HashSet<>();
        Set<String> components = new HashSet<>();
        for (Key<?> key : group.keys()) {
            assertTrue(names.add(key.name()), key.name());
            assertTrue(components.add(key.component()), key.component());
        }
        group.parts().forEach(EveryKeyTest::assertNamedOnce);
    }

    private void assertFoundAtItsKey(String fullKey, String key, String value) {
        List<Problem> problems = problems(Map.of(fullKey, value));
        for (Problem problem : problems) {
            boolean isOfPartner = problem.message().contains("stands beside")
                    || problem.message().contains("must not be below");
            assertTrue(
                    problem.key().endsWith(key) || isOfPartner,
                    () -> fullKey + " = " + value + " gives " + problem.text());
        }
    }

    private List<Problem> problems(Map<String, String> overrides) {
        try {
            ScenarioReader.read(folder.resolve("scenario.toml"), overrides);
            return List.of();
        } catch (ScenarioProblems e) {
            return e.problems();
        }
    }
}
