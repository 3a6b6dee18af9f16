package org.ionohaul.fuzz;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Texts that are nearly scenarios never make the program fail: see {@link ScenarioFuzzer} for what is held to be failing. */
final class ScenarioFuzzTest {
    /** {@code -Dfuzz.inputs=1000000 -Dfuzz.seed=7} for a long run. */
    private static final int INPUTS = Integer.getInteger("fuzz.inputs", 1500);

    private static final int SEED = Integer.getInteger("fuzz.seed", 1);
    private static final Path FOUND = Path.of("src", "test", "resources", "fuzz");

    static List<Path> found() throws IOException {
        try (Stream<Path> files = Files.list(FOUND)) {
            return files.sorted().toList();
        }
    }

    @Test
    @DisplayName("every shipped scenario and mode that the fuzzer begins with is accepted, the wrong ones are not")
    void theSeedsAreWhatTheyAreMeantToBe() throws IOException {
        for (String seed : WrittenInput.seeds()) {
            assertTrue(ScenarioFuzzer.isAccepted(seed) == seed.contains("#### --set"), seed);
        }
    }

    @ParameterizedTest
    @MethodSource("found")
    @DisplayName("what once made the program fail is told as a problem or simulated")
    @Timeout(value = 10, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void whatWasFoundStaysMended(Path file) throws IOException {
        ScenarioFuzzer.isAccepted(Files.readString(file));
    }

    @Test
    @DisplayName("a scenario with a few changed values, lines and characters is simulated or its problems are told")
    @Timeout(value = 24, unit = TimeUnit.HOURS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void changedScenariosAreRunOrTold() throws IOException {
        TextMutator mutator = new TextMutator(WrittenInput.seeds(), SEED);
        int accepted = 0;
        for (int i = 0; i < INPUTS; i++) {
            String text = mutator.next();
            try {
                accepted += ScenarioFuzzer.isAccepted(text) ? 1 : 0;
            } catch (RuntimeException | Error e) {
                throw new AssertionError("input " + i + " of seed " + SEED + ":\n" + text, e);
            }
        }
        // Neither mostly refused at once nor hardly changed: both would try nothing.
        assertTrue(accepted > INPUTS / 50, "accepted " + accepted);
        assertFalse(accepted > INPUTS / 2, "accepted " + accepted);
    }
}
