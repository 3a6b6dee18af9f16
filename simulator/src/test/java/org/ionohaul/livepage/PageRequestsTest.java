package org.ionohaul.livepage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.scenario.ScenarioProblems;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who is answered and who is not, byte by byte; the reasons are in {@link RequestRules}. */
final class PageRequestsTest {
    private static final List<String> PATHS = List.of("/", "/page.js", "/answer", "/scenario.toml", "/summary.json");
    private static final String ASKING = "X-Page: 0123456789abcdef";

    @TempDir
    private Path folder = Path.of("");

    private final List<LivePage> pages = new ArrayList<>();

    @BeforeEach
    void serve() throws IOException, ScenarioProblems {
        pages.add(LivePage.serve(PageFixture.write(folder, 12), 0, 1));
    }

    @AfterEach
    void close() {
        pages.forEach(LivePage::close);
    }

    private URI server() {
        return pages.get(0).address();
    }

    private String tokenLine() throws IOException {
        return "X-Page-Token: " + RawRequest.get(server(), "/").token();
    }

    @Test
    void itsOwnNamesAreAnswered() throws IOException {
        for (String host : List.of("127.0.0.1:" + server().getPort(), "localhost:" + server().getPort())) {
            assertEquals(200, status("Host: " + host), host);
            assertEquals(200, status("Host: " + host, "Origin: http://" + host), host);
            assertEquals(200, status("Host: " + host, "Sec-Fetch-Site: same-origin"), host);
            assertEquals(200, status("Host: " + host, "Sec-Fetch-Site: none"), "typed by a person");
        }
    }

