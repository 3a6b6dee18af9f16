package org.ionohaul.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.Cause;
import org.ionohaul.session.Outcome;
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.SessionTrace;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Stories of the demo's own sessions. */
final class TraceStoryTest {
    private static final Path DEMO = Path.of("../scenarios/river-watch.toml");

    @TempDir
    private Path folder = Path.of("");

    private static TraceStory story(Scenario scenario, Mode mode, Direction direction, long trial) {
        return story(scenario, scenario.transfers().get(1), mode, direction, trial);
    }

    static TraceStory story(Scenario scenario, Transfer transfer, Mode mode, Direction direction, long trial) {
        Trials trials = new Trials(scenario);
        TraceRecorder recorder = new TraceRecorder(new SkyGauge(trials.skies().sky(trial), mode.emission()));
        SessionResult result = trials.run(transfer, direction, mode, trial, recorder);
        return new TraceStory(
                scenario,
                transfer,
                direction,
                mode,
                trial,
                recorder,
                result,
                trials.wrongRateNanos(transfer, direction, mode, trial));
    }

    @Test
    void aTransmitterThatFoldsBackIsToldOfAndHeardWeaker() throws ScenarioProblems {
        Map<String, String> smallSet = Map.of("near.fold-back.after", "5 s", "near.fold-back.drop", "10 dB");
        Scenario weak = ScenarioReader.read(DEMO, smallSet);
        List<TraceStep> told =
                story(weak, weak.modes().get(0), Direction.UPLOAD, 0).steps();
        TraceStep fold = told.stream()
                .filter(step -> step.kind() == TraceStep.Kind.POWER)
                .findFirst()
                .orElseThrow();
        assertTrue(fold.says().startsWith("power folds back by 10.0 dB after "), fold.says());
        Scenario strong = ScenarioReader.read(DEMO);
        List<TraceStep> untold =
                story(strong, strong.modes().get(0), Direction.UPLOAD, 0).steps();
        assertTrue(untold.stream().noneMatch(step -> step.kind() == TraceStep.Kind.POWER));
        // Until the first fold-back both sessions are the same; the burst in which it falls is heard weaker.
        int folded = told.indexOf(fold);
        for (int i = 0; i < folded; i++) {
            assertEquals(untold.get(i).sinrDb(), told.get(i).sinrDb());
        }
        double lostDb = untold.get(folded).sinrDb() - told.get(folded + 1).sinrDb();
        assertTrue(lostDb > 0 && lostDb < 10, "lost " + lostDb + " dB");
    }

