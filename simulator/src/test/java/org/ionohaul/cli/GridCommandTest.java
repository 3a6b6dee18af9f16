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
import java.util.stream.Stream;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Grids as a planner meets them. */
final class GridCommandTest {
    private static final String FOLDER = "river-watch-41-hours";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final Interruption interruption = Interruption.never();

    @TempDir
    private Path folder = Path.of("");

    private int run(Path results, String... more) throws IOException {
        return run("label.month,label.hour,far.snr\nMay,08,14 dB\nMay,20,2 dB\nJune,08,\n", results, more);
    }

    private int run(String cases, Path results, String... more) throws IOException {
        Path table = folder.resolve("hours.csv");
        Files.writeString(table, cases);
        return Main.commandLine(scenario -> new Trials(scenario)::run, interruption)
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(Stream.concat(
                                Stream.of(
                                        "grid",
                                        "../scenarios/river-watch.toml",
                                        "--rows",
                                        table.toString(),
                                        "--trials",
                                        "5",
                                        "--out",
                                        results.toString()),
                                Stream.of(more))
                        .toArray(String[]::new));
    }

    private static String csv(Path results) throws IOException {
        return Files.readString(results.resolve(FOLDER).resolve("grid.csv"));
    }

    @Test
    @DisplayName("one and three threads write the same table")
    void sameBytes() throws IOException {
        Path one = folder.resolve("one");
        Path three = folder.resolve("three");
        assertEquals(ExitCode.DONE, run(one, "--threads", "1"), err::toString);
        assertEquals(ExitCode.DONE, run(three, "--threads", "3", "--map", "label.month,label.hour"), err::toString);

        assertEquals(csv(one), csv(three));
        List<String> lines = csv(one).lines().toList();
        assertEquals(1 + 3 * 2 * 2 * 4, lines.size());
        assertTrue(lines.get(0).startsWith("row,label.month,label.hour,far.snr,transfer,direction,"), lines.get(0));
        assertTrue(out.toString().lines().anyMatch(it -> it.strip().startsWith("June")), out::toString);
    }

    @Test
    @DisplayName("an interruption in the first row writes nothing; --resume then has nothing to go on with")
    void interruptedAtOnce() throws IOException {
        interruption.ask();
        assertEquals(ExitCode.PARTIAL, run(folder.resolve("results")));
        assertTrue(err.toString().contains("nothing was written"), err::toString);
        assertFalse(Files.exists(folder.resolve("results").resolve(FOLDER)));
    }

    @Test
    @DisplayName("combinations of lists are a grid too")
    void combinations() throws IOException {
        Path results = folder.resolve("results");
        int code = Main.commandLine(scenario -> new Trials(scenario)::run, interruption)
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(
                        "grid",
                        "../scenarios/river-watch.toml",
                        "--set",
                        "far.snr=14 dB | 16 dB",
                        "--set",
                        "near.snr=15 dB | 20 dB",
                        "--set",
                        "modes=[\"brisk-comb\"]",
                        "--trials",
                        "2",
                        "--out",
                        results.toString());
        assertEquals(ExitCode.DONE, code, err::toString);
        try (Stream<Path> folders = Files.list(results)) {
            Path written = folders.findFirst().orElseThrow().resolve("grid.csv");
            assertEquals(1 + 4 * 2 * 2, Files.readAllLines(written).size());
        }
    }

    @Test
    @DisplayName("a wrong head is told once, not once a row")
    void wrongHead() throws IOException {
        String cases = "label.hour,far.snrr,near.snr\n08,14 dB,9 dB\n20,2 dB,loud\n21,2 dB,9 dB\n22,,\n";
        assertEquals(ExitCode.BAD_INPUT, run(cases, folder));
        List<String> told =
                err.toString().lines().filter(it -> !it.startsWith(" ")).toList();
        assertEquals(3, told.size(), told::toString);
        assertTrue(told.get(0).endsWith("hours.csv:2:4: far.snrr: there is no such key (so in 3 rows)"), told.get(0));
        assertTrue(told.get(1).contains("hours.csv:3:9: near.snr: "), told.get(1));
        assertEquals("2 problems; nothing was simulated or written.", told.get(2));
    }

    @Test
    @DisplayName("a map of a column that is not there names the nearest")
    void unknownColumn() throws IOException {
        assertEquals(ExitCode.BAD_INPUT, run(folder, "--map", "label.month,label.hours"));
        assertTrue(err.toString().contains("label.hour"), err::toString);
    }
}
