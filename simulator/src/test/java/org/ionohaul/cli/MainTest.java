package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.session.Cause;
import org.ionohaul.session.DataRateUse;
import org.ionohaul.session.Ending;
import org.ionohaul.session.Outcome;
import org.ionohaul.session.ProgressCurve;
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.TimeBudget;
import org.ionohaul.study.TrialSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** The program as its user meets it, with sessions that take as many minutes as their trial's number. */
final class MainTest {
    private static final Path DEMO = Path.of("../scenarios/river-watch.toml");
    private static final long MINUTE = 60_000_000_000L;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final Interruption interruption = Interruption.never();

    @TempDir
    private Path folder = Path.of("");

    private int run(String... arguments) {
        return program(this::trials, interruption).execute(arguments);
    }

    private TrialSource trials(Scenario scenario) {
        int sessions = scenario.modes().size()
                * scenario.transfers().stream()
                        .mapToInt(it -> it.directions().size())
                        .sum();
        return trial -> {
            if (trial == 20) {
                interruption.ask();
            }
            return Collections.nCopies(sessions, session(trial + 1));
        };
    }

    private static SessionResult session(long minutes) {
        long at = minutes * MINUTE;
        Map<Cause, Long> budget = new EnumMap<>(Cause.class);
        budget.put(Cause.NEW_PAYLOAD, at);
        return new SessionResult(
                Outcome.CLOSED,
                Ending.COMPLETED,
                at,
                OptionalLong.of(at),
                OptionalLong.of(at),
                OptionalLong.of(at),
                List.of(OptionalLong.of(at)),
                ProgressCurve.of(new long[] {at}, new long[] {1}),
                TimeBudget.of(budget),
                List.of(new DataRateUse(at, 1, 0)),
                0,
                1,
                0,
                0);
    }

    private String[] study(String... more) {
        return Stream.concat(
                        Stream.of("study", DEMO.toString(), "--out", folder.toString(), "--threads", "1"),
                        Stream.of(more))
                .toArray(String[]::new);
    }

    @Test
    void aStudyPrintsTheAnswerAndWritesThreeFiles() throws IOException {
        assertEquals(ExitCode.DONE, run(study("--trials", "10")), err::toString);
        Path results = folder.resolve("river-watch-41");
        assertAll(
                () -> assertTrue(out.toString().contains("9 of 10 trials"), out::toString),
                () -> assertTrue(Files.exists(results.resolve("report.html"))),
                () -> assertTrue(Files.exists(results.resolve("summary.json"))),
                () -> assertTrue(Files.exists(results.resolve("trials.csv"))),
                () -> assertEquals("", err.toString(), "no progress bar when nobody watches"));
        assertTrue(Files.readString(results.resolve("summary.json")).contains("modes/brisk-comb.toml"));
    }

    @Test
    void theRestIsPrintedIfAskedForInLinesOfTheAskedLength() {
        assertEquals(ExitCode.DONE, run(study("--trials", "10", "--width", "60")));
        String first = out.toString();
        first.lines().filter(it -> !it.startsWith("Written to ")).forEach(it -> assertTrue(it.length() <= 60, it));
        out.getBuffer().setLength(0);
        assertEquals(ExitCode.DONE, run(study("--trials", "10", "--width", "60", "--full")));
        String answer = first.substring(0, first.indexOf("--full prints"));
        assertTrue(out.toString().startsWith(answer.strip()), out::toString);
        assertTrue(out.toString().lines().count() > 100 + answer.lines().count(), out::toString);
    }

    /** The library's own switch stands for a terminal that shows colours. */
    @Test
    void whereATerminalHasColoursTheyAreUsedUnlessPlainIsAskedFor() {
        String before = System.setProperty("picocli.ansi", "true");
        try {
            assertEquals(ExitCode.DONE, run(study("--trials", "10")));
            assertTrue(out.toString().startsWith("\u001b[1mRiver watch"), out::toString);
            out.getBuffer().setLength(0);
            assertEquals(ExitCode.DONE, run(study("--trials", "10", "--plain")));
            assertFalse(out.toString().contains("\u001b"), out::toString);
        } finally {
            if (before == null) {
                System.clearProperty("picocli.ansi");
            } else {
                System.setProperty("picocli.ansi", before);
            }
        }
    }

