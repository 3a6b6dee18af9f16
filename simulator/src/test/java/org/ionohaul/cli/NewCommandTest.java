package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.Transfer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

final class NewCommandTest {
    private static final Path SHIPPED = Path.of("../scenarios/modes");

    @TempDir
    private Path folder = Path.of("");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void modesLieBesideTheScenario() throws IOException {
        Path modes = Files.createDirectory(folder.resolve("modes"));
        for (String name : List.of("brisk-comb.toml", "steady-wagon.toml")) {
            Files.copy(SHIPPED.resolve(name), modes.resolve(name));
        }
    }

    @Test
    void answersGivenAsOptionsStandInAScenarioThatReads() throws ScenarioProblems {
        assertEquals(
                ExitCode.DONE,
                run("--near-name", "Hill Top", "--size", "60 kB", "--by", "20 min", "--far-noise", "S6"),
                err::toString);
        Scenario scenario = ScenarioReader.read(file());
        Transfer transfer = scenario.transfers().get(0);
        assertEquals("Hill Top", scenario.near().name());
        assertEquals("Gateway", scenario.far().name());
        assertEquals(60_000, transfer.files().get(0).bytes());
        assertEquals(List.of(1200.0), transfer.deadlinesSeconds());
        assertEquals(4 * 1200, scenario.horizonSeconds());
        assertEquals(2, scenario.modes().size());
    }

    /** A time of day is the next one after pressing send; four deadlines are watched, a day at most. */
    @ParameterizedTest
    @CsvSource({"18:05, 18:35, 1800, 7200", "23:50, by 00:10, 1200, 4800", "06:00, 22:00, 57600, 86400"})
    void aDeadlineMayBeATimeOfDay(String clock, String by, double deadlineSeconds, double horizonSeconds)
            throws ScenarioProblems {
        assertEquals(ExitCode.DONE, run("--clock", clock, "--by", by), err::toString);
        Scenario scenario = ScenarioReader.read(file());
        assertEquals(List.of(deadlineSeconds), scenario.transfers().get(0).deadlinesSeconds());
        assertEquals(horizonSeconds, scenario.horizonSeconds());
    }

    @Test
    void theTimeOfSendingIsNoDeadline() {
        assertEquals(ExitCode.BAD_INPUT, run("--clock", "18:00", "--by", "18:00"));
        assertTrue(err.toString().startsWith("--by: "), err::toString);
    }

    @ParameterizedTest
    @CsvSource({"70 km, mid-latitude-disturbed-nvis, 604 km", "800 km, mid-latitude-moderate, 1000 km"})
    void thePathFollowsFromTheDistance(String ground, String condition, String path) throws IOException {
        // Over two legs to a layer 300 km up: 2 sqrt(35^2 + 300^2) = 604.1 km, 2 sqrt(400^2 + 300^2) = 1000 km.
        assertEquals(ExitCode.DONE, run("--ground-distance", ground), err::toString);
        String text = Files.readString(file());
        assertTrue(text.contains("condition = \"" + condition + "\""), text);
        assertTrue(text.contains("distance = \"" + path + "\""), text);
    }

    @Test
    void questionsAreAskedUntilTheAnswerMakesSense() throws ScenarioProblems {
        assertEquals(
                ExitCode.DONE,
                answering("Hill Top\n\n12 parsecs\n500 km\n85 m\n40 m\n\n\n\nS12\nS9\n\n\n\n"),
                err::toString);
        Scenario scenario = ScenarioReader.read(file());
        assertEquals("Hill Top", scenario.near().name());
        assertEquals(2, times(out.toString(), "How far apart are they"), out::toString);
        assertEquals(2, times(out.toString(), "On which band"), out::toString);
        assertEquals(
                2, times(out.toString(), "What does your meter show while the other station sends"), out::toString);
    }

    /** Who is asked and goes away has answered nothing: no default stands in for what was left open. */
    @Test
    void answersThatEndEarlyWriteNothing() {
        assertEquals(ExitCode.BAD_INPUT, answering("Hill Top\n\n320\n"));
        assertTrue(err.toString().startsWith("The answers ended before the last question"), err::toString);
        assertFalse(Files.exists(file()));
    }

    @Test
    void surroundingsStandInForANoiseThatNobodyRead() throws IOException, ScenarioProblems {
        assertEquals(ExitCode.DONE, run("--band", "40 m", "--far-noise", "Quiet rural"), err::toString);
        String text = Files.readString(file());
        assertTrue(text.contains("\nnoise = \"S3\" "), text);
        assertTrue(text.contains("\nnoise-environment = \"quiet-rural\"\n"), text);
        assertTrue(text.contains("\nfrequency = \"7.05 MHz\"\n"), text);
        assertEquals("Gateway", ScenarioReader.read(file()).far().name());
    }

    @Test
    void aWrongOptionIsToldByItsNameAndNothingIsWritten() {
        assertEquals(ExitCode.BAD_INPUT, run("--size", "40 kb"));
        assertTrue(err.toString().startsWith("--size: "), err::toString);
        assertFalse(Files.exists(file()));
    }

    @Test
    void aDeadlineBeyondADayIsToldInTheWordsOfTheQuestion() {
        assertEquals(ExitCode.BAD_INPUT, run("--by", "25 h"));
        assertTrue(
                err.toString()
                        .startsWith(
                                "--by: \"25 h\" is more than a day, and nothing is watched for longer; write a time of at"
                                        + " most \"24 h\""),
                err::toString);
        assertEquals(ExitCode.DONE, run("--by", "24 h"), err::toString);
    }

    @Test
    void aFileThatIsThereIsNotReplaced() throws IOException {
        Files.writeString(file(), "mine");
        assertEquals(ExitCode.BAD_INPUT, run("--size", "40 kB"));
        assertEquals("mine", Files.readString(file()));
    }

    @Test
    void withoutModesBesideItItSaysWhereToPutTheScenario() {
        assertEquals(
                ExitCode.BAD_INPUT,
                execute("new", folder.resolve("modes/x.toml").toString(), "--size", "1 kB"));
        assertTrue(err.toString().contains("scenarios/my-link.toml"), err::toString);
    }

    @Test
    void whatIsTypedStaysWhatItIs() throws ScenarioProblems {
        assertEquals(ExitCode.DONE, run("--near-name", "a\" \\ ${seed}\n[evil]"), err::toString);
        assertEquals("a\" \\ ${seed} [evil]", ScenarioReader.read(file()).near().name());
    }

    private Path file() {
        return folder.resolve("my-link.toml");
    }

    private int run(String... options) {
        return execute(Stream.concat(Stream.of("new", file().toString()), Stream.of(options))
                .toArray(String[]::new));
    }

    private int answering(String lines) {
        InputStream before = System.in;
        System.setIn(new ByteArrayInputStream(lines.getBytes(Charset.defaultCharset())));
        try {
            return run();
        } finally {
            System.setIn(before);
        }
    }

    private int execute(String... arguments) {
        CommandLine program = Main.commandLine(
                scenario -> {
                    throw new AssertionError("nothing is simulated");
                },
                Interruption.never());
        return program.setOut(new PrintWriter(out)).setErr(new PrintWriter(err)).execute(arguments);
    }

    private static int times(String text, String part) {
        return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
    }
}
