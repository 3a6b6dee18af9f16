package org.ionohaul.livepage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A browser without a window that is clicked and typed into as by a hand (Chrome DevTools Protocol). */
public final class DrivenChromium implements AutoCloseable {
    /** After so long something hangs; no statement on how fast anything is. */
    private static final int PATIENCE_SECONDS = 120;

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Process process;
    private final HttpClient client = HttpClient.newHttpClient();
    private final String tools;

    private DrivenChromium(Process process, String tools) {
        this.process = process;
        this.tools = tools;
    }

    /** Returns the browser if this machine has one. */
    public static Optional<DrivenChromium> start(Path scratch) throws IOException, InterruptedException {
        Optional<Path> program = Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
        if (program.isEmpty()) {
            return Optional.empty();
        }
        Path profile = scratch.resolve("profile");
        Process process = new ProcessBuilder(
                        program.get().toString(),
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-quic",
                        "--no-first-run",
                        "--disable-background-networking",
                        "--disable-component-update",
                        "--disable-sync",
                        "--disable-dev-shm-usage",
                        "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + profile,
                        "about:blank")
                .redirectErrorStream(true)
                .redirectOutput(scratch.resolve("chromium.log").toFile())
                .start();
        Path port = profile.resolve("DevToolsActivePort");
        for (int i = 0; i < 10 * PATIENCE_SECONDS; i++) {
            List<String> lines = Files.exists(port) ? Files.readAllLines(port) : List.of();
            if (lines.size() > 1) {
                return Optional.of(new DrivenChromium(process, "http://127.0.0.1:" + lines.get(0)));
            }
            Thread.sleep(100);
        }
        process.destroyForcibly();
        throw new IllegalStateException(
                "the browser does not start: " + Files.readString(scratch.resolve("chromium.log")));
    }

