package org.ionohaul.livepage;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What a server answers to bytes, as no library would send them. */
public record RawRequest(String head, String body) {
    private static final int PATIENCE_MILLIS = 120_000;

    /** Sends lines as they are. */
    public static RawRequest send(URI server, List<String> lines) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.getPort())) {
            socket.setSoTimeout(PATIENCE_MILLIS);
            socket.getOutputStream()
                    .write((String.join("\r\n", lines) + "\r\n\r\n").getBytes(StandardCharsets.ISO_8859_1));
            socket.shutdownOutput();
            String all = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            int end = all.indexOf("\r\n\r\n");
            return new RawRequest(end < 0 ? all : all.substring(0, end), end < 0 ? "" : all.substring(end + 4));
        }
    }

    /** Asks for a path as one of the server's own pages would, with more lines. */
    public static RawRequest get(URI server, String path, String... more) throws IOException {
        return send(
                server,
                java.util.stream.Stream.concat(
                                java.util.stream.Stream.of(
                                        "GET " + path + " HTTP/1.1",
                                        "Host: 127.0.0.1:" + server.getPort(),
                                        "Connection: close"),
                                java.util.stream.Stream.of(more))
                        .toList());
    }

    /** Returns the status; 0 if there was none. */
    public int status() {
        return head.startsWith("HTTP/1.1 ") ? Integer.parseInt(head.substring(9, 12)) : 0;
    }

    /** Returns the token that a page holds. */
    public String token() {
        String before = "data-token=\"";
        int at = body.indexOf(before) + before.length();
        return body.substring(at, body.indexOf('"', at));
    }
}
