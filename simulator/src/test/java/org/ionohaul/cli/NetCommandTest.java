package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

final class NetCommandTest {
    private static final String VALLEY = "../scenarios/nets/bridge-valley.toml";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder = Path.of("");

    private int run(Interruption interruption, String... more) {
        return Main.commandLine(scenario -> new Trials(scenario)::run, interruption)
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(
                        Stream.concat(Stream.of("net", VALLEY), Stream.of(more)).toArray(String[]::new));
    }

    private int run(String... more) {
        return run(Interruption.never(), more);
    }

    private static void assertSameFiles(Path one, Path other) throws IOException {
        for (String file : List.of("net.html", "net.csv", "net.json")) {
            assertEquals(Files.readString(one.resolve(file)), Files.readString(other.resolve(file)), file);
        }
    }

    @Test
    void oneAndThreeThreadsWriteTheSame() throws IOException {
        Path one = folder.resolve("one");
        Path three = folder.resolve("three");
        assertEquals(ExitCode.DONE, run("--trials", "26", "--threads", "1", "--out", one.toString()), err::toString);
        assertEquals(ExitCode.DONE, run("--trials", "26", "--threads", "3", "--out", three.toString()), err::toString);
        assertSameFiles(one.resolve("bridge-valley-14-net"), three.resolve("bridge-valley-14-net"));
        String told = out.toString();
        assertTrue(told.contains("14 stations, 1 gateway, 1 channel, mode Patient climber"), told);
        assertTrue(told.lines().filter(it -> !it.startsWith("Written")).allMatch(it -> it.length() <= 80), told);
    }

    /** Interrupted among the trials of the second value, then resumed. */
    @Test
    void anInterruptedRunGoesOnAndEndsAsIfItHadNot() throws IOException {
        String[] asked = {"--trials", "8", "--threads", "1", "--vary", "load=1 | 2", "--out"};
        Path whole = folder.resolve("whole");
        Path broken = folder.resolve("broken");
        assertEquals(ExitCode.DONE, run(with(asked, whole.toString())), err::toString);
        assertEquals(ExitCode.PARTIAL, runInterrupted(broken, with(asked, broken.toString())), err::toString);
        assertEquals(ExitCode.DONE, run(with(asked, broken.toString(), "--resume")), err::toString);
        assertSameFiles(whole.resolve("bridge-valley-14-net-load"), broken.resolve("bridge-valley-14-net-load"));
    }

    /** The first value stands in the journal when the interruption comes. */
    private int runInterrupted(Path results, String... asked) {
        Interruption interruption = Interruption.never();
        Thread watcher = new Thread(() -> {
            Path journal = results.resolve("bridge-valley-14-net-load.journal");
            while (!Thread.currentThread().isInterrupted() && journal.toFile().length() < 2_000) {
                Thread.onSpinWait();
            }
            interruption.ask();
        });
        watcher.start();
        int exitCode = run(interruption, asked);
        watcher.interrupt();
        return exitCode;
    }

    private static String[] with(String[] asked, String... more) {
        return Stream.concat(Stream.of(asked), Stream.of(more)).toArray(String[]::new);
    }

    @Test
    void whatIsWrongInTheFileIsTold() {
        assertEquals(ExitCode.BAD_INPUT, run("--set", "discipline.access=rooster", "--out", folder.toString()));
        assertTrue(err.toString().contains("did you mean \"roster\"?"), err::toString);
    }

    private int check(String... more) {
        return Main.commandLine(scenario -> new Trials(scenario)::run, Interruption.never())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(Stream.concat(Stream.of("check", VALLEY), Stream.of(more))
                        .toArray(String[]::new));
    }

    @Test
    void checkSaysWhatWasUnderstoodOfANet() {
        assertEquals(
                ExitCode.DONE,
                check("--set", "gateway.channels=3", "--set", "gateway.calls=true", "--set", "operators.patience=1 h"),
                err::toString);
        String told = out.toString().replaceAll("\\s+", " ");
        for (String said : List.of(
                "bridge-valley.toml: in order. 14 stations, 1 gateway, 100 trials.",
                "A trial begins at 18:00 and is watched for 90 min, until 19:30.",
                "3 channels, scanned, 5 s on each",
                "what it has for a station it calls for",
                "Valley desk is heard at 16 dB in the middle (12 to 20), hears them at 13 dB in the middle (8 to 18)",
                "or when it is 1 h old",
                "\"first report\" from each, 1.7 kB in the middle",
                "once within 15 min after 18:05; priority 2; due in 15 min or 40 min",
                "\"instruction\" for each",
                "Of all pairs of stations 42 % are hidden from each other")) {
            assertTrue(told.contains(said), said + " in " + told);
        }
        assertTrue(out.toString().lines().allMatch(it -> it.length() <= 80), out::toString);
    }

    @Test
    void checkTellsWhatIsWrongWithANet() {
        assertEquals(ExitCode.BAD_INPUT, check("--set", "group.1.cont=3", "--set", "operators.listens=soon"));
        assertTrue(err.toString().contains("did you mean \"group.1.count\"?"), err::toString);
        assertTrue(err.toString().contains("\"soon\" is not a time"), err::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "group.1.count | 2 , 4 , 6 | knee",
                "load | 0.5 , 1 , 2 | knee",
                "group.1.message.2.rate | 1 /h , 3 /h | knee",
                "gateway.channels | 1 , 2 | best",
                "discipline.access | free , roster , in-turn | best",
                "discipline.order | first-come , short-first | best",
                "operators.hold-off | 5 s .. 40 s , 60 s | best"
            })
    void anyKeyCanBeVaried(String key, String values, String answered) throws IOException {
        String asked = key + "=" + values.replace(",", "|");
        assertEquals(
                ExitCode.DONE,
                run("--trials", "26", "--set", "horizon=45 min", "--vary", asked, "--out", folder.toString()),
                err::toString);
        String told = out.toString().replaceAll("\\s+", " ");
        assertTrue(
                answered.equals("knee") ? told.contains("knee lies") : told.contains("first report in 15 min: "), told);
        assertTrue(
                out.toString().lines().filter(it -> !it.startsWith("Written")).allMatch(it -> it.length() <= 80));
        String page = Files.readString(only("net.html"));
        assertEquals(values.matches("[\\d., /h]+"), page.contains("id=\"knee\""), "a curve over numbers");
        List<String> lines = Files.readAllLines(only("net.csv"));
        for (String value : values.split(" , ", -1)) {
            assertTrue(lines.stream().anyMatch(it -> it.startsWith(key + "," + value + ",")), value);
        }
    }

    private Path only(String name) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(it -> it.endsWith(name)).findFirst().orElseThrow();
        }
    }
}