    @Test
    void aTerminalTooNarrowOrTooWideIsRefused() {
        assertEquals(ExitCode.BAD_INPUT, run(study("--width", "59")));
        assertTrue(err.toString().startsWith("--width must be from 60 to 200: 59"), err::toString);
        assertEquals(ExitCode.BAD_INPUT, run(study("--width", "201")));
    }

    @Test
    void theSeedOfTheCommandLineNamesTheFolder() {
        assertEquals(ExitCode.DONE, run(study("--trials", "10", "--seed", "7")));
        assertTrue(Files.isDirectory(folder.resolve("river-watch-7")));
    }

    /** The base case stays where it is, each question has a folder of its own, and the terminal says what it was. */
    @Test
    void aWhatIfNeverTakesThePlaceOfTheFilesOwnResults() throws IOException {
        assertEquals(ExitCode.DONE, run(study("--trials", "10")), err::toString);
        assertFalse(out.toString().contains("What if:"), out::toString);
        String base = Files.readString(folder.resolve("river-watch-41/summary.json"));
        assertEquals(ExitCode.DONE, run(study("--trials", "10", "--set", "near.snr=9 dB")), err::toString);
        assertTrue(
                out.toString().contains("What if: near.snr = 9 dB (the rest as in the file)\n\nRiver watch"),
                out::toString);
        assertEquals(ExitCode.DONE, run(study("--trials", "10", "--set", "near.snr=9_dB")), err::toString);
        assertEquals(ExitCode.DONE, run(study("--trials", "10", "--set", "trials=9")), err::toString);
        try (Stream<Path> folders = Files.list(folder)) {
            List<String> names =
                    folders.map(it -> it.getFileName().toString()).sorted().toList();
            assertEquals(3, names.size(), names::toString);
            assertEquals("river-watch-41", names.get(0));
            assertTrue(names.get(1).startsWith("river-watch-41-near.snr-9_dB"), names::toString);
            assertTrue(names.get(2).startsWith("river-watch-41-near.snr-9_dB"), names::toString);
        }
        assertNotEquals(base, Files.readString(folder.resolve("river-watch-41/summary.json")), "9 trials of the file");
    }

    @Test
    void anInterruptedStudyKeepsWhatIsDoneAndSaysSo() throws IOException {
        assertEquals(ExitCode.PARTIAL, run(study("--trials", "100")));
        assertTrue(out.toString().contains("PARTIAL: interrupted after 21 of 100 trials."), out::toString);
        assertTrue(Files.readString(folder.resolve("river-watch-41-partial/summary.json"))
                .contains("\"partial\" : true"));
    }

    @Test
    void aStudyThatCannotWriteSaysSoBeforeItSimulates() throws IOException {
        Files.writeString(folder.resolve("river-watch-41"), "someone's notes");
        assertEquals(ExitCode.NOT_WRITTEN, run(study("--trials", "10")));
        assertTrue(err.toString().startsWith("Cannot write results to "), err::toString);
        assertEquals("", out.toString());
        assertEquals("someone's notes", Files.readString(folder.resolve("river-watch-41")));
    }

    @Test
    void aSkyIsWrittenToAFolderOfItsOwnBesideWhatIsThere() throws IOException {
        Files.writeString(folder.resolve("notes.txt"), "someone's notes");
        String[] sky = {"sky", DEMO.toString(), "--trial", "3", "--out", folder.toString()};
        assertEquals(ExitCode.DONE, run(sky), err::toString);
        assertEquals("someone's notes", Files.readString(folder.resolve("notes.txt")));
        assertTrue(Files.exists(folder.resolve("river-watch-41-sky-3/sky.csv")));
        Files.writeString(folder.resolve("river-watch-41-sky-3/notes.txt"), "more notes");
        assertEquals(ExitCode.NOT_WRITTEN, run(sky));
        assertTrue(err.toString().contains("no result of this program"), err::toString);
        assertTrue(err.toString().contains("notes.txt"), err::toString);
        assertEquals("more notes", Files.readString(folder.resolve("river-watch-41-sky-3/notes.txt")));
    }

