package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.ionohaul.analysis.TrialPick;
import org.ionohaul.analysis.TrialPick.Candidate;
import org.ionohaul.session.Cause;
import org.ionohaul.session.Ending;
import org.ionohaul.session.Outcome;
import org.ionohaul.session.ProgressCurve;
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.TimeBudget;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

final class TraceCommandTest {
    private static final String DEMO = "../scenarios/river-watch.toml";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder = Path.of("");

    private int run(String... arguments) {
        CommandLine program = Main.commandLine(scenario -> new Trials(scenario)::run, Interruption.never());
        program.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
        return program.execute(arguments);
    }

    @Test
    void tellsTheChosenTrialAndWritesItInEveryForm() throws IOException {
        assertEquals(
                0,
                run(
                        "trace",
                        DEMO,
                        "--mode",
                        "brisk-comb",
                        "--transfer",
                        "roster",
                        "--trial",
                        "3",
                        "--out",
                        folder + ""),
                err.toString());
        assertTrue(out.toString().contains("roster, upload with Brisk comb, trial 3"), out.toString());
        Path story = folder.resolve("river-watch-41-trace-roster-upload-brisk-comb-3");
        for (String name : List.of("story.html", "story.txt", "story.csv", "story.jsonl")) {
            assertTrue(Files.size(story.resolve(name)) > 100, name);
        }
    }

    @Test
    void looksForATellingTrialAmongTheScenarios() {
        assertEquals(
                0,
                run(
                        "trace",
                        DEMO,
                        "--transfer",
                        "roster",
                        "--set",
                        "trials=9",
                        "--pick",
                        "slowest",
                        "--out",
                        folder + ""));
        assertTrue(out.toString().contains("trial "), out.toString());
    }

    /** The slow mode needs more than the 45 min of its operator's patience for the photo, whatever the sky. */
    @Test
    void aTrialThatFailedIsPickedByTheWayItFailed() {
        List<String> slow = List.of("--mode", "slow-whistle", "--set", "trials=3", "--out", folder + "");
        assertEquals(0, runPick("out-of-patience", slow), err.toString());
        assertEquals(2, runPick("never-linked", slow));
        assertTrue(err.toString().contains("there are: "), err.toString());
        assertTrue(err.toString().contains("out-of-patience"), err.toString());
    }

    private int runPick(String kind, List<String> more) {
        return run(Stream.concat(Stream.of("trace", DEMO, "--pick", kind), more.stream())
                .toArray(String[]::new));
    }

    @Test
    void namesTheChoicesWhenAModeOrKindIsUnknown() {
        assertEquals(2, run("trace", DEMO, "--mode", "brisk"));
        assertTrue(err.toString().contains("--mode: there is no \"brisk\"\n    valid: brisk-comb, "), err.toString());
        assertEquals(2, run("trace", DEMO, "--pick", "best", "--set", "trials=1"));
        assertTrue(err.toString().contains("--pick: there is no \"best\"\n    did you mean \"lost\"?"), err.toString());
        assertEquals(2, run("trace", DEMO, "--pick", "lost", "--trial", "1"));
        assertTrue(err.toString().contains("exclude each other"), err.toString());
    }

    @Test
    void theMedianIsTheMiddleOneAndASessionThatNeverDeliveredIsLater() {
        List<Candidate> candidates = List.of(candidate(0, 50, 0), candidate(1, 10, 0), candidate(2, -1, 2));
        assertEquals(0, TrialPick.MEDIAN.among(candidates).orElseThrow().trial());
        assertEquals(0, TrialPick.SLOWEST.among(candidates).orElseThrow().trial());
        assertEquals(2, TrialPick.LOST.among(candidates).orElseThrow().trial());
        assertEquals(Optional.empty(), TrialPick.LOST.among(candidates.subList(0, 2)));
        assertEquals(Optional.empty(), TrialPick.SLOWEST.among(candidates.subList(2, 3)));
    }

    @Test
    void ofLostLinksTheOneThatGotThroughAllTheSameIsTheMostTelling() {
        List<Candidate> candidates = List.of(candidate(0, -1, 5), candidate(1, 20, 1), candidate(2, 30, 3));
        assertEquals(2, TrialPick.LOST.among(candidates).orElseThrow().trial());
    }

    private static Candidate candidate(long trial, long deliveredNanos, int linksLost) {
        boolean isDelivered = deliveredNanos >= 0;
        OptionalLong at = isDelivered ? OptionalLong.of(deliveredNanos) : OptionalLong.empty();
        Map<Cause, Long> spent = new EnumMap<>(Cause.class);
        spent.put(Cause.SILENCE, 100L);
        return new Candidate(
                trial,
                new SessionResult(
                        isDelivered ? Outcome.CLOSED : Outcome.GAVE_UP,
                        isDelivered ? Ending.COMPLETED : Ending.LINK_LOST,
                        100,
                        at,
                        at,
                        at,
                        List.of(at),
                        ProgressCurve.of(new long[0], new long[0]),
                        TimeBudget.of(spent),
                        List.of(),
                        linksLost,
                        0,
                        0,
                        0));
    }
}