    /** A name of somebody else's that is made to lead here (DNS rebinding), or none, or two. */
    @Test
    void otherHostsAreRefused() throws IOException {
        int port = server().getPort();
        for (String host : List.of(
                "evil.example:" + port,
                "evil.example",
                "127.0.0.1",
                "localhost",
                "127.0.0.1:" + (port - 1),
                "127.0.0.1.evil.example:" + port,
                "localhost.:" + port,
                "evil@127.0.0.1:" + port,
                "[::1]:" + port,
                "0.0.0.0:" + port,
                "2130706433:" + port,
                "")) {
            for (String path : PATHS) {
                RawRequest answer = RawRequest.send(
                        server(),
                        List.of(
                                "GET " + path + " HTTP/1.1",
                                "Host: " + host,
                                "Connection: close",
                                ASKING,
                                tokenLine()));
                assertEquals(403, answer.status(), host + " " + path + "\n" + answer);
            }
        }
        assertEquals(403, status());
        assertEquals(403, status("Host: 127.0.0.1:" + port, "Host: evil.example"));
        assertEquals(403, status("Host: evil.example", "Host: 127.0.0.1:" + port));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Origin: http://evil.example",
                "Origin: https://127.0.0.1:PORT",
                "Origin: http://127.0.0.1",
                "Origin: http://127.0.0.1:PORT.evil.example",
                "Origin: null",
                "Origin:",
                "Sec-Fetch-Site: cross-site",
                "Sec-Fetch-Site: same-site",
                "Sec-Fetch-Site:"
            })
    void pagesOfOthersAreRefused(String line) throws IOException {
        for (String path : PATHS) {
            RawRequest answer = RawRequest.get(
                    server(), path, line.replace("PORT", Integer.toString(server().getPort())), ASKING, tokenLine());
            assertEquals(403, answer.status(), path + "\n" + answer);
            assertFalse(answer.body().contains("Osier"), "nothing of the scenario is told");
        }
    }

    @Test
    void nothingIsSimulatedWithoutTheToken() throws IOException {
        assertEquals(403, RawRequest.get(server(), "/answer", ASKING).status());
        assertEquals(
                403,
                RawRequest.get(server(), "/answer", ASKING, "X-Page-Token: AAAA")
                        .status());
        assertEquals(
                403,
                RawRequest.get(server(), "/answer", ASKING, "X-Page-Token:").status());
        assertEquals(
                200, RawRequest.get(server(), "/answer", ASKING, tokenLine()).status());
        assertEquals(400, RawRequest.get(server(), "/answer", tokenLine()).status(), "no page asks");
    }

    @Test
    void eachServerHasATokenOfItsOwn() throws IOException, ScenarioProblems {
        LivePage other = LivePage.serve(folder.resolve("small-watch.toml"), 0, 1);
        pages.add(other);
        String token = RawRequest.get(other.address(), "/").token();
        assertEquals(43, token.length(), "256 bits in base 64");
        assertNotEquals(token, RawRequest.get(server(), "/").token());
        assertEquals(
                403,
                RawRequest.get(server(), "/answer", ASKING, "X-Page-Token: " + token)
                        .status());
    }

    @ParameterizedTest
    @ValueSource(strings = {"POST", "PUT", "DELETE", "OPTIONS", "TRACE", "PATCH"})
    void itIsOnlyRead(String method) throws IOException {
        for (String path : PATHS) {
            RawRequest answer = RawRequest.send(
                    server(),
                    List.of(
                            method + " " + path + " HTTP/1.1",
                            "Host: 127.0.0.1:" + server().getPort(),
                            "Content-Length: 0",
                            "Connection: close",
                            ASKING,
                            tokenLine()));
            assertEquals(405, answer.status(), path);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/../../../etc/passwd",
                "/%2e%2e/%2e%2e/etc/passwd",
                "/page.js/../scenario",
                "/scenario.tomlx",
                "/modes/steady-wagon.toml",
                "//etc/passwd",
                "/answerx"
            })
    void nothingElseIsThere(String path) throws IOException {
        RawRequest answer = RawRequest.get(server(), path, ASKING, tokenLine());
        assertTrue(List.of(400, 403, 404).contains(answer.status()), answer::toString);
        assertFalse(answer.body().contains("root:"), answer::toString);
    }

    @Test
    void anAddressHasAnEnd() throws IOException {
        assertEquals(
                414, RawRequest.get(server(), "/?far.snr=" + "9".repeat(20_000)).status());
    }

    @Test
    void everyAnswerForbidsTheBrowserWhatThePageDoesNotNeed() throws IOException {
        for (String path : List.of("/", "/page.js", "/scenario.toml", "/answer", "/nothing")) {
            String head = RawRequest.get(server(), path).head().toLowerCase(java.util.Locale.ROOT);
            for (String line : List.of(
                    "content-security-policy: default-src 'none'; script-src 'self';",
                    "frame-ancestors 'none'",
                    "x-content-type-options: nosniff",
                    "cross-origin-resource-policy: same-origin",
                    "cache-control: no-store",
                    "referrer-policy: no-referrer")) {
                assertTrue(head.contains(line), path + " lacks " + line + "\n" + head);
            }
            assertFalse(head.contains("access-control-"), head);
        }
    }

    /** Whatever other addresses this machine has, nobody listens there. */
    @Test
    void onlyThisMachineIsServed() throws IOException {
        List<InetAddress> others = NetworkInterface.networkInterfaces()
                .flatMap(NetworkInterface::inetAddresses)
                .filter(it -> !it.isLoopbackAddress())
                .toList();
        for (InetAddress other : others) {
            assertThrows(IOException.class, () -> new Socket(other, server().getPort()).close(), other::toString);
        }
        assertEquals("127.0.0.1", server().getHost());
    }

    @Test
    void fivePagesAtOnceAreOneTooMany() throws IOException {
        String token = tokenLine();
        for (int i = 0; i < LiveRuns.MOST_PAGES; i++) {
            assertEquals(
                    200,
                    RawRequest.get(server(), "/answer?far.snr=" + (5 + i) + "+dB", page(i), token)
                            .status());
        }
        RawRequest fifth = RawRequest.get(server(), "/answer?far.snr=17+dB", page(LiveRuns.MOST_PAGES), token);
        assertEquals(503, fifth.status());
        assertEquals("4 pages are at work already. Close one, and this one goes on.", fifth.body());
    }

    private static String page(int number) {
        return "X-Page: " + String.format("%016x", number);
    }

    /** Addresses that name files, and values that would break out of a page. */
    @Test
    void hostileAddressesAreToldAsText() throws IOException {
        String token = tokenLine();
        for (String query : List.of(
                "far.snr=%3Cscript%3Ealert(1)%3C/script%3E",
                "%3Cscript%3Ealert(1)%3C/script%3E=1",
                "far.snr=%22%3E%3Cimg+src=x+onerror=alert(1)%3E",
                "far.snr=%zz%",
                "modes=%5B%22../../../etc/passwd%22%5D",
                "sky.condition=%3Cscript%3E")) {
            for (String path : List.of("/?", "/answer?", "/scenario.toml?", "/summary.json?")) {
                RawRequest answer = RawRequest.get(server(), path + query, ASKING, token);
                assertTrue(List.of(200, 400, 409).contains(answer.status()), path + query + "\n" + answer);
                boolean isPage = answer.head().contains("text/html");
                assertFalse(isPage && answer.body().contains("<script>"), path + query);
                assertFalse(isPage && answer.body().contains("<img"), path + query);
                assertFalse(answer.body().contains("root:"), path + query);
            }
        }
    }

    @Test
    void afterTheEndNobodyListens() {
        pages.get(0).close();
        assertThrows(ConnectException.class, () -> RawRequest.get(server(), "/"));
    }

    private int status(String... lines) throws IOException {
        return RawRequest.send(
                        server(),
                        Stream.concat(Stream.of("GET / HTTP/1.1", "Connection: close"), Stream.of(lines))
                                .toList())
                .status();
    }
}