    /** Opens a tab of so many pixels. */
    public Tab tab(int width, int height) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(tools + "/json/new?about:blank"))
                .PUT(HttpRequest.BodyPublishers.noBody())
                .build();
        JsonNode made = JSON.readTree(
                client.send(request, HttpResponse.BodyHandlers.ofString()).body());
        Tab tab = new Tab(client, URI.create(made.get("webSocketDebuggerUrl").asString()));
        tab.size(width, height);
        tab.command("Emulation.setFocusEmulationEnabled", Map.of("enabled", true));
        return tab;
    }

    @Override
    public void close() {
        // Its own children, too: they write to its profile until they end.
        Stream.concat(process.descendants(), Stream.of(process.toHandle())).toList().stream()
                .peek(ProcessHandle::destroyForcibly)
                .toList()
                .forEach(it -> it.onExit().join());
    }

    /** A tab. */
    public static final class Tab {
        private final WebSocket socket;
        private final BlockingQueue<JsonNode> replies = new LinkedBlockingQueue<>();
        private final List<String> noticed = new ArrayList<>();
        private final StringBuilder part = new StringBuilder();
        private int lastId;

        private Tab(HttpClient client, URI address) {
            this.socket = client.newWebSocketBuilder()
                    .buildAsync(address, new WebSocket.Listener() {
                        @Override
                        public CompletionStage<?> onText(WebSocket from, CharSequence text, boolean isLast) {
                            part.append(text);
                            if (isLast) {
                                hear(JSON.readTree(part.toString()));
                                part.setLength(0);
                            }
                            return WebSocket.Listener.super.onText(from, text, isLast);
                        }
                    })
                    .join();
            Stream.of("Page", "Runtime", "Log", "Network").forEach(it -> command(it + ".enable", Map.of()));
        }

        private void hear(JsonNode message) {
            if (message.has("id")) {
                replies.add(message);
                return;
            }
            JsonNode told = message.path("params");
            synchronized (noticed) {
                switch (message.path("method").asString("")) {
                    case "Log.entryAdded" ->
                        noticed.add(told.path("entry").path("text").asString(""));
                    case "Runtime.exceptionThrown" ->
                        noticed.add(told.path("exceptionDetails").toString());
                    case "Runtime.consoleAPICalled" ->
                        noticed.add(told.path("args").toString());
                    case "Network.requestWillBeSent" ->
                        noticed.add("asks " + told.path("request").path("url").asString(""));
                    default -> {}
                }
            }
        }

        /** Returns what the page complained of and asked for. */
        public List<String> noticed() {
            synchronized (noticed) {
                return List.copyOf(noticed);
            }
        }

        public JsonNode command(String method, Map<String, ?> parameters) {
            lastId++;
            socket.sendText(JSON.writeValueAsString(Map.of("id", lastId, "method", method, "params", parameters)), true)
                    .join();
            try {
                while (true) {
                    JsonNode reply = replies.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
                    if (reply == null) {
                        throw new IllegalStateException("no reply to " + method);
                    }
                    if (reply.get("id").asInt() == lastId) {
                        if (reply.has("error")) {
                            throw new IllegalStateException(method + ": " + reply.get("error"));
                        }
                        return reply.get("result");
                    }
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(e);
            }
        }

        public void size(int width, int height) {
            command(
                    "Emulation.setDeviceMetricsOverride",
                    Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 500));
        }

        public void dark(boolean isDark) {
            command(
                    "Emulation.setEmulatedMedia",
                    Map.of(
                            "features",
                            List.of(Map.of("name", "prefers-color-scheme", "value", isDark ? "dark" : "light"))));
        }

        /** Shows the page as on paper, or again as on a screen. */
        public void paper(boolean isPaper) {
            command("Emulation.setEmulatedMedia", Map.of("media", isPaper ? "print" : ""));
        }

        /** Prints the page on paper of so many inches and returns how many sheets that takes. */
        public int sheets(double wideInches, double highInches) {
            JsonNode printed = command("Page.printToPDF", Map.of("paperWidth", wideInches, "paperHeight", highInches));
            byte[] pdf = Base64.getDecoder().decode(printed.get("data").asString());
            return new String(pdf, StandardCharsets.ISO_8859_1).split("/Type /Page\\b", -1).length - 1;
        }

        public void open(URI address) {
            command("Page.navigate", Map.of("url", address.toString()));
            await("document.readyState === 'complete' && location.href !== 'about:blank'");
        }

        public void reload() {
            eval("window.isOld = true");
            command("Page.reload", Map.of());
            await("!window.isOld && document.readyState === 'complete'");
        }

        /** Returns what an expression of the page's script comes to, as text; a blank that holds is a blank. */
        public String eval(String expression) {
            JsonNode result = command(
                    "Runtime.evaluate",
                    Map.of("expression", "String(" + expression + ")", "returnByValue", true, "awaitPromise", true));
            return result.path("result")
                    .path("value")
                    .asString(result.toString())
                    .replace('\u00a0', ' ');
        }

        /** Waits until an expression of the page's script is true. */
        public void await(String expression) {
            for (int i = 0; i < 10 * PATIENCE_SECONDS; i++) {
                if (eval(expression).equals("true")) {
                    return;
                }
                try {
                    Thread.sleep(100);
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                    throw new IllegalStateException(e);
                }
            }
            throw new IllegalStateException(
                    "never true: " + expression + "; the page says: " + eval("document.body.innerText"));
        }

        /** Clicks in the middle of an element. */
        public void click(String selector) {
            String[] place =
                    eval("(it => { it.scrollIntoView({ block: 'center' }); const box = it.getBoundingClientRect();"
                                    + " return (box.x + box.width / 2) + ' ' + (box.y + box.height / 2); })(document.querySelector(\""
                                    + selector + "\"))")
                            .split(" ", -1);
            for (String type : List.of("mousePressed", "mouseReleased")) {
                command(
                        "Input.dispatchMouseEvent",
                        Map.of(
                                "type",
                                type,
                                "x",
                                Double.parseDouble(place[0]),
                                "y",
                                Double.parseDouble(place[1]),
                                "button",
                                "left",
                                "clickCount",
                                1));
            }
        }

        /** Types into a field in place of what stands there. */
        public void type(String selector, String text) {
            click(selector);
            eval("document.activeElement.select()");
            command("Input.insertText", Map.of("text", text));
        }

        /** Presses a key that has no letter. */
        public void press(String key, int code) {
            for (String type : List.of("keyDown", "keyUp")) {
                command(
                        "Input.dispatchKeyEvent",
                        Map.of("type", type, "key", key, "code", key, "windowsVirtualKeyCode", code));
            }
        }

        /** Returns what is seen in the window as a WebP picture of a quality of 0 to 100. */
        public byte[] webp(int quality) {
            JsonNode result = command("Page.captureScreenshot", Map.of("format", "webp", "quality", quality));
            return Base64.getDecoder().decode(result.get("data").asString());
        }

        /** Keeps what is seen, the whole page or the window, as a picture. */
        public void picture(Path file, boolean isWhole) {
            JsonNode result =
                    command("Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", isWhole));
            try {
                Files.write(file, Base64.getDecoder().decode(result.get("data").asString()));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