    @Test
    void problemsOfTheScenarioAreListedWithTheirPlaceAndNothingIsWritten() throws IOException {
        Path bad = folder.resolve("bad.toml");
        Files.writeString(bad, Files.readString(DEMO).replace("seed = 41", "sead = 41\nhorizn = 3"));
        assertEquals(ExitCode.BAD_INPUT, run("study", bad.toString(), "--out", folder.toString()));
        assertTrue(
                Pattern.compile("bad\\.toml:\\d+:1: sead")
                        .matcher(err.toString())
                        .find(),
                err::toString);
        assertTrue(err.toString().contains("horizn"), err::toString);
        assertFalse(Files.exists(folder.resolve("bad-1")));
    }

    @Test
    void checkSaysWhenAScenarioIsInOrder() {
        assertEquals(ExitCode.DONE, run("check", DEMO.toString()));
        assertTrue(out.toString().contains("in order. 4 modes"), out::toString);
    }

    @Test
    void aMissingScenarioIsBadInput() {
        assertEquals(
                ExitCode.BAD_INPUT, run("check", folder.resolve("none.toml").toString()));
        assertTrue(err.toString().contains("none.toml"), err::toString);
    }

    @Test
    void aWrongCommandLineIsBadInputAndPointsToTheHelp() {
        assertEquals(ExitCode.BAD_INPUT, run("study"));
        assertEquals(ExitCode.BAD_INPUT, run("studdy", "x"));
        assertEquals(ExitCode.BAD_INPUT, run(study("--trials", "many")));
        assertEquals(ExitCode.BAD_INPUT, run(study("--threads", "0")));
        assertTrue(err.toString().contains("ionohaul study --help"), err::toString);
    }

    @Test
    void theHelpFitsATerminalAndNamesTheExitCodes() {
        assertEquals(ExitCode.DONE, run("--help"));
        assertEquals(ExitCode.DONE, run("study", "--help"));
        out.toString().lines().forEach(line -> assertTrue(line.length() <= 80, line));
        assertTrue(out.toString().contains("interrupted"));
    }

    /** Every session takes as many minutes as its trial's number, whatever is sent: 9 of 10 trials take up to 9. */
    @Test
    void aPromiseSaysWhichSizeIsThroughByTheDeadline() {
        assertEquals(
                ExitCode.DONE,
                run("promise", DEMO.toString(), "--out", folder.toString(), "--trials", "10", "--by", "20 min"),
                err::toString);
        assertTrue(out.toString().contains("Within 20 min"), out::toString);
        assertTrue(out.toString().contains("From Osier Weir to Flood desk"), out::toString);
        assertTrue(Files.exists(folder.resolve("river-watch-41-promise-20min").resolve("promise.html")), out::toString);
        assertTrue(
                out.toString().lines().allMatch(it -> it.length() <= 80 || it.startsWith("Written to ")),
                out::toString);
    }

    @Test
    void aPromiseWithASizeSaysByWhen() {
        assertEquals(
                ExitCode.DONE,
                run(
                        "promise",
                        DEMO.toString(),
                        "--out",
                        folder.toString(),
                        "--trials",
                        "20",
                        "--size",
                        "900 B",
                        "--sure",
                        "80 %"),
                err::toString);
        assertTrue(out.toString().contains("900 bytes"), out::toString);
    }

