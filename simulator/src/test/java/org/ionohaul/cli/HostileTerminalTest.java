package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.TrialSource;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** What a scenario from somebody else does to the terminal and the disk of who runs it: nothing beyond its results. */
final class HostileTerminalTest {
    private static final Path SHIPPED = Path.of("../scenarios");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder = Path.of("");

    private int run(String... arguments) {
        return run(scenario -> new Trials(scenario)::run, arguments);
    }

    private int run(Function<Scenario, TrialSource> trials, String... arguments) {
        CommandLine program = Main.commandLine(trials, Interruption.never());
        program.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
        return Main.execute(program, arguments);
    }

    /** Writes a scenario that differs from a shipped one, and its mode. */
    private String written(String file, String old, String hostile) throws IOException {
        Path modes = Files.createDirectories(folder.resolve("modes"));
        for (String mode :
                List.of("brisk-comb.toml", "patient-climber.toml", "slow-whistle.toml", "steady-wagon.toml")) {
            Files.writeString(
                    modes.resolve(mode),
                    Files.readString(SHIPPED.resolve("modes").resolve(mode)));
        }
        String text = Files.readString(SHIPPED.resolve("river-watch.toml"));
        assertTrue(text.contains(old), old);
        return Files.writeString(folder.resolve(file), text.replace(old, hostile))
                .toString();
    }

    private List<Path> everything() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(folder::relativize)
                    .filter(it -> !it.toString().endsWith(".toml"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../../../x", "/x/y", "a/b/c", "..", "con", "C:\\\\x"})
    @DisplayName("a transfer's name never leads its story out of the folder of results, nor deeper into it")
    void namesStayInTheFolderOfResults(String name) throws IOException {
        String file = written("river.toml", "name = \"roster\"", "name = \"" + name + "\"");
        String toml = name.replace("\\\\", "\\");
        String results = folder.resolve("a/b/c").toString();
        assertEquals(
                ExitCode.DONE, run("trace", file, "--transfer", toml, "--trial", "1", "--out", results), err::toString);
        List<Path> files = everything();
        assertEquals(4, files.size(), files::toString);
        files.forEach(it -> assertTrue(it.startsWith(Path.of("a/b/c")) && it.getNameCount() == 5, it::toString));
    }

    @Test
    @DisplayName("a title with an escape sequence is refused in words that hold none")
    void titlesDoNotReachTheTerminalRaw() throws IOException {
        String file = written("river.toml", "title = \"River", "title = \"\\u001b[2J\\u202eRiver");
        assertEquals(ExitCode.BAD_INPUT, run("check", file));
        assertPlain();
        assertTrue(err.toString().contains("title: "), err::toString);
    }

    @Test
    @DisplayName("control characters of a file's name or of what is set are written out, not obeyed")
    void namesOfFilesDoNotReachTheTerminalRaw() throws IOException {
        String file = written("esc\u001b[2J.toml", "River", "Brook");
        assertEquals(ExitCode.DONE, run("check", file), err::toString);
        assertTrue(out.toString().contains("esc\\u001B[2J.toml: in order."), out::toString);
        assertEquals(ExitCode.BAD_INPUT, run("check", file, "--set", "x\u001b=\u001b[2J", "--set", "near.snr=\u202e"));
        assertEquals(ExitCode.BAD_INPUT, run("check", file, "--no\u001b[2J"));
        assertPlain();
    }

    private void assertPlain() {
        String all = out.toString() + err;
        assertTrue(all.lines().allMatch(line -> line.equals(org.ionohaul.scenario.PlainText.of(line))), all);
    }

    @Test
    @DisplayName("help may be bold: nothing of it comes from a file")
    void helpIsLeftAlone() {
        assertEquals(ExitCode.DONE, run("study", "--help"));
        assertTrue(out.toString().contains("--precision"), out::toString);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "10000", "2147483647"})
    @DisplayName("a number of threads that no machine has is refused with those it may be")
    void threadsAreBounded(String threads) {
        assertEquals(
                ExitCode.BAD_INPUT,
                run("promise", SHIPPED.resolve("noon-hop.toml").toString(), "--threads", threads));
        assertTrue(err.toString().matches("(?s)--threads must be from 1 to \\d+: " + threads + ".*"), err::toString);
    }

    @ParameterizedTest
    @ValueSource(strings = {"13 h", "25 h", "1000 h"})
    @DisplayName("a promise by a deadline beyond the horizon is answered or refused in words")
    void deadlinesBeyondTheHorizonEndInWords(String deadline) throws IOException {
        String file = written("river.toml", "River", "Brook");
        int code =
                run("promise", file, "--by", deadline, "--trials", "2", "--threads", "1", "--out", folder.toString());
        assertTrue(code == ExitCode.DONE || code == ExitCode.BAD_INPUT, err::toString);
        assertFalse(err.toString().contains("Exception"), err::toString);
    }

    @Test
    @DisplayName("a link in the place of a folder of results is not followed to what it leads to")
    void linksAreNotReplaced() throws IOException {
        String file = written("river.toml", "River", "Brook");
        Path precious = Files.createDirectories(folder.resolve("precious"));
        Files.writeString(precious.resolve("story.txt"), "mine");
        Path results = Files.createDirectories(folder.resolve("results"));
        Files.createSymbolicLink(results.resolve("river-41-trace-photo-upload-brisk-comb-1"), precious);
        assertEquals(ExitCode.NOT_WRITTEN, run("trace", file, "--trial", "1", "--out", results.toString()));
        assertEquals("mine", Files.readString(precious.resolve("story.txt")));
        assertTrue(err.toString().contains("is a link"), err::toString);
    }

    @Test
    @DisplayName("a fault of the program says what happened and asks for a report, before how it came about")
    void faultsAreExplained() throws IOException {
        String file = written("river.toml", "River", "Brook");
        int code = run(
                scenario -> trial -> {
                    throw new IllegalStateException("\u001b[2Jbroken");
                },
                "study",
                file,
                "--threads",
                "1",
                "--out",
                folder.resolve("results").toString());
        assertEquals(ExitCode.FAILED, code);
        assertTrue(err.toString().startsWith("ionohaul failed: "), err::toString);
        assertTrue(
                err.toString().contains("Please report it with your command, the scenario and mode files"),
                err::toString);
        assertPlainBut('\t');
    }

    @Test
    @DisplayName(
            "an error of the machine, such as no memory left, is explained too and ends with the code of a failure")
    void errorsAreExplained() throws IOException {
        String file = written("river.toml", "River", "Brook");
        int code = run(
                scenario -> {
                    throw new OutOfMemoryError("Java heap space");
                },
                "study",
                file,
                "--out",
                folder.resolve("results").toString());
        assertEquals(ExitCode.FAILED, code);
        assertTrue(err.toString().startsWith("ionohaul failed: the memory is used up."), err::toString);
        assertFalse(Files.exists(folder.resolve("results/river-41")));
    }

    private void assertPlainBut(char allowed) {
        assertTrue(
                err.toString()
                        .lines()
                        .allMatch(line -> line.chars().noneMatch(it -> it != allowed && Character.isISOControl(it))),
                err::toString);
    }
}
