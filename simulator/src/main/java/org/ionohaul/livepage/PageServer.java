package org.ionohaul.livepage;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.ionohaul.livepage.RequestRules.Refusal;
import org.ionohaul.rendering.PageFile;
import org.ionohaul.scenario.ScenarioProblems;

/** Delivers pages to the browsers of this machine alone. */
final class PageServer implements AutoCloseable {
    static final String HTML = "text/html; charset=utf-8";
    static final String PLAIN = "text/plain; charset=utf-8";

    private static final int REQUEST_THREADS = 6;
    private static final int MOST_WAITING = 32;

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

    private final HttpServer server;
    private final RequestRules rules;
    private final ExecutorService requests = new ThreadPoolExecutor(
            REQUEST_THREADS, REQUEST_THREADS, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(MOST_WAITING));

    private PageServer(HttpServer server) {
        this.server = server;
        this.rules = RequestRules.of(server.getAddress().getPort());
        server.setExecutor(requests);
    }

    /**
     * Listens on this machine's own address.
     *
     * @param port where; 0 for any free port
     * @throws IOException if nobody can listen there, such as because another program does
     */
    static PageServer on(int port) throws IOException {
        // Read once by the JDK's server: who sends half a request does not hold a thread for ever.
        System.setProperty("sun.net.httpserver.maxReqTime", "20");
        InetAddress thisMachine = InetAddress.getByAddress("127.0.0.1", new byte[] {127, 0, 0, 1});
        return new PageServer(HttpServer.create(new InetSocketAddress(thisMachine, port), 0));
    }

    /** Says how requests for a path are answered. */
    void answer(String path, Answering answering, boolean needsToken) {
        server.createContext(path, exchange -> serve(exchange, answering, needsToken));
    }

    /** Answers from now on. */
    void start() {
        server.start();
    }

    /** Returns the address of its first page. */
    URI address() {
        return URI.create("http://127.0.0.1:" + server.getAddress().getPort() + "/");
    }

    /** Returns what its own pages know. */
    RequestRules rules() {
        return rules;
    }

    @Override
    public void close() {
        server.stop(0);
        requests.shutdownNow();
    }

    /** How a request is answered. */
    @FunctionalInterface
    interface Answering {
        Answer to(HttpExchange exchange) throws IOException, ScenarioProblems;
    }

    /** An answer; with the name of a file if it is to be kept. */
    record Answer(int status, String type, String text, String fileName) {
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

    /** Returns a page made from its template. */
    static String rendered(String template, Object view) {
        StringWriter text = new StringWriter();
        PageFile.write(template, view, text);
        return text.toString();
    }

    /** Returns a script as an answer. */
    static Answer script(String text) {
        return new Answer(200, "text/javascript; charset=utf-8", text);
    }
}
