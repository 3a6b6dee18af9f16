package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.placing.PublishedSchema;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Asking which run to make next, as its user meets it. */
final class NextCommandTest {
    private static final String SCENARIO = "../scenarios/orchard-net.toml";

    private StringWriter out = new StringWriter();
    private StringWriter err = new StringWriter();

    @TempDir
    private Path folder = Path.of("");

    private int next(String... more) {
        out = new StringWriter();
        err = new StringWriter();
        return Main.commandLine(scenario -> new Trials(scenario)::run, Interruption.never())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(Stream.concat(Stream.of("next", SCENARIO, "--out", folder.toString()), Arrays.stream(more))
                        .toArray(String[]::new));
    }

    private String written(String name) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            Path file = files.filter(it -> it.endsWith(name)).findFirst().orElseThrow();
            return Files.readString(file);
        }
    }

    /** A short file, which either mode may bring through in time: by how much each falls short of its model decides. */
    private int shortFile(String... more) {
        return next(Stream.concat(
                        Stream.of(
                                "--set",
                                "transfer.1.files.1.size=2 kB",
                                "--by",
                                "70 s",
                                "--gap",
                                "3 dB",
                                "--trials",
                                "400"),
                        Arrays.stream(more))
                .toArray(String[]::new));
    }

    @Test
    void aRunThatTellsIsRecommendedAndAllFormatsSayTheSame() throws IOException {
        assertEquals(ExitCode.DONE, shortFile("--threads", "1"), err::toString);
        String text = out.toString();
        assertTrue(text.contains("Before any run; 400 draws of what is believed, seed 12."), text);
        assertTrue(text.contains("within 70 s: with which mode?"), text);
        assertTrue(text.contains("Most per minute on the air: Brisk comb, 500 bytes up"), text);
        String json = written("next.json");
        PublishedSchema schema = PublishedSchema.named("next.schema.json");
        schema.assertHolds(json);
        schema.assertRefuses(json.replace("\"may_be_best\"", "\"best\""));
        JsonNode root = new JsonMapper().readTree(json);
        assertEquals("run", root.get("verdict").asString());
        JsonNode first = root.get("candidates").get(0);
        assertEquals("brisk-comb", first.get("mode").asString());
        assertEquals(500, first.get("sent_bytes").asInt());
        assertEquals(10, root.get("candidates").size(), "two modes, two ways, two sizes, two meters");
        List<String> rows = written("next.csv").lines().toList();
        assertEquals(11, rows.size());
        assertTrue(rows.get(1).startsWith("send,brisk-comb,upload,500,,,,"), rows.get(1));
        String page = written("next.html").replace('\u00a0', ' ');
        String perMinute = PublishedSchema.picture(page, "per-minute", "at520");
        assertEquals(10, perMinute.split("<circle class=\"best", -1).length - 1, "a whisker a candidate");
        assertTrue(perMinute.indexOf("Brisk comb, 500 bytes up *") < perMinute.indexOf("read the SNR at"), perMinute);
        assertTrue(page.contains("Most per minute on the air: Brisk comb, 500 bytes up"), page);
        assertTrue(rows.get(0).endsWith(",may_be_best"), rows.get(0));

        assertEquals(ExitCode.DONE, shortFile("--threads", "3"), err::toString);
        assertEquals(text, out.toString(), "the same whatever the number of threads");
    }

    @Test
    void afterALogThatSettlesItNoRunIsNeeded() throws IOException {
        assertEquals(ExitCode.DONE, next("--log", "../scenarios/orchard-net.csv", "--trials", "120"), err::toString);
        String text = out.toString();
        assertTrue(text.contains("After 8 logged runs; 120 draws"), text);
        assertTrue(text.contains("Now: Patient climber."), text);
        assertTrue(text.contains("The choice is as good as sure: no run is needed for it."), text);
        JsonNode root = new JsonMapper().readTree(written("next.json"));
        assertEquals("sure_already", root.get("verdict").asString());
        assertEquals(8, root.get("logged_runs").asInt());
    }

    @Test
    void whereNoModeKeepsTheDeadlineThatIsSaid() {
        assertEquals(ExitCode.DONE, next("--by", "20 s", "--trials", "100"), err::toString);
        assertTrue(out.toString().contains("No mode keeps this deadline often enough"), out.toString());
    }

    @Test
    void whatCanNotBeAskedIsToldBeforeAnythingIsSimulated() {
        assertEquals(ExitCode.BAD_INPUT, next("--set", "modes=[\"brisk-comb\"]"));
        assertTrue(err.toString().contains("just one mode"), err.toString());
        assertEquals(ExitCode.BAD_INPUT, next("--by", "3 h"));
        assertTrue(err.toString().contains("beyond the scenario's horizon"), err.toString());
        assertEquals(
                ExitCode.BAD_INPUT, next("--set", "near.snr=12 dB", "--set", "far.snr=12 dB", "--daily", "far.snr"));
        assertTrue(err.toString().contains("--daily: far.snr is no uncertain input"), err.toString());
        assertEquals(ExitCode.BAD_INPUT, next("--meter", "0 dB"));
        assertTrue(err.toString().contains("--meter must be above 0"), err.toString());
    }
}
