package org.ionohaul.livepage;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import javax.crypto.KeyGenerator;

/**
 * Which requests are answered: those of pages that this server itself delivered, and of a person who types its address.
 *
 * <p>A page of anybody else's can make a browser send requests here. Under a name of its own that it points at this machine
 * (DNS rebinding) it is known by {@code Host}; from another address by {@code Origin} or {@code Sec-Fetch-Site}; and since
 * it can't read what is delivered here, it lacks the token without which nothing is simulated.
 *
 * @param port where the server listens
 * @param token what this server's own pages know
 */
record RequestRules(int port, String token) {
    /** The header that carries the token. */
    static final String TOKEN = "X-Page-Token";

    private static final int LONGEST_ADDRESS = 16_000;
    private static final int BITS = 256;
    private static final Set<String> METHODS = Set.of("GET", "HEAD");
    private static final Set<String> OWN = Set.of("same-origin", "none");

    /** Why a request is refused: the status and a sentence. */
    record Refusal(int status, String why) {}

    /** Returns the rules for a port, with a token that nobody can guess. */
    static RequestRules of(int port) {
        try {
            // Made as a key is made: it has nothing to do with the chance in trials, which a seed decides.
            KeyGenerator keys = KeyGenerator.getInstance("HmacSHA256");
            keys.init(BITS);
            return new RequestRules(
                    port,
                    Base64.getUrlEncoder()
                            .withoutPadding()
                            .encodeToString(keys.generateKey().getEncoded()));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has HmacSHA256", e);
        }
    }

    /**
     * Returns why a request is refused; empty if it is answered.
     *
     * @param needsToken whether it makes this machine work
     */
    Optional<Refusal> refusal(HttpExchange exchange, boolean needsToken) {
        Headers headers = exchange.getRequestHeaders();
        if (!exchange.getRemoteAddress().getAddress().isLoopbackAddress()) {
            return refuse(403, "This page is for this machine alone.");
        }
        if (!METHODS.contains(exchange.getRequestMethod())) {
            return refuse(405, "This page is only read: GET and HEAD.");
        }
        if (exchange.getRequestURI().toString().length() > LONGEST_ADDRESS) {
            return refuse(414, "The address is longer than any page of this server makes.");
        }
        if (!isOnly(headers, "Host", this::isHost)) {
            return refuse(403, "This server is called by another name: http://127.0.0.1:" + port + "/");
        }
        if (isOther(headers, "Origin", this::isOrigin) || isOther(headers, "Sec-Fetch-Site", OWN::contains)) {
            return refuse(403, "Pages of others are not answered. Type the address: http://127.0.0.1:" + port + "/");
        }
        if (needsToken && !isOnly(headers, TOKEN, this::isToken)) {
            return refuse(403, "Reload the page: it was delivered by a server that has ended.");
        }
        return Optional.empty();
    }

    private static Optional<Refusal> refuse(int status, String why) {
        return Optional.of(new Refusal(status, why));
    }

    private static boolean isOnly(Headers headers, String name, Predicate<String> isRight) {
        List<String> values = headers.getOrDefault(name, List.of());
        return values.size() == 1 && isRight.test(values.get(0));
    }

    /** Not all browsers send these, but what they send must be right. */
    private static boolean isOther(Headers headers, String name, Predicate<String> isRight) {
        return headers.containsKey(name) && !isOnly(headers, name, isRight);
    }

    private boolean isHost(String host) {
        return host.equals("127.0.0.1:" + port) || host.equals("localhost:" + port);
    }

    private boolean isOrigin(String origin) {
        return origin.startsWith("http://") && isHost(origin.substring("http://".length()));
    }

    /** Takes the same time wherever they begin to differ. */
    boolean isToken(String given) {
        return MessageDigest.isEqual(given.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
    }
}
