package org.ionohaul.livepage;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
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
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.ionohaul.analysis.Findings;
import org.ionohaul.livepage.RequestRules.Refusal;
import org.ionohaul.rendering.FolderName;
import org.ionohaul.rendering.PageFile;
import org.ionohaul.report.SummaryJson;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.ScenarioProblems;

/**
 * Serves a page about a scenario, on this machine alone, until it is closed. It reads the scenario and its modes and writes
 * nothing.
 */
public final class LivePage implements AutoCloseable {
    private static final int REQUEST_THREADS = 6;
    private static final long STROKE_MILLIS = 1000;
    private static final int MOST_WAITING = 32;
    private static final String HTML = "text/html; charset=utf-8";
    private static final String PLAIN = "text/plain; charset=utf-8";

    /** What a browser may do with what is delivered: nothing but show it, and ask this server. */
    private static final Map<String, String> SAFE = Map.of(
            "Content-Security-Policy",
                    "default-src 'none'; script-src 'self'; style-src 'unsafe-inline'; img-src data:; connect-src 'self';"
                            + " form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
            "X-Content-Type-Options", "nosniff",
            "X-Frame-Options", "DENY",
            "Referrer-Policy", "no-referrer",
            "Cross-Origin-Resource-Policy", "same-origin",
            "Cross-Origin-Opener-Policy", "same-origin",
            "Cache-Control", "no-store");

    private final ScenarioOnPage scenario;
    private final HttpServer server;
    private final RequestRules rules;
    private final LiveRuns runs;
    private final ExecutorService requests = new ThreadPoolExecutor(
            REQUEST_THREADS, REQUEST_THREADS, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(MOST_WAITING));
    private final Timer clock = new Timer("page-clock", true);

    private LivePage(ScenarioOnPage scenario, HttpServer server, int threads) {
        this.scenario = scenario;
        this.server = server;
        this.rules = RequestRules.of(server.getAddress().getPort());
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
        // Read once by the JDK's server: who sends half a request does not hold a thread for ever.
        System.setProperty("sun.net.httpserver.maxReqTime", "20");
        InetAddress thisMachine = InetAddress.getByAddress("127.0.0.1", new byte[] {127, 0, 0, 1});
        HttpServer server = HttpServer.create(new InetSocketAddress(thisMachine, port), 0);
        LivePage page = new LivePage(scenario, server, threads);
        page.start();
        return page;
    }

    /** Returns the address of the page. */
    public URI address() {
        return URI.create("http://127.0.0.1:" + server.getAddress().getPort() + "/");
    }

    @Override
    public void close() {
        server.stop(0);
        requests.shutdownNow();
        clock.cancel();
        runs.close();
    }

    private void start() {
        server.setExecutor(requests);
        server.createContext("/", exchange -> serve(exchange, this::page, false));
        server.createContext("/page.js", exchange -> serve(exchange, it -> script(), false));
        server.createContext("/answer", exchange -> serve(exchange, this::answer, true));
        server.createContext("/scenario.toml", exchange -> serve(exchange, this::saved, false));
        server.createContext("/summary.json", exchange -> serve(exchange, this::summary, false));
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

    /** How a request is answered. */
    @FunctionalInterface
    private interface Answering {
        Answer to(HttpExchange exchange) throws IOException, ScenarioProblems;
    }

    /** An answer; with the name of a file if it is to be kept. */
    private record Answer(int status, String type, String text, String fileName) {
        Answer(int status, String type, String text) {
            this(status, type, text, "");
        }
    }

    private void serve(HttpExchange exchange, Answering answering, boolean needsToken) throws IOException {
        try (exchange) {
            Optional<Refusal> refusal = rules.refusal(exchange, needsToken);
            if (refusal.isPresent()) {
                send(
                        exchange,
                        new Answer(refusal.get().status(), PLAIN, refusal.get().why()));
            } else if (!exchange.getRequestURI()
                    .getPath()
                    .equals(exchange.getHttpContext().getPath())) {
                send(exchange, new Answer(404, PLAIN, "There is nothing here but " + address()));
            } else {
                send(exchange, answer(exchange, answering));
            }
        }
    }

    private static Answer answer(HttpExchange exchange, Answering answering) throws IOException {
        try {
            return answering.to(exchange);
        } catch (ScenarioProblems e) {
            return new Answer(400, PLAIN, String.join("\n", e.told()));
        } catch (RuntimeException e) {
            return new Answer(500, PLAIN, "A fault of the program: " + e);
        }
    }

    private static void send(HttpExchange exchange, Answer answer) throws IOException {
        SAFE.forEach(exchange.getResponseHeaders()::set);
        exchange.getResponseHeaders().set("Content-Type", answer.type());
        if (!answer.fileName().isEmpty()) {
            exchange.getResponseHeaders()
                    .set("Content-Disposition", "attachment; filename=\"" + answer.fileName() + "\"");
        }
        byte[] bytes = answer.text().getBytes(StandardCharsets.UTF_8);
        boolean isEmpty = answer.status() == 204 || exchange.getRequestMethod().equals("HEAD");
        exchange.sendResponseHeaders(answer.status(), isEmpty ? -1 : bytes.length);
        if (!isEmpty) {
            exchange.getResponseBody().write(bytes);
        }
    }

    private Question question(HttpExchange exchange) {
        return Question.of(Objects.requireNonNullElse(exchange.getRequestURI().getRawQuery(), ""), scenario.controls());
    }

    private Answer page(HttpExchange exchange) {
        return new Answer(
                200,
                HTML,
                rendered(
                        "live.jte",
                        new PageView(scenario, question(exchange), rules.token(), Provenance.programVersion())));
    }

    private static String rendered(String template, Object view) {
        StringWriter text = new StringWriter();
        PageFile.write(template, view, text);
        return text.toString();
    }

    private static Answer script() {
        try (InputStream in = Objects.requireNonNull(LivePage.class.getResourceAsStream("page.js"))) {
            return new Answer(
                    200, "text/javascript; charset=utf-8", new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Answer answer(HttpExchange exchange) {
        String page = Objects.requireNonNullElse(exchange.getRequestHeaders().getFirst("X-Page"), "");
        if (!page.matches("[0-9a-f]{16}")) {
            return new Answer(400, PLAIN, "Which page asks?");
        }
        Asked asked = Asked.of(question(exchange), scenario, runs);
        if (!runs.watch(page, asked.runs())) {
            return new Answer(
                    503, PLAIN, LiveRuns.MOST_PAGES + " pages are at work already. Close one, and this one goes on.");
        }
        AnswerView view = asked.view();
        return view.version().equals(exchange.getRequestHeaders().getFirst("X-Seen"))
                ? new Answer(204, PLAIN, "")
                : new Answer(200, HTML, rendered("liveanswer.jte", view));
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
            return new Answer(409, PLAIN, "Not all trials are done yet: look at the page until they are.");
        }
        Findings findings =
                Findings.of(run.get().seen().orElseThrow().result(), Optional.empty(), scenario.provenance(setting));
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
