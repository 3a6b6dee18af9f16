package org.ionohaul.livepage;

import com.sun.net.httpserver.HttpExchange;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Timer;
import java.util.TimerTask;
import org.ionohaul.analysis.Findings;
import org.ionohaul.livepage.PageServer.Answer;
import org.ionohaul.rendering.FolderName;
import org.ionohaul.rendering.JarText;
import org.ionohaul.rendering.PageScript;
import org.ionohaul.report.SummaryJson;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.ScenarioProblems;

/**
 * Serves a page about a scenario, on this machine alone, until it is closed. It reads the scenario and its modes and writes
 * nothing.
 */
public final class LivePage implements ServedPage {
    private static final long STROKE_MILLIS = 1000;

    private final ScenarioOnPage scenario;
    private final PageServer server;
    private final LiveRuns runs;
    private final Timer clock = new Timer("page-clock", true);

    private LivePage(ScenarioOnPage scenario, PageServer server, int threads) {
        this.scenario = scenario;
        this.server = server;
        this.runs = new LiveRuns(threads);
    }

    /**
     * Begins to serve the page of a scenario.
     *
     * @param file the scenario's file
     * @param port where to listen; 0 for any free port
     * @param threads how many threads simulate, 1 or more
     * @throws ScenarioProblems if anything in the scenario or its modes is wrong
     * @throws IOException if nobody can listen there, such as because another program does
     */
    public static LivePage serve(Path file, int port, int threads) throws ScenarioProblems, IOException {
        ScenarioOnPage scenario = ScenarioOnPage.read(file);
        LivePage page = new LivePage(scenario, PageServer.on(port), threads);
        page.start();
        return page;
    }

    /** Returns the address of the page. */
    @Override
    public URI address() {
        return server.address();
    }

    @Override
    public void close() {
        server.close();
        clock.cancel();
        runs.close();
    }

    private void start() {
        server.answer("/", this::page, false);
        server.answer("/page.js", it -> PageServer.script(JarText.beside(LivePage.class, "page.js")), false);
        server.answer("/pictures.js", it -> PageServer.script(PageScript.pictures()), false);
        server.answer("/answer", this::answer, true);
        server.answer("/scenario.toml", this::saved, false);
        server.answer("/summary.json", this::summary, false);
        server.start();
        clock.scheduleAtFixedRate(
                new TimerTask() {
                    @Override
                    public void run() {
                        runs.strike();
                    }
                },
                STROKE_MILLIS,
                STROKE_MILLIS);
    }

    private Question question(HttpExchange exchange) {
        return Question.of(Objects.requireNonNullElse(exchange.getRequestURI().getRawQuery(), ""), scenario.controls());
    }

    private Answer page(HttpExchange exchange) {
        return new Answer(
                200,
                PageServer.HTML,
                PageServer.rendered(
                        "live.jte",
                        new PageView(
                                scenario, question(exchange), server.rules().token(), Provenance.programVersion())));
    }

    private Answer answer(HttpExchange exchange) {
        String page = Objects.requireNonNullElse(exchange.getRequestHeaders().getFirst("X-Page"), "");
        if (!page.matches("[0-9a-f]{16}")) {
            return new Answer(400, PageServer.PLAIN, "Which page asks?");
        }
        Asked asked = Asked.of(question(exchange), scenario, runs);
        if (!runs.watch(page, asked.runs())) {
            return new Answer(
                    503,
                    PageServer.PLAIN,
                    LiveRuns.MOST_PAGES + " pages are at work already. Close one, and this one goes on.");
        }
        AnswerView view = asked.view();
        return view.version().equals(exchange.getRequestHeaders().getFirst("X-Seen"))
                ? new Answer(204, PageServer.PLAIN, "")
                : new Answer(200, PageServer.HTML, PageServer.rendered("liveanswer.jte", view));
    }

    /** The first setting, unless the second is asked for. */
    private Map<String, String> setting(HttpExchange exchange) {
        List<Map<String, String>> settings = question(exchange).settings();
        return settings.get(settings.size() - 1);
    }

    private Answer saved(HttpExchange exchange) throws ScenarioProblems {
        Map<String, String> setting = setting(exchange);
        return new Answer(200, "application/toml; charset=utf-8", scenario.saved(setting), name(setting) + ".toml");
    }

    /** What a study of the same file with the same changes writes, byte for byte. */
    private Answer summary(HttpExchange exchange) throws IOException {
        Map<String, String> setting = setting(exchange);
        Optional<LiveRun> run = runs.of(setting).filter(LiveRun::isOver);
        if (run.isEmpty() || run.get().seen().isEmpty()) {
            return new Answer(409, PageServer.PLAIN, "Not all trials are done yet: look at the page until they are.");
        }
        Findings findings = Findings.of(run.get().seen().orElseThrow().result(), scenario.provenance(setting));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new SummaryJson(findings).writeTo(bytes);
        return new Answer(
                200,
                "application/json; charset=utf-8",
                bytes.toString(StandardCharsets.UTF_8),
                name(setting) + ".json");
    }

    private String name(Map<String, String> setting) {
        List<Object> names = new ArrayList<>(List.of(scenario.scenario().name()));
        setting.forEach((key, value) -> names.add(key + "-" + value));
        return FolderName.of(names.toArray());
    }
}
