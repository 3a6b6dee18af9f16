package org.ionohaul.rendering;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/** The one script of a page: the charting library, and what starts it. It stands in the page itself. */
public final class ChartScript {
    private static final String LIBRARY = "/META-INF/resources/webjars/echarts/5.3.1/";
    private static final String TEXT =
            inlined(resource(LIBRARY + "dist/echarts.min.js") + "\n" + resource("charts.js"));
    private static final String HASH = sha256(TEXT);
    private static final String LICENCES = resource(LIBRARY + "NOTICE") + "\n" + resource(LIBRARY + "LICENSE")
            + resource(LIBRARY + "licenses/LICENSE-d3") + "\nZRender, which Apache ECharts contains:\n\n"
            + resource("zrender-licence.txt");

    private ChartScript() {}

    /** Returns the script, fit to stand between script tags. */
    public static String text() {
        return TEXT;
    }

    /** Returns how a Content-Security-Policy names the script, so that the page runs no other. */
    public static String hash() {
        return HASH;
    }

    /** Returns the licences of what the script contains, which must go with every copy. */
    public static String licences() {
        return LICENCES;
    }

    /**
     * Returns a script that means the same and cannot end the element it stands in, nor begin a comment there. Scripts
     * hold those characters only in texts and patterns, which may write the first as its number.
     */
    static String inlined(String script) {
        return script.replaceAll("(?i)<(?=/script|!--)", "\\\\x3c");
    }

    private static String sha256(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String resource(String name) {
        try (InputStream in = ChartScript.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("not in the jar: " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
