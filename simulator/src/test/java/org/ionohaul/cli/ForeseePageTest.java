package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ionohaul.livepage.DrivenChromium;
import org.ionohaul.report.BrowserPage;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Learning by prediction in the browser: the same rounds and the same score as on the terminal. */
final class ForeseePageTest {
    private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:\\d+/");
    private static final Pattern TOKEN = Pattern.compile("name=\"token\" value=\"([^\"]+)\"");

    private final Interruption interruption = Interruption.never();
    private final StringWriter out = new StringWriter();
    private CompletableFuture<Integer> ended = CompletableFuture.completedFuture(ExitCode.DONE);
    private URI address = URI.create("http://127.0.0.1/");

    @TempDir
    private Path folder = Path.of("");

    private int foresee(Interruption until, StringWriter told, Path results, String... more) {
        return Main.commandLine(scenario -> new Trials(scenario)::run, until)
                .setOut(new PrintWriter(told))
                .setErr(new PrintWriter(told))
                .execute(Stream.concat(
                                Stream.of(
                                        "foresee",
                                        "--trials",
                                        "6",
                                        "--beside",
                                        "../scenarios",
                                        "--mode",
                                        "brisk-comb",
                                        "--mode",
                                        "steady-wagon",
                                        "--out",
                                        results.toString()),
                                Stream.of(more))
                        .toArray(String[]::new));
    }

    @BeforeEach
    void serve() throws InterruptedException {
        ended = CompletableFuture.supplyAsync(
                () -> foresee(interruption, out, folder.resolve("page"), "--page", "--port", "0", "--no-browser"));
        for (int i = 0; i < 600 && !out.toString().contains("Ctrl-C"); i++) {
            Thread.sleep(100);
        }
        Matcher told = ADDRESS.matcher(out.toString());
        assertTrue(told.find(), out::toString);
        address = URI.create(told.group());
    }

    @AfterEach
    void end() {
        interruption.ask();
        assertEquals(ExitCode.DONE, ended.join());
    }

