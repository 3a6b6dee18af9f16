package org.ionohaul.scenario;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A file that went into a study.
 *
 * @param name its name, as the study's folder of inputs would have it
 * @param text what it says
 */
public record InputFile(String name, String text) {
    /** Returns the SHA-256 of the text in UTF-8, in hexadecimal. */
    public String sha256() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
