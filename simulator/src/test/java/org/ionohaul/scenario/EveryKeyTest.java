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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
        "near.signal",
        "near.noise",
        "near.noise-environment",
        "far.snr",
        "far.noise",
        "sky.path",
        "near.readings",
        "far.readings"
    };

    private static final String[] OTHER_FRAMES = Stream.of("waveform", "rate", "acknowledgement", "call", "control")
            .flatMap(burst -> Stream.of(burst + ".measured-loss", burst + ".airtime", burst + ".frame-bits"))
            .toArray(String[]::new);

    private static final List<String> ABSURD =
            List.of("-1", "0", "1000000000000", "nan", "true", "\"\"", "\"-1 %\"", "\"101 %\"", "[]", "[\"\"]", "{}");

    private static final List<String> ABSURD_WITH_UNIT = List.of(
            "\"-1 u\"",
            "\"0 u\"",
            "\"1000000000000 u\"",
            "\"999000000 u\"",
            "\"5 u ± 900 u\"",
            "\"0 u .. 1000000000000 u\"");

    private final Path folder;

    EveryKeyTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @BeforeEach
    void writeTheExamples() throws IOException {
        Files.createDirectories(folder.resolve("modes"));
        String examples = WrittenExamples.of(ScenarioFormat.TOP, OTHER_WAYS);
        int far = examples.indexOf("[far]");
        Files.writeString(
                folder.resolve("scenario.toml"),
                examples.substring(0, far) + examples.substring(far).replace("Weir Cottage", "Flood Desk"));
        String ratePolicy =
                "start-rate = 1\ngood-to-rise = 3\nbad-to-fall = 2\nbad-share = 0.5\ndoubles-patience = true\n";
        Files.writeString(
                folder.resolve("modes").resolve("fieldpost.toml"),
                WrittenExamples.of(ModeFormat.TOP, OTHER_FRAMES)
                        .replace("[rate-policy]\n", "[rate-policy]\n" + ratePolicy));
    }

    static Stream<WrittenExamples.Place> scenarioKeys() {
        return WrittenExamples.places(ScenarioFormat.TOP).stream();
    }

    static Stream<WrittenExamples.Place> modeKeys() {
        // The small bursts have the same keys: one of them stands for all.
        return WrittenExamples.places(ModeFormat.TOP).stream()
                .filter(place ->
                        !place.name().startsWith("call.") && !place.name().startsWith("control."));
    }

    static Stream<RatePolicyFormat.Policy> policies() {
        return RatePolicyFormat.POLICIES.stream();
    }

    @Test
    void theExamplesOfAllKeysGoTogether() {
        assertEquals(List.of(), problems(Map.of()));
    }

    @ParameterizedTest
    @MethodSource("scenarioKeys")
    void everyAbsurdValueInAScenarioIsFoundAtItsKey(WrittenExamples.Place place) {
        assertFoundAtItsKey(place.name(), place.key());
    }

    @ParameterizedTest
    @MethodSource("modeKeys")
    void everyAbsurdValueInAModeIsFoundAtItsKey(WrittenExamples.Place place) {
        assertFoundAtItsKey("modes.fieldpost." + place.name(), place.key());
    }

    @ParameterizedTest
    @MethodSource("policies")
    void everyAbsurdValueInALadderIsFoundAtItsKey(RatePolicyFormat.Policy policy) throws IOException {
        Path file = folder.resolve("modes").resolve("fieldpost.toml");
        Group top = new Group(
                "",
                "",
                ModeFormat.TOP.keys(),
                ModeFormat.TOP.parts().stream()
                        .map(part -> part.name().equals("rate-policy") ? policy.group() : part)
                        .toList(),
                false);
        Files.writeString(
                file, WrittenExamples.of(top, OTHER_FRAMES).replace("\"count\"", "\"" + policy.name() + "\""));
        assertEquals(List.of(), problems(Map.of()));
        for (Key<?> key : policy.keys()) {
            assertFoundAtItsKey("modes.fieldpost.rate-policy." + key.name(), key);
        }
    }

    @Test
    void keysOfAGroupFillDifferentComponents() {
        assertNamedOnce(ScenarioFormat.TOP);
        assertNamedOnce(ModeFormat.TOP);
        RatePolicyFormat.POLICIES.forEach(policy -> assertNamedOnce(policy.group()));
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

    private static List<String> absurdValues(Key<?> key) {
        Matcher unit = Pattern.compile("-?[\\d.]+ (\\S+)").matcher(String.valueOf(key.example()));
        Stream<String> withUnit = unit.matches()
                ? ABSURD_WITH_UNIT.stream().map(value -> value.replace("u", unit.group(1)))
                : Stream.of();
        return Stream.concat(ABSURD.stream(), withUnit).toList();
    }

    private void assertFoundAtItsKey(String fullKey, Key<?> key) {
        int refused = 0;
        for (String value : absurdValues(key)) {
            List<Problem> problems = problems(Map.of(fullKey, value));
            refused += problems.isEmpty() ? 0 : 1;
            for (Problem problem : problems) {
                assertTrue(
                        fullKey.endsWith(problem.key()) || isOfAPartner(problem),
                        () -> fullKey + " = " + value + " gives " + problem.text());
            }
        }
        assertTrue(refused > 3, fullKey);
    }

    private static boolean isOfAPartner(Problem problem) {
        return problem.message().contains("stands beside")
                || problem.message().contains("must not be below")
                || problem.message().contains("lies beyond the horizon")
                || problem.message().contains("is farther than the distance")
                || problem.message().equals("is missing");
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