    @Test
    void aPromiseWithSizeAndDeadlineSaysHowSureItIs() {
        assertEquals(
                ExitCode.DONE,
                run(
                        "promise",
                        DEMO.toString(),
                        "--out",
                        folder.toString(),
                        "--trials",
                        "10",
                        "--size",
                        "2 kB",
                        "--by",
                        "5 min"),
                err::toString);
        assertTrue(out.toString().contains("2 kB within 5 min: on at least "), out::toString);
        assertTrue(out.toString().contains("it was still being sent"), out::toString);
    }

    @Test
    void aDeadlineAfterTheHorizonIsAnsweredForTheHorizon() {
        for (String by : List.of("13 h", "25 h")) {
            assertEquals(
                    ExitCode.DONE,
                    run(
                            "promise",
                            DEMO.toString(),
                            "--out",
                            folder.toString(),
                            "--trials",
                            "2",
                            "--size",
                            "2 kB",
                            "--by",
                            by),
                    err::toString);
            assertTrue(out.toString().contains("The scenario ends at its horizon of 1 h"), out::toString);
        }
        assertTrue(
                out.toString().lines().allMatch(it -> it.length() <= 80 || it.startsWith("Written to ")),
                out::toString);
    }

    @Test
    void aPromiseThatMakesNoSenseIsBadInput() {
        assertEquals(ExitCode.BAD_INPUT, run("promise", DEMO.toString(), "--by", "15"));
        assertEquals(ExitCode.BAD_INPUT, run("promise", DEMO.toString(), "--by", "0 min"));
        assertEquals(ExitCode.BAD_INPUT, run("promise", DEMO.toString(), "--sure", "100 %"));
        assertEquals(ExitCode.BAD_INPUT, run("promise", DEMO.toString(), "--sure", "0.9 %"));
        assertEquals(ExitCode.BAD_INPUT, run("promise", DEMO.toString(), "--size", "2 MB"));
        assertTrue(err.toString().contains("has no unit"), err::toString);
    }

    @Test
    void anInterruptedStudyGoesOnToTheSameBytes() throws IOException {
        String[] arguments = study("--trials", "60", "--size-trials", "0");
        assertEquals(ExitCode.PARTIAL, run(arguments), err::toString);
        assertTrue(out.toString().contains("--resume"), out::toString);
        assertTrue(Files.exists(folder.resolve("river-watch-41.journal")));
        assertResumedIsWhole(arguments);
    }

    @Test
    void aStudyInterruptedWhileOtherSizesAreSentGoesOnToTheSameBytes() throws IOException {
        AtomicInteger trialsRun = new AtomicInteger();
        CommandLine hasty = program(
                scenario -> trial -> {
                    if (trialsRun.incrementAndGet() == 20) {
                        interruption.ask();
                    }
                    return trials(scenario).run(trial);
                },
                interruption);
        String[] arguments = study("--trials", "15", "--size-trials", "10");
        assertEquals(ExitCode.PARTIAL, hasty.execute(arguments), err::toString);
        assertTrue(out.toString().contains("PARTIAL: interrupted while files of other sizes were sent"), out::toString);
        assertTrue(Files.readString(folder.resolve("river-watch-41-partial/summary.json"))
                .contains("\"partial\" : true"));
        assertResumedIsWhole(arguments);
    }

    @Test
    void aStudyInterruptedAtSteadyLevelsHasSaidItsAnswerAndGoesOnToTheSameBytes() throws IOException {
        CommandLine hasty = program(
                scenario -> trial -> {
                    if (trial == 14) {
                        interruption.ask();
                    }
                    return trials(scenario).run(trial);
                },
                interruption);
        String[] arguments = study("--trials", "15", "--size-trials", "0");
        assertEquals(ExitCode.PARTIAL, hasty.execute(arguments), err::toString);
        String told = out.toString();
        assertTrue(told.indexOf("plan for") < told.indexOf("PARTIAL: interrupted while"), told);
        assertTrue(told.contains("15 simulated trials"), told);
        assertResumedIsWhole(arguments);
    }

