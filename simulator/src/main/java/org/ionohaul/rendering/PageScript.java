package org.ionohaul.rendering;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/** The one script of a page, which stands in the page itself. */
public final class PageScript {
    private static final String PICTURES = JarText.beside(PageScript.class, "pictures.js");
    private static final String TEXT = JarText.beside(PageScript.class, "page.js") + PICTURES;
    private static final String HASH = sha256(TEXT);

    private PageScript() {}

    /** Returns the script, fit to stand between script tags. */
    public static String text() {
        return TEXT;
    }

    /** Returns the part of it that lets shapes of pictures say something. */
    public static String pictures() {
        return PICTURES;
    }

    /** Returns how a Content-Security-Policy names the script, so that the page runs no other. */
    public static String hash() {
        return HASH;
    }

    private static String sha256(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