    private String page(String query) throws IOException, InterruptedException {
        HttpResponse<String> response = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(address.resolve("/" + query)).build(),
                        HttpResponse.BodyHandlers.ofString());
        assertEquals(200, response.statusCode(), response::body);
        return response.body().replace('\u00a0', ' ');
    }

    private static String answer(String page, String winner) {
        Matcher token = TOKEN.matcher(page);
        assertTrue(token.find(), page);
        return "?round=1&winner=" + winner + "&sureness=80&span1=1+10&span2=5+never&token=" + token.group(1);
    }

    private List<String> remembered(String results) throws IOException {
        Path file = folder.resolve(results).resolve("foreseen.jsonl");
        return Files.exists(file) ? Files.readAllLines(file) : List.of();
    }

    @Test
    void aRoundIsThatOfTheTerminalWithTheSameScore() throws IOException, InterruptedException {
        InputStream before = System.in;
        System.setIn(new ByteArrayInputStream("1 80\n1 10\n5 never\n".getBytes(StandardCharsets.UTF_8)));
        StringWriter terminal = new StringWriter();
        try {
            assertEquals(
                    ExitCode.DONE,
                    foresee(Interruption.never(), terminal, folder.resolve("terminal"), "--rounds", "1"),
                    terminal::toString);
        } finally {
            System.setIn(before);
        }
        String result = page(answer(page(""), "1"));
        assertEquals(remembered("terminal"), remembered("page"));
        String told = result.replaceAll("<[^>]*>", "").replaceAll("\\s+", " ").replace("&#34;", "\"");
        String said = terminal.toString().replaceAll("\\s+", " ");
        String verdict = said.substring(said.indexOf("Under 6"));
        for (String sentence : verdict.replaceAll("One round so far: ", "").split("(?<=\\.) ", -1)) {
            assertTrue(told.contains(sentence.strip()), () -> sentence + "\n" + told);
        }
        assertTrue(page("").contains("<h1>Round 2</h1>"), "the next round is that which was not played");
    }

    /** Without its script nothing moves and everything is told: the picture, what came of it, and the score. */
    @Test
    void withoutItsScriptTheRaceStandsStillAndAllIsTold() throws IOException, InterruptedException {
        String result = page(answer(page(""), "2"));
        assertTrue(result.contains("<svg"), result);
        assertTrue(result.contains("What came of it") && result.contains("How well your forecasts hold"), result);
        assertFalse(result.contains("class=\"playing\"") || result.contains("class=\"waiting\""), result);
    }

    @Test
    void onlyTheFirstAnswerCountsAndNoneWithoutThePagesOwnToken() throws IOException, InterruptedException {
        String question = page("");
        page(answer(question, "1").replaceFirst("token=.*", "token=guessed"));
        assertEquals(List.of(), remembered("page"));
        page(answer(question, "1"));
        assertTrue(page(answer(question, "2")).contains("does not count"));
        assertEquals(1, remembered("page").size());
    }

    @Test
    void whatIsWrongStandsBesideItsField() throws IOException, InterruptedException {
        String wrong = page(
                answer(page(""), "1").replace("sureness=80", "sureness=120").replace("1+10", "soon"));
        assertTrue(wrong.contains("id=\"wrong-0\">120 % is not from 50 to 100 %"), wrong);
        assertTrue(wrong.contains("id=\"wrong-1\">\"soon\" is no range of times"), wrong);
        assertTrue(wrong.contains("value=\"5 never\""), "what was right stays: " + wrong);
        assertEquals(List.of(), remembered("page"));
    }

    @Test
    void inABrowserTheRaceIsPlayedAndThenToldWhatCameOfIt() throws IOException, InterruptedException {
        Optional<DrivenChromium> found = DrivenChromium.start(folder);
        assumeTrue(found.isPresent(), "no Chromium on this machine: the page is not looked at in a browser");
        try (DrivenChromium browser = found.orElseThrow()) {
            DrivenChromium.Tab tab = browser.tab(390, 900);
            tab.open(address);
            assertEquals("", tab.eval(BrowserPage.barriers()));
            assertEquals("", tab.eval(BrowserPage.colours()));
            assertEquals("", tab.eval(BrowserPage.lettering()));
            tab.click("[name='winner']");
            tab.type("#sureness", "80");
            tab.type("#span1", "1 10");
            tab.type("#span2", "5 never");
            tab.click("button[type='submit']");
            tab.await("document.querySelectorAll('.playing').length === 1");
            assertEquals("hidden", tab.eval("getComputedStyle(document.getElementById('verdict')).visibility"));
            tab.await("document.querySelectorAll('.playing').length === 0");
            assertEquals("visible", tab.eval("getComputedStyle(document.getElementById('verdict')).visibility"));
            assertEquals("", tab.eval(BrowserPage.barriers()));
            assertEquals("", tab.eval(BrowserPage.colours()));
            assertEquals("", tab.eval(BrowserPage.lettering()));
            assertTrue(
                    Integer.parseInt(tab.eval("document.querySelectorAll('.at520 title').length")) > 30,
                    "what was held, and when each was through");
            assertEquals("", tab.eval(BrowserPage.untoldByKeys()));
            tab.dark(true);
            assertEquals("", tab.eval(BrowserPage.barriers()));
            assertEquals("", tab.eval(BrowserPage.colours()));
            assertEquals("", tab.eval(BrowserPage.lettering()));
            tab.click("#replay");
            tab.click("#skip");
            assertEquals("visible", tab.eval("getComputedStyle(document.getElementById('score')).visibility"));
            assertEquals("0", tab.eval("Math.max(0, document.documentElement.scrollWidth - 390)"), "nothing juts out");
            assertTrue(
                    tab.noticed().stream()
                            .allMatch(it -> it.startsWith("asks " + address) || it.startsWith("asks data:")),
                    () -> tab.noticed().toString());
        }
    }
}
