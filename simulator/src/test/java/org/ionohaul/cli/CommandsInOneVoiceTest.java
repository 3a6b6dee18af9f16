package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ionohaul.livepage.PageFixture;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What one command says of a scenario and seed another says as well, number by number. {@code PageCommandTest} has the same of
 * the page for what-ifs, {@code OneAnswerTest} of all that a study writes.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class CommandsInOneVoiceTest {
    private static final int TRIALS = 60;
    private static final double DEADLINE_SECONDS = 80;
    /** A mode's data rate with its need. */
    private static final Pattern NEED = Pattern.compile(" *(?<mode>[A-Z].*) (?<rate>\\d+) +(?<need>-?\\d+\\.\\d) dB.*");

    private static final Pattern CARD_NEED = Pattern.compile("  (?<rate>\\d+) .* bit/s +(?<need>-?\\d+\\.\\d) dB");
    private static final Map<String, String> TITLES =
            Map.of("patient-climber", "Patient climber", "steady-wagon", "Steady wagon");

    private Path folder = Path.of("");
    private Path scenario = Path.of("");
    private JsonNode summary = JsonMapper.shared().nullNode();

    @BeforeAll
    void study(@TempDir Path shared) throws IOException {
        folder = shared;
        scenario = PageFixture.write(shared.resolve("scenarios"), TRIALS);
        Files.writeString(
                scenario, Files.readString(scenario).replace("\"10 min\", \"25 min\"", "\"80 s\", \"2 min\""));
        run("study", "--size-trials", "0");
        summary = JsonMapper.shared().readTree(Files.readString(written("study", "summary.json")));
        assertEquals(TRIALS, summary.get("trials_done").asInt());
    }

    /** Runs a command on the scenario, results in a folder of its name, and returns what it prints. */
    private String run(String command, String... more) {
        List<String> arguments = new ArrayList<>(List.of(command, scenario.toString()));
        arguments.addAll(List.of(more));
        return printed(command, arguments);
    }

    private String printed(String command, List<String> arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        List<String> all = new ArrayList<>(arguments);
        all.addAll(List.of("--out", folder.resolve(command).toString()));
        assertEquals(
                ExitCode.DONE,
                Main.commandLine(it -> new Trials(it)::run, Interruption.never())
                        .setOut(new PrintWriter(out))
                        .setErr(new PrintWriter(err))
                        .execute(all.toArray(String[]::new)),
                err::toString);
        return out.toString();
    }

    private Path written(String command, String name) throws IOException {
        try (Stream<Path> files = Files.walk(folder.resolve(command))) {
            return files.filter(it -> it.endsWith(name)).findFirst().orElseThrow();
        }
    }

    /** Returns the rows of a table that a command wrote, by column. */
    private List<Map<String, String>> rows(String command, String name) throws IOException {
        List<String> lines = Files.readAllLines(written(command, name));
        List<String> heads = List.of(lines.get(0).split(",", -1));
        return lines.stream()
                .skip(1)
                .map(line -> {
                    String[] cells = line.split(",", -1);
                    Map<String, String> row = new TreeMap<>();
                    for (int i = 0; i < cells.length; i++) {
                        row.put(heads.get(i), cells[i]);
                    }
                    return row;
                })
                .toList();
    }

    private static String oneLine(String printed) {
        return printed.replaceAll("\\s+", " ");
    }

    private static boolean isPhoto(JsonNode it) {
        return it.get("transfer").asString().equals("photo");
    }

    @Test
    void aPromiseOfTheFileIsTheStudysAnswer() {
        String promised = oneLine(run("promise", "--size", "3 kB", "--by", "80 s"));
        for (JsonNode each : summary.get("cases")) {
            if (isPhoto(each)) {
                JsonNode answer = each.get("answer").get("by_deadline").get(0);
                assertEquals(DEADLINE_SECONDS, answer.get("deadline_s").asDouble());
                String chance = "3 kB within 80 s: on "
                        + OddsText.atLeast(answer.get("safe_share").asDouble()) + " of trials with "
                        + title(answer.get("modes").get(0)) + " ("
                        + OddsText.percent(answer.get("share").asDouble()) + " of those simulated;";
                assertTrue(promised.contains(chance), chance + "\n" + promised);
                // The mode planned with is the best by all that is asked of it, that promised with the soonest safe: of
                // two
                // that can't be told apart not always the same.
                String ninth = TimeText.length(
                        Math.ceil(each.get("answer").get("ninth_plan_s").asDouble()));
                String row = title(each.get("answer").get("planned_mode")) + " [a-z\\d ]+ " + ninth + " ";
                assertTrue(Pattern.compile(row).matcher(promised).find(), row + "\n" + promised);
            }
        }
    }

    private static String title(JsonNode mode) {
        return Objects.requireNonNull(TITLES.get(mode.asString()), mode::toString);
    }

    /** Whatever is varied, the value that the file has comes to the file's own study. */
    @Test
    void theScenariosOwnValueAmongOthersComesToItsStudy() throws IOException {
        run("vary", "--set", "far.snr=10 dB | 13 dB");
        assertRowsAreTheStudys("vary", "vary.csv");
    }

    @Test
    void theScenariosOwnRowOfAGridComesToItsStudy() throws IOException {
        run("grid", "--set", "far.snr=13 dB | 10 dB");
        assertRowsAreTheStudys("grid", "grid.csv");
    }

    private void assertRowsAreTheStudys(String command, String table) throws IOException {
        int seen = 0;
        for (Map<String, String> row : rows(command, table)) {
            if (Objects.equals(row.get("far.snr"), "10 dB")) {
                JsonNode mode = mode(row);
                assertSame(mode.get("delivered_share"), row, "delivered_share");
                assertSame(mode.get("completion_quantiles").get(1).get("completion_s"), row, "median_s");
                assertSame(mode.get("completion_quantiles").get(2).get("completion_s"), row, "ninth_s");
                for (int i = 0; i < 2; i++) {
                    assertSame(mode.get("deadlines").get(i).get("chance"), row, "deadline_" + (i + 1) + "_share");
                }
                seen++;
            }
        }
        assertEquals(8, seen, "two files, two ways, two modes");
    }

    private JsonNode mode(Map<String, String> row) {
        for (JsonNode each : summary.get("cases")) {
            if (each.get("transfer").asString().equals(row.get("transfer"))
                    && each.get("direction").asString().equals(row.get("direction"))) {
                for (JsonNode mode : each.get("modes")) {
                    if (mode.get("mode").asString().equals(row.get("mode"))) {
                        return mode;
                    }
                }
            }
        }
        throw new AssertionError(row);
    }

    private static void assertSame(JsonNode estimate, Map<String, String> row, String column) {
        Map.of("value", "", "low", "_low", "high", "_high").forEach((part, end) -> {
            String cell = Objects.requireNonNull(row.get(column + end), column + end);
            JsonNode number = estimate.get(part);
            assertEquals(
                    number.isNull() ? Double.NaN : number.asDouble(),
                    cell.isEmpty() ? Double.NaN : Double.parseDouble(cell),
                    () -> column + end + " of " + row);
        });
    }

    /** The story of a trial ends as its row among the study's trials does. */
    @Test
    void aTracedTrialIsThatOfTheStudy() throws IOException {
        for (String mode : TITLES.keySet()) {
            Map<String, String> row = rows("study", "trials.csv").stream()
                    .filter(it -> List.of("photo", "upload", mode, "7")
                            .equals(Stream.of("transfer", "direction", "mode", "trial")
                                    .map(it::get)
                                    .toList()))
                    .findFirst()
                    .orElseThrow();
            String told = run("trace", "--transfer", "photo", "--direction", "upload", "--mode", mode, "--trial", "7");
            double seconds = Double.parseDouble(Objects.requireNonNull(row.get("delivered_s")));
            String line = "%d:%04.1f   far: holds file 1 whole".formatted((int) seconds / 60, seconds % 60);
            assertTrue(told.contains(line), line + "\n" + told);
        }
    }

    /** One need for a data rate, whoever tells it. */
    @Test
    void theCardOfAModeAndTheSkyTellTheSameNeeds() {
        Map<String, String> onCards = new TreeMap<>();
        TITLES.forEach((name, title) -> {
            String card = printed(
                    "mode",
                    List.of(
                            "mode",
                            name,
                            "--modes",
                            scenario.resolveSibling("modes").toString()));
            card.lines()
                    .map(CARD_NEED::matcher)
                    .filter(it -> it.matches())
                    .map(it -> it.toMatchResult())
                    .forEach(it -> onCards.put(title + " " + it.group(1), it.group(2)));
        });
        Map<String, String> underTheSky = new TreeMap<>();
        run("sky")
                .lines()
                .map(NEED::matcher)
                .filter(it -> it.matches())
                .map(it -> it.toMatchResult())
                .forEach(it -> underTheSky.put(it.group(1) + " " + it.group(2), it.group(3)));
        assertEquals(onCards, underTheSky);
        assertTrue(onCards.size() > 10, onCards::toString);
    }
}
