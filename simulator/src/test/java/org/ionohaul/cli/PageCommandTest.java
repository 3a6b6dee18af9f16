package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ionohaul.livepage.PageFixture;
import org.ionohaul.livepage.RawRequest;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The page from the command line on, beside what the other commands say of the same settings. */
final class PageCommandTest {
    private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:\\d+/");
    private static final int TRIALS = 25;
    private static final int LOOKS = 1200;
    private static final Map<String, String> SETTING = Map.of("far.snr", "13 dB", "transfer.1.files.1.size", "5 kB");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final Interruption interruption = Interruption.never();
    private final List<CompletableFuture<Integer>> running = new ArrayList<>();

    @TempDir
    private Path folder = Path.of("");

    private Path scenario = Path.of("");
    private URI page = URI.create("");

    @BeforeEach
    void open() throws IOException, InterruptedException {
        scenario = PageFixture.write(folder.resolve("scenarios"), TRIALS);
        running.add(CompletableFuture.supplyAsync(() ->
                program(interruption, out, err).execute("page", scenario.toString(), "--port", "0", "--no-browser")));
        for (int i = 0; i < LOOKS && !out.toString().contains("\n"); i++) {
            assertTrue(!running.get(0).isDone(), err::toString);
            Thread.sleep(100);
        }
        Matcher address = ADDRESS.matcher(out.toString());
        assertTrue(address.find(), out::toString);
        page = URI.create(address.group());
    }

    @AfterEach
    void end() {
        interruption.ask();
    }

    private static CommandLine program(Interruption interruption, StringWriter out, StringWriter err) {
        return Main.commandLine(scenario -> new Trials(scenario)::run, interruption)
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true));
    }

    private int run(String... arguments) {
        return program(Interruption.never(), new StringWriter(), err).execute(arguments);
    }

    private static String query(Map<String, String> setting) {
        return setting.entrySet().stream()
                .map(it -> it.getKey() + "=" + URLEncoder.encode(it.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    private String answer(String query) throws IOException {
        String token = RawRequest.get(page, "/").token();
        return RawRequest.get(page, "/answer?" + query, "X-Page-Token: " + token, "X-Page: 00000000000000aa")
                .body()
                .replace('\u00a0', ' ');
    }

    private void awaitAll(String query) throws IOException, InterruptedException {
        for (int i = 0; i < LOOKS && !answer(query).contains("data-over=\"true\""); i++) {
            Thread.sleep(100);
        }
        assertTrue(answer(query).contains(TRIALS + " of " + TRIALS + " trials"), answer(query));
    }

    private Path study(Path file, Map<String, String> setting) throws IOException {
        List<String> arguments =
                new ArrayList<>(List.of("study", file.toString(), "--size-trials", "0", "--threads", "3"));
        setting.forEach((key, value) -> arguments.addAll(List.of("--set", key + "=" + value)));
        Path results = Files.createTempDirectory(folder, "results");
        arguments.addAll(List.of("--out", results.toString()));
        assertEquals(ExitCode.DONE, run(arguments.toArray(String[]::new)), err::toString);
        try (var written = Files.list(results)) {
            return written.filter(Files::isDirectory).findFirst().orElseThrow();
        }
    }

    @Test
    void itsNumbersAreThoseOfTheCommandLine() throws IOException, InterruptedException {
        for (Map<String, String> setting :
                List.of(SETTING, Map.<String, String>of("seed", "7"), Map.<String, String>of())) {
            awaitAll(query(setting));
            assertEquals(
                    Files.readString(study(scenario, setting).resolve("summary.json")),
                    RawRequest.get(page, "/summary.json?" + query(setting)).body(),
                    setting::toString);
        }
    }

    @Test
    void theGridIsThatOfTheReport() throws IOException, InterruptedException {
        awaitAll(query(SETTING));
        String report = Files.readString(study(scenario, SETTING).resolve("report.html"))
                .replace('\u00a0', ' ');
        String grid = report.substring(report.indexOf("<table class=\"grid\""), report.indexOf("</table>"));
        String rows = grid.substring(grid.indexOf('>'));
        assertTrue(answer(query(SETTING)).contains(rows), rows);
    }

    @Test
    void whatIsSavedIsInOrderAndComesToTheSameTrials() throws IOException {
        RawRequest saved = RawRequest.get(page, "/scenario.toml?" + query(SETTING));
        assertTrue(saved.head().contains("attachment; filename=\"small-watch-far.snr-13_dB"), saved.head());
        Path copy = scenario.resolveSibling("copy.toml");
        Files.writeString(copy, saved.body());
        assertEquals(ExitCode.DONE, run("check", copy.toString()), err::toString);
        assertTrue(saved.body().contains("# The gauge at the weir"), "remarks stay");
        assertEquals(
                Files.readString(study(scenario, SETTING).resolve("trials.csv")),
                Files.readString(study(copy, Map.of()).resolve("trials.csv")));
    }

    @Test
    void whatIsWrongIsToldInTheWordsOfTheCommandLine() throws IOException {
        for (Map<String, String> wrong : List.of(
                Map.of("far.snr", "17"),
                Map.of("far.snr", "12 parsec"),
                Map.of("transfer.1.files.1.size", "60.000 B"),
                Map.of("transfer.1.deadlines", "[\"25 min\", \"10 min\"]"),
                Map.of("trials", "0"),
                Map.of("sky.condition", "mid-latitude"))) {
            err.getBuffer().setLength(0);
            String key = wrong.keySet().iterator().next();
            assertEquals(ExitCode.BAD_INPUT, run("study", scenario.toString(), "--set", key + "=" + wrong.get(key)));
            String told = err.toString()
                    .lines()
                    .takeWhile(it -> !it.equals("1 problem; nothing was simulated or written."))
                    .map(String::strip)
                    .collect(Collectors.joining("; "));
            String message = told.substring(told.indexOf(key) + key.length() + 2)
                    .replace("&", "&amp;")
                    .replace("<", "&lt;");
            String found = answer(query(wrong));
            assertTrue(
                    found.contains("<li data-name=\"" + key + "\" data-wrong=\"true\">" + message + "</li>"),
                    message + "\n" + found);
            assertEquals(
                    400, RawRequest.get(page, "/scenario.toml?" + query(wrong)).status());
        }
    }

    @Test
    void itWritesNothingAndEndsAtCtrlC() throws Exception {
        List<String> before = PageFixture.contents(folder);
        Path here = Path.of("");
        List<String> beside = PageFixture.names(here);
        awaitAll(query(SETTING));
        RawRequest.get(page, "/scenario.toml?" + query(SETTING));
        RawRequest.get(page, "/summary.json?" + query(SETTING));
        assertEquals(before, PageFixture.contents(folder));
        assertEquals(beside, PageFixture.names(here));
        interruption.ask();
        assertEquals(ExitCode.DONE, running.get(0).get(2, TimeUnit.MINUTES));
        assertEquals("", err.toString());
        assertEquals("The page is at " + page + " for this machine alone. Ctrl-C ends it.\n", out.toString());
    }

    @Test
    void aPortThatIsTakenIsTold() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String port = Integer.toString(taken.getLocalPort());
            assertEquals(ExitCode.BAD_INPUT, run("page", scenario.toString(), "--no-browser", "--port", port));
            assertTrue(err.toString().startsWith("--port " + port + " can't be had: "), err::toString);
        }
        assertEquals(ExitCode.BAD_INPUT, run("page", scenario.toString(), "--no-browser", "--port", "70000"));
        assertEquals(
                ExitCode.BAD_INPUT, run("page", folder.resolve("none.toml").toString(), "--no-browser", "--port", "0"));
    }
}
