package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A scenario that somebody else wrote, in the worst of intents: what it is refused for, and what it never gets. */
final class HostileScenarioTest {
    @TempDir
    private Path folder = Path.of("");

    private WrittenScenario scenario() {
        return WrittenScenario.in(folder);
    }

    private static List<String> messages(List<Problem> problems) {
        return problems.stream().map(it -> it.key() + ": " + it.message()).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@x"})
    @DisplayName("a name that a spreadsheet takes for a formula is refused where it stands")
    void formulasAreNoNames(String name) {
        List<Problem> problems = scenario()
                .replacing("[[transfer]]", "name = \"note\"\nfiles", "name = \"" + name + "\"\nfiles")
                .replacing("[far]", "\"Far\"", "\"" + name + "\"")
                .problems();
        String formula =
                "\"" + name + "\" begins with \"" + name.charAt(0) + "\", which spreadsheets take for a formula";
        assertEquals(List.of("transfer.1.name: " + formula, "far.name: " + formula), messages(problems));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\\u001b[2J", "a\\nb", "a\\u202Eb", "a\\u2066b", "\\u0007"})
    @DisplayName("a title that a terminal would obey is refused, and not shown raw")
    void hiddenCharactersAreNoTitle(String title) {
        List<Problem> problems =
                scenario().replacing("", "\"A test\"", "\"" + title + "\"").problems();
        assertEquals(1, problems.size());
        assertTrue(problems.get(0).message().endsWith("holds a character that is not shown, such as an end of line"));
        assertTrue(problems.get(0)
                .text()
                .lines()
                .noneMatch(line -> line.codePoints().anyMatch(PlainText::isHidden)));
    }

    @Test
    @DisplayName("255 files are a transfer, 256 are a problem")
    void filesAreCounted() {
        assertEquals(List.of(), messages(files(255).problems()));
        assertEquals(
                List.of("transfer.1: has 256 files; a transfer has at most 255"),
                messages(files(256).problems()));
    }

    private WrittenScenario files(int count) {
        String files = IntStream.range(0, count)
                .mapToObj(i -> "{ name = \"note\", size = \"1 B\" }")
                .collect(Collectors.joining(", "));
        return scenario().replacing("[[transfer]]", "{ name = \"note\", size = \"1 kB\" }", files);
    }

    @Test
    @DisplayName("other stations without end are a problem of their end, not a sky that is never ready")
    void otherStationsAreCounted() {
        String visitors = """
                interference = [{ visits = "%s", visit = "%s", over = "%s", pause = "1 s", median = "3 dB",
                    deviation = "8 dB", band-share = 1.0 }]
                """;
        String near = scenario().parts().getOrDefault("[near]", "");
        assertEquals(
                List.of("near: interference must not come to more than 12,000 overs of other stations an hour"),
                messages(scenario()
                        .with("[near]", near + visitors.formatted("60 /h", "1 h", "1 ms"))
                        .problems()));
        assertEquals(
                List.of("near: interference must not come to more than 100 other stations at once on average"),
                messages(scenario()
                        .with("[near]", near + visitors.formatted("101 /h", "1 h", "1 h"))
                        .problems()));
        assertEquals(
                List.of(),
                messages(scenario()
                        .with("[near]", near + visitors.formatted("99 /h", "1 h", "5 min"))
                        .problems()));
    }

    @Test
    @DisplayName("bursts of microseconds over a whole day are a problem of the horizon")
    void burstsAreCounted() {
        Path file = scenario().written();
        ScenarioProblems refusal = assertThrows(
                ScenarioProblems.class,
                () -> ScenarioReader.read(
                        file,
                        Map.of(
                                "horizon",
                                "24 h",
                                "modes.brisk-comb.call.preamble",
                                "0 s",
                                "modes.brisk-comb.call.airtime",
                                "1 ms")));
        assertEquals(
                List.of(
                        "horizon: has room for 86,400,000 frames or bursts of mode brisk-comb, which has some of 1.00 ms;"
                                + " at most 10,000,000 can be simulated"),
                messages(refusal.problems()));
    }

    @Test
    @DisplayName("a mode file outside the scenario's folder is used, but what it holds is not told where it is none")
    void foreignFilesAreNotTold(@TempDir Path elsewhere) throws IOException {
        Path secret = Files.writeString(elsewhere.resolve("secret.toml"), "password = \"hunter2\"\n= x");
        Path good = Files.copy(
                ShippedFilesTest.SCENARIOS.resolve("modes/slow-whistle.toml"), elsewhere.resolve("good.toml"));
        assertEquals(
                List.of(),
                scenario().replacing("", "brisk-comb", withoutEnding(good)).problems());
        assertTellsNothing(
                scenario().replacing("", "brisk-comb", withoutEnding(secret)).problems());
    }

    @Test
    @DisplayName("a link in the folder of modes that leads elsewhere is a file elsewhere")
    void linksAreFollowedToTheirEnd(@TempDir Path elsewhere) throws IOException {
        Path secret = Files.writeString(elsewhere.resolve("secret.toml"), "password = \"hunter2\"\n= x");
        WrittenScenario scenario = scenario().replacing("", "brisk-comb", "innocent");
        scenario.written();
        Files.createSymbolicLink(folder.resolve("modes/innocent.toml"), secret);
        assertTellsNothing(scenario.problems());
    }

    private static String withoutEnding(Path file) {
        return file.toString().replace(".toml", "").replace('\\', '/');
    }

    private static void assertTellsNothing(List<Problem> problems) {
        assertEquals(1, problems.size(), problems::toString);
        assertTrue(problems.get(0).message().endsWith("is no mode in order"), problems::toString);
        assertFalse(problems.toString().contains("password"), problems::toString);
        assertFalse(problems.toString().contains("hunter2"), problems::toString);
    }

    @Test
    @DisplayName("of a thousand problems the first twenty are told, and how many more there are")
    void problemsAreCounted() {
        String keys = IntStream.range(0, 1000).mapToObj(i -> "k" + i + " = 1\n").collect(Collectors.joining());
        WrittenScenario scenario = scenario().replacing("", "horizon", keys + "horizon");
        ScenarioProblems refusal = assertThrows(ScenarioProblems.class, scenario::read);
        assertEquals(1000, refusal.problems().size());
        assertEquals(21, refusal.told().size());
        assertEquals("... and 980 more like these.", refusal.told().get(20));
    }

    @Test
    @DisplayName("a value of 50,000 characters makes a problem of a few lines")
    void problemsAreShort() {
        List<Problem> problems = scenario()
                .replacing("", "\"1 h\"", "\"" + "9".repeat(50_000) + " h\"")
                .replacing("[far]", "\"Far\"", "[\"" + "x".repeat(50_000) + "\"]")
                .replacing("[near]", "name", "k".repeat(50_000) + " = 1\nname")
                .problems();
        assertEquals(3, problems.size());
        problems.forEach(problem -> assertTrue(problem.text().length() < 1500, problem::text));
    }

    @Test
    @DisplayName("a file of megabytes is not read")
    void largeFilesAreNotRead() throws IOException {
        Path file = Files.write(folder.resolve("large.toml"), new byte[1_000_001]);
        ScenarioProblems refusal = assertThrows(ScenarioProblems.class, () -> ScenarioReader.read(file));
        assertEquals(List.of(": can't be read: is larger than 1 MB"), messages(refusal.problems()));
    }
}