    /** A check of four-of-seven passes pairs of errors: the story tells which frame, and that nobody knows. */
    @Test
    void aWrongFrameThatItsCheckPassesIsTold() throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(
                DEMO,
                Map.of(
                        "modes", "[\"m625-arq\"]",
                        "transfer.2.files.1.size", "200 B",
                        "transfer.2.files.1.compression", "100 %",
                        "sky.condition", "flat",
                        "far.snr", "-1 dB"));
        TraceStory story = LongStream.range(0, 20)
                .mapToObj(trial -> story(scenario, scenario.modes().get(0), Direction.UPLOAD, trial))
                .filter(it -> it.result().outcome() == Outcome.DELIVERED_WRONG)
                .findFirst()
                .orElseThrow();
        String told = String.join("\n", new TraceText(story).lines());
        assertEquals(
                story.result().wrongFrames(), told.split("far: keeps a wrong frame from byte ", -1).length - 1, told);
        assertTrue(told.contains("far: holds file 1 whole but wrong, and does not know"), told);
        assertTrue(told.contains("near: knows file 1 delivered"), told);
        assertTrue(told.contains("Outcome: delivered wrong; not delivered: "), told);
        assertTrue(told.contains(" bytes arrived before the first wrong one"), told);
        assertEquals(200, story.steps().get(story.steps().size() - 1).heldBytes());
    }

    @Test
    void tellingTheStoryChangesNoResult() throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(DEMO);
        Trials trials = new Trials(scenario);
        int compared = 0;
        for (Mode mode : scenario.modes()) {
            for (Direction direction : Direction.values()) {
                for (long trial = 0; trial < 4; trial++) {
                    SessionResult told = story(scenario, mode, direction, trial).result();
                    SessionResult untold =
                            trials.run(scenario.transfers().get(1), direction, mode, trial, SessionTrace.NONE);
                    assertEquals(untold.outcome(), told.outcome());
                    assertEquals(untold.endedNanos(), told.endedNanos());
                    assertEquals(untold.closedNanos(), told.closedNanos());
                    assertEquals(untold.filesDeliveredNanos(), told.filesDeliveredNanos());
                    assertEquals(untold.dataRates(), told.dataRates());
                    compared++;
                }
            }
        }
        assertEquals(32, compared);
    }

    @Test
    void theStoryAddsUpToTheResult() throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(DEMO);
        TraceStory story = story(scenario, scenario.modes().get(0), Direction.DOWNLOAD, 1);
        for (Cause cause : Cause.values()) {
            long told = story.recorder().spans().stream()
                    .filter(span -> span.cause() == cause)
                    .mapToLong(span -> span.untilNanos() - span.fromNanos())
                    .sum();
            assertEquals(story.result().budget().nanosOf(cause), told);
        }
        long overs = story.steps().stream()
                .filter(step -> step.dataRate() > 0 && step.frames() > 0)
                .count();
        assertEquals(story.result().oversSent(), overs);
        long last = 0;
        for (TraceStep step : story.steps()) {
            assertTrue(step.untilNanos() >= last, "time runs backwards at " + step);
            last = step.untilNanos();
        }
    }

    @Test
    void theTextNamesTheSessionItsStepsAndItsEnd() throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(DEMO);
        TraceStory story = story(scenario, scenario.modes().get(0), Direction.UPLOAD, 1);
        List<String> lines = new TraceText(story).lines();
        assertTrue(lines.get(0)
                .endsWith("roster, upload with " + scenario.modes().get(0).title() + ", trial 1 (seed 41)"));
        assertTrue(lines.get(1).startsWith("Outcome: closed; delivered after "), lines.get(1));
        assertTrue(lines.stream().anyMatch(line -> line.contains("|---------->|   call")));
        assertTrue(lines.stream().anyMatch(line -> line.contains("|<----------|   acknowledgement up to byte ")));
        assertTrue(lines.stream().anyMatch(line -> line.contains("|======---->|   over at data rate ")));
        assertTrue(lines.stream().anyMatch(line -> line.endsWith("far: holds file 1 whole")));
        assertTrue(lines.stream().anyMatch(line -> line.endsWith("near: session ends: hung up")));
    }

    @Test
    void tableAndJsonLinesReadBackAsTheSameSteps() throws ScenarioProblems, IOException {
        Scenario scenario = ScenarioReader.read(DEMO);
        TraceStory story = story(scenario, scenario.modes().get(1), Direction.UPLOAD, 0);
        Path csvFile = folder.resolve("story.csv");
        Path jsonFile = folder.resolve("story.jsonl");
        new TraceCsv(story).writeTo(csvFile);
        new TraceJsonLines(story).writeTo(jsonFile);
        List<String> json = Files.readAllLines(jsonFile);
        List<CSVRecord> csv = readCsv(csvFile);
        assertEquals(story.steps().size(), csv.size());
        assertEquals(story.steps().size(), json.size());
        for (int at = 0; at < csv.size(); at++) {
            assertEquals(story.steps().get(at).says(), csv.get(at).get("says"));
            assertEquals(
                    story.steps().get(at).untilNanos() * 1e-9,
                    Double.parseDouble(csv.get(at).get("until_s")),
                    6e-4);
            JsonNode line = new JsonMapper().readTree(json.get(at));
            assertEquals(story.steps().get(at).says(), line.get("says").asString());
            assertEquals(story.steps().get(at).atNanos(), line.get("at_ns").asLong());
            assertEquals(story.steps().get(at).kind() == TraceStep.Kind.BURST, line.has("sinr_db"));
        }
    }

    private static List<CSVRecord> readCsv(Path file) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader reader = Files.newBufferedReader(file);
                CSVParser parser = CSVParser.parse(reader, format)) {
            return parser.getRecords();
        }
    }

    /** What the shares of all stretches come to is the budget, and where no time is unaccounted for they come to one. */
    @Test
    void thePictureSharesOutTheWholeTime() throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(DEMO);
        TraceStory story = story(scenario, scenario.modes().get(0), Direction.UPLOAD, 1);
        SessionOverview overview = new SessionOverview(story);
        long ended = story.result().endedNanos();
        for (Cause cause : Cause.values()) {
            double halves = overview.share(cause, 0, ended / 2) + overview.share(cause, ended / 2, ended);
            assertEquals(story.result().budget().nanosOf(cause) / (double) ended, halves / 2, 1e-6, cause::name);
        }
    }
}
