package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The whole program on the demo, nothing invented: what it writes depends on the file and the seed alone. */
final class SameBytesTest {
    private static final List<String> FILES = List.of("report.html", "summary.json", "trials.csv");

    @TempDir
    private Path folder = Path.of("");

    @Test
    void oneTwoThreeAndEightThreadsWriteTheSameFiles() throws IOException {
        Path one = study("river-watch-41", "--threads", "1");
        for (String threads : List.of("2", "3", "8")) {
            Path many = study("river-watch-41", "--threads", threads);
            for (String file : FILES) {
                assertArrayEquals(read(one, file), read(many, file), file + " with " + threads + " threads");
            }
        }
    }

    @Test
    void anotherSeedWritesOtherTrials() throws IOException {
        Path one = study("river-watch-41", "--threads", "2");
        Path other = study("river-watch-42", "--threads", "2", "--seed", "42");
        assertFalse(Arrays.equals(read(one, "trials.csv"), read(other, "trials.csv")));
    }

    /** Runs the study into a folder of its own and returns that of its results. */
    private Path study(String name, String... more) throws IOException {
        Path out = Files.createTempDirectory(folder, "study");
        String[] first = {"study", "../scenarios/river-watch.toml", "--trials", "12", "--out", out.toString()};
        String[] arguments = Arrays.copyOf(first, first.length + more.length);
        System.arraycopy(more, 0, arguments, first.length, more.length);
        StringWriter err = new StringWriter();
        CommandLine program = Main.commandLine(scenario -> new Trials(scenario)::run, Interruption.never())
                .setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(err));
        assertEquals(ExitCode.DONE, program.execute(arguments), err::toString);
        assertAll(FILES.stream().map(file -> () -> assertFalse(read(out.resolve(name), file).length == 0)));
        return out.resolve(name);
    }

    private static byte[] read(Path results, String file) throws IOException {
        return Files.readAllBytes(results.resolve(file));
    }
}