    @Test
    void aStudyInterruptedAtRareMissesIsPartialAndGoesOnToTheSameBytes() throws IOException {
        String[] arguments = study("--trials", "15", "--size-trials", "0", "--full");
        String[] rare = Stream.concat(Stream.of(arguments), Stream.of("--rare")).toArray(String[]::new);
        CommandLine hasty = program(this::trials, interruption).setOut(interruptedAt("at all"));
        assertEquals(ExitCode.PARTIAL, hasty.execute(rare), err::toString);
        assertTrue(out.toString().contains("PARTIAL: interrupted before every deadline"), out::toString);
        assertFalse(out.toString().contains("PARTIAL: interrupted while"), out::toString);
        Path partial = folder.resolve("river-watch-41-partial");
        assertTrue(Files.exists(partial.resolve("rare.csv")));
        assertTrue(Files.readString(partial.resolve("summary.json")).contains("\"partial\" : true"));
        assertTrue(Files.readString(partial.resolve("report.html")).contains("or rare misses were looked at"));
        assertFalse(Files.exists(folder.resolve("river-watch-41")));
        assertResumedIsWhole(arguments);
        Path whole = folder.resolve("river-watch-41").resolve("summary.json");
        assertTrue(Files.readString(whole).contains("\"partial\" : false"));
    }

    @Test
    void aPromiseInterruptedAtRareMissesIsPartialAndWritesNothing() {
        String[] arguments = {
            "promise",
            DEMO.toString(),
            "--size",
            "38 kB",
            "--by",
            "25 min",
            "--trials",
            "15",
            "--out",
            folder.toString(),
            "--rare"
        };
        CommandLine hasty = program(this::trials, interruption).setOut(interruptedAt("promise"));
        assertEquals(ExitCode.PARTIAL, hasty.execute(arguments), err::toString);
        assertTrue(out.toString().contains("PARTIAL: interrupted before the deadline"), out::toString);
        assertArrayEquals(new String[0], folder.toFile().list());
    }

    /** Returns the terminal of one who presses Ctrl-C on reading these words. */
    private PrintWriter interruptedAt(String words) {
        return new PrintWriter(out) {
            @Override
            public void write(String text, int from, int length) {
                super.write(text, from, length);
                if (text.contains(words)) {
                    interruption.ask();
                }
            }
        };
    }

    @Test
    void anInterruptedStudyOfAskedPrecisionGoesOnToTheSameBytes() throws IOException {
        String[] arguments = study("--precision", "P(deadline) within 3 points", "--size-trials", "0");
        assertEquals(ExitCode.PARTIAL, run(arguments), err::toString);
        assertTrue(out.toString().contains("PARTIAL: interrupted after 21 of 400 trials."), out::toString);
        assertResumedIsWhole(arguments);
    }

    @Test
    void aCommandThatIsRefusedTakesNothingFromAnUnfinishedStudy() throws IOException {
        String[] arguments = study("--trials", "60");
        assertEquals(ExitCode.PARTIAL, run(arguments), err::toString);
        String[] onNoThread = {"study", DEMO.toString(), "--out", folder.toString(), "--threads", "0"};
        assertEquals(ExitCode.BAD_INPUT, run(onNoThread));
        assertTrue(err.toString().contains("--threads must be from 1 to "), err::toString);
        assertResumedIsWhole(arguments);
    }

