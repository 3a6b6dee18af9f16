package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Runs on the air as their planner meets them: the demo's roster, whose sessions are short. */
final class RunsCommandTest {
    private static final String FOLDER = "river-watch-41-runs-roster-upload";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final Interruption interruption = Interruption.never();

    @TempDir
    private Path folder = Path.of("");

    private int run(Path results, String... more) {
        return Main.commandLine(scenario -> new Trials(scenario)::run, interruption)
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(Stream.concat(
                                Stream.of("runs", "../scenarios/river-watch.toml", "--out", results.toString()),
                                Stream.of(more))
                        .toArray(String[]::new));
    }

    @Test
    void oneAndThreeThreadsWriteTheSameFiles() throws IOException {
        Path one = folder.resolve("one");
        Path three = folder.resolve("three");
        String[] asked = {"--transfer", "roster", "--trials", "3", "--start", "18:20"};
        assertEquals(
                ExitCode.DONE,
                run(
                        one,
                        Stream.concat(Stream.of(asked), Stream.of("--threads", "1"))
                                .toArray(String[]::new)),
                err::toString);
        assertEquals(
                ExitCode.DONE,
                run(
                        three,
                        Stream.concat(Stream.of(asked), Stream.of("--threads", "3"))
                                .toArray(String[]::new)),
                err::toString);
        for (String file : List.of("runs.html", "runs.csv", "runs.json")) {
            assertArrayEquals(
                    Files.readAllBytes(one.resolve(FOLDER).resolve(file)),
                    Files.readAllBytes(three.resolve(FOLDER).resolve(file)),
                    file);
        }
        assertTrue(out.toString().replaceAll("\\s+", " ").contains("First run at 18:20"), out::toString);
    }

    @Test
    void whoBreaksOffAtOnceFindsNothingWritten() {
        interruption.ask();
        assertEquals(ExitCode.PARTIAL, run(folder, "--transfer", "roster", "--trials", "3"));
        assertTrue(err.toString().contains("nothing was written"), err::toString);
        assertFalse(Files.exists(folder.resolve(FOLDER)));
        assertFalse(Files.exists(folder.resolve(FOLDER + "-partial")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--mode brisk-comb | two modes or more",
                "--mode brisk-comb --mode brisk-comb | two modes or more",
                "--mode brisk-combe --mode slow-whistle | did you mean \"brisk-comb\"?",
                "--transfer rooster | did you mean \"roster\"?",
                "--start 18:05 | begin the scenario earlier with --set",
                "--gap=-1min | --gap",
                "--by 0s | must be a time above zero",
                "--by 25h | --by lies beyond the horizon of 1 h"
            })
    void whatIsWrongIsToldBeforeAnythingRuns(String options, String told) {
        assertEquals(ExitCode.BAD_INPUT, run(folder, options.split(" ")));
        assertTrue(err.toString().contains(told), err::toString);
    }
}