    private CommandLine program(Function<Scenario, TrialSource> trialsOf, Interruption interruption) {
        return Main.commandLine(trialsOf, interruption)
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err));
    }

    private void assertResumedIsWhole(String[] arguments) throws IOException {
        CommandLine anew = program(this::trials, Interruption.never());
        String[] resuming =
                Stream.concat(Stream.of(arguments), Stream.of("--resume")).toArray(String[]::new);
        assertEquals(ExitCode.DONE, anew.execute(resuming), err::toString);
        assertFalse(Files.exists(folder.resolve("river-watch-41.journal")));
        assertFalse(Files.exists(folder.resolve("river-watch-41-partial")));
        Map<String, String> resumed = results();
        assertEquals(ExitCode.DONE, anew.execute(arguments), err::toString);
        assertEquals(results(), resumed);
    }

    private Map<String, String> results() throws IOException {
        Map<String, String> contents = new TreeMap<>();
        for (String name : List.of("trials.csv", "summary.json", "report.html")) {
            contents.put(name, Files.readString(folder.resolve("river-watch-41").resolve(name)));
        }
        return contents;
    }

    @Test
    void aStudyOfAnotherSeedOrChangeIsNotResumed() {
        assertEquals(ExitCode.BAD_INPUT, run(study("--trials", "10", "--resume")));
        assertEquals(ExitCode.PARTIAL, run(study("--trials", "60", "--size-trials", "0")));
        assertEquals(ExitCode.BAD_INPUT, run(study("--trials", "60", "--resume", "--set", "near.snr=3 dB")));
        assertTrue(err.toString().contains("start it anew"), err::toString);
    }

    @Test
    void aPreciseStudyStopsWhenItIsExactEnough() {
        CommandLine patient = program(this::trials, Interruption.never());
        assertEquals(
                ExitCode.DONE,
                patient.execute(study("--precision", "P(deadline) within 3 points", "--size-trials", "0")),
                err::toString);
        assertTrue(out.toString().contains("400 simulated trials"), out::toString);
        assertFalse(out.toString().contains("the goal was not reached"), out::toString);
        assertEquals(ExitCode.BAD_INPUT, patient.execute(study("--precision", "rather good")));
        assertTrue(err.toString().contains("within 2 points"), err::toString);
    }

    @Test
    void aDecisionStopsAsSoonAsItIsClear() {
        CommandLine patient = program(this::trials, Interruption.never());
        String[] arguments = study(
                "--precision",
                "P(deadline) above or below 90 % within 1 point",
                "--trials",
                "450",
                "--size-trials",
                "0");
        assertEquals(ExitCode.DONE, patient.execute(arguments), err::toString);
        assertTrue(out.toString().contains("400 simulated trials"), out::toString);
        assertFalse(out.toString().contains("the goal was not reached"), out::toString);
    }

    @Test
    void aPrecisionThatSoFewTrialsDoNotGiveIsToldNotToBeReached() {
        CommandLine patient = program(this::trials, Interruption.never());
        String[] arguments =
                study("--precision", "P(deadline) within 3 points", "--trials", "40", "--size-trials", "0");
        assertEquals(ExitCode.DONE, patient.execute(arguments), err::toString);
        assertTrue(out.toString().contains("the goal was not reached within 40 trials"), out::toString);
    }

    @Test
    void aChanceOfDeadlinesThatAreNotThereIsRefused() throws IOException {
        Path openEnded = folder.resolve("open-ended.toml");
        Files.createSymbolicLink(
                folder.resolve("modes"), DEMO.resolveSibling("modes").toAbsolutePath());
        Files.writeString(openEnded, Files.readString(DEMO).replaceAll("(?m)^deadlines = .*$", ""));
        assertEquals(
                ExitCode.BAD_INPUT, run("study", openEnded.toString(), "--precision", "P(deadline) within 2 points"));
        assertTrue(err.toString().contains("no transfer of this scenario has a deadline"), err::toString);
        assertFalse(Files.exists(Path.of("results/open-ended-41.journal")), "nothing was begun");
    }

    private String[] vary(String... settings) {
        Stream<String> fixed = Stream.of("vary", DEMO.toString(), "--out", folder.toString(), "--trials", "10");
        return Stream.concat(fixed, Stream.of(settings).flatMap(it -> Stream.of("--set", it)))
                .toArray(String[]::new);
    }

    @Test
    void oneKeyVariedGivesATableAModeAndAFile() throws IOException {
        assertEquals(ExitCode.DONE, run(vary("near.snr=6..18 dB : 3")), err::toString);
        assertTrue(out.toString().contains("Varied: near.snr."), out::toString);
        assertTrue(out.toString().contains("12 dB"), out::toString);
        out.toString().lines().forEach(line -> assertTrue(line.length() <= 80 || line.startsWith("Written"), line));
        // Three values, two transfers both ways, four modes, and the heads.
        assertEquals(
                3 * 2 * 2 * 4 + 1,
                Files.readAllLines(folder.resolve("river-watch-41-vary/vary.csv"))
                        .size());
    }

    @Test
    void twoKeysVariedGiveAMapOfTheBestMode() {
        assertEquals(
                ExitCode.DONE,
                run(vary("near.snr=6..18 dB : 2", "modes.brisk-comb.arq.window=4..8 : 2")),
                err::toString);
        assertTrue(out.toString().contains("near.snr \\ modes.brisk-comb.arq.window"), out::toString);
    }

    @Test
    void aTornadoRanksAnyNumberOfKeys() {
        String[] asked = Stream.concat(
                        Stream.of(vary("near.snr=6..18 dB", "far.snr=6..18 dB", "distance=50..500 km")),
                        Stream.of("--tornado"))
                .toArray(String[]::new);
        assertEquals(ExitCode.DONE, run(asked), err::toString);
        assertTrue(out.toString().contains("distance"), out::toString);
        assertTrue(Files.exists(folder.resolve("river-watch-41-tornado/tornado.csv")));
        assertTrue(out.toString().contains("500 km"), out::toString);
        out.toString().lines().forEach(line -> assertTrue(line.length() <= 80 || line.startsWith("Written"), line));
    }

    /** Runs a variation that is interrupted while it simulates the fourth point. */
    private int varyInterrupted(String... arguments) {
        AtomicInteger points = new AtomicInteger();
        Interruption interruptionHere = Interruption.never();
        CommandLine program = Main.commandLine(
                scenario -> {
                    TrialSource trials = trials(scenario);
                    int point = points.incrementAndGet();
                    return trial -> {
                        if (point == 4 && trial == 3) {
                            interruptionHere.ask();
                        }
                        return trials.run(trial);
                    };
                },
                interruptionHere);
        program.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
        return program.execute(
                Stream.concat(Stream.of(arguments), Stream.of("--threads", "1")).toArray(String[]::new));
    }

    @ParameterizedTest
    @CsvSource({"vary, PARTIAL: interrupted after 3 of 7 values.", "tornado, PARTIAL: interrupted after 1 of 2 keys."})
    void anInterruptedVariationKeepsItsPointsAndGoesOnToTheSameBytes(String kind, String warning) throws IOException {
        String[] asked = kind.equals("vary")
                ? vary("near.snr=6..18 dB")
                : Stream.concat(Stream.of(vary("near.snr=6..18 dB", "far.snr=6..9 dB")), Stream.of("--tornado"))
                        .toArray(String[]::new);
        assertEquals(ExitCode.PARTIAL, varyInterrupted(asked), err::toString);
        assertTrue(out.toString().contains(warning), out::toString);
        assertTrue(out.toString().contains("--resume"), out::toString);
        Path results = folder.resolve("river-watch-41-" + kind);
        assertTrue(
                Files.readString(folder.resolve("river-watch-41-" + kind + "-partial/" + kind + ".csv"))
                        .contains(",10,true,"),
                "marked partial");
        String[] resumed =
                Stream.concat(Stream.of(asked), Stream.of("--resume")).toArray(String[]::new);
        assertEquals(ExitCode.DONE, run(resumed), err::toString);
        Map<String, String> wentOn = texts(results);
        assertTrue(wentOn.getOrDefault(kind + ".csv", "").contains(",10,false,"));
        assertEquals(ExitCode.DONE, run(asked), err::toString);
        assertEquals(wentOn, texts(results));
    }

    private static Map<String, String> texts(Path results) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.list(results)) {
            for (Path file : files.toList()) {
                texts.put(String.valueOf(file.getFileName()), Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return texts;
    }

    @Test
    void aVariationOfOtherValuesOrTrialsIsNotResumed() {
        assertEquals(
                ExitCode.BAD_INPUT,
                run(Stream.concat(Stream.of(vary("near.snr=6..18 dB")), Stream.of("--resume"))
                        .toArray(String[]::new)));
        assertEquals(ExitCode.PARTIAL, varyInterrupted(vary("near.snr=6..18 dB")), err::toString);
        for (List<String> other : List.of(
                List.of("--set", "near.snr=6..12 dB"), List.of("--set", "near.snr=6..18 dB", "--trials", "11"))) {
            String[] resumed = Stream.concat(
                            Stream.of("vary", DEMO.toString(), "--out", folder.toString(), "--resume"), other.stream())
                    .toArray(String[]::new);
            assertEquals(ExitCode.BAD_INPUT, run(resumed), err::toString);
        }
        assertTrue(err.toString().contains("start it anew"), err::toString);
    }

    @Test
    void aVariationThatCannotWriteSaysSoBeforeItSimulates() throws IOException {
        Files.writeString(folder.resolve("river-watch-41-vary"), "someone's notes");
        CommandLine program = Main.commandLine(
                scenario -> {
                    throw new AssertionError("simulated all the same");
                },
                interruption);
        program.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
        assertEquals(ExitCode.NOT_WRITTEN, program.execute(vary("near.snr=6..18 dB")), err::toString);
    }

    @Test
    void aChoiceIsVariedAsAList() {
        assertEquals(ExitCode.DONE, run(vary("near.congestion=quiet-band | busy-evening")), err::toString);
        assertTrue(out.toString().contains("busy-evening"), out::toString);
    }

    @Test
    void whatIsComparedMustBeTheSameAtEveryValue() {
        assertEquals(ExitCode.BAD_INPUT, run(vary("modes=[\"brisk-comb\"] | [\"slow-whistle\"]")));
        assertTrue(err.toString().contains("the same modes"), err::toString);
    }

    @Test
    void aVariationThatMakesNoSenseIsBadInput() {
        assertEquals(ExitCode.BAD_INPUT, run(vary("near.snr=6 dB")));
        assertTrue(err.toString().contains("Just one value is given for: near.snr"), err::toString);
        assertEquals(ExitCode.BAD_INPUT, run(vary("near.snr=1..2 dB", "far.snr=1..2 dB", "distance=1..2 km")));
        assertTrue(err.toString().contains("at most 2"), err::toString);
        assertEquals(ExitCode.BAD_INPUT, run(vary("near.snr")));
        assertTrue(err.toString().contains("is no key with its value"), err::toString);
        assertFalse(err.toString().contains("option option"), err::toString);
        assertEquals(ExitCode.BAD_INPUT, run(vary("near.snr=6 dB..9 Hz")));
        assertEquals(ExitCode.BAD_INPUT, run(vary("near.snrr=6..9 dB")));
        assertTrue(err.toString().contains("near.snr"), err::toString);
    }

    @Test
    void whatDecidesTheSkiesIsNotVaried() {
        for (String range : List.of("trials=5..10 : 2", "seed=1..2")) {
            assertEquals(ExitCode.BAD_INPUT, run("vary", DEMO.toString(), "--set", range));
        }
        assertTrue(err.toString().contains("--set trials: cannot be varied"), err::toString);
        assertTrue(err.toString().contains("give one value with --seed"), err::toString);
    }

    @Test
    void aWrongNumberIsBlamedOnItsOption() {
        for (List<String> wrong : List.of(List.of("--trials", "0"), List.of("--size-trials", "-1"))) {
            assertEquals(ExitCode.BAD_INPUT, run(study(wrong.get(0), wrong.get(1))));
            assertTrue(err.toString().contains(wrong.get(0) + " must "), err::toString);
        }
        assertEquals(ExitCode.BAD_INPUT, run(study("--precision", "P(deadline) within 0 points")));
        assertFalse(err.toString().contains("--set") || err.toString().contains("halfWidth"), err::toString);
    }
}
