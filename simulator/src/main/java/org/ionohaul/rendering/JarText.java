package org.ionohaul.rendering;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Reads the texts that come with the program. */
public final class JarText {
    private JarText() {}

    /** Returns the text that lies beside a class, its lines ended as on every machine. */
    public static String beside(Class<?> place, String name) {
        try (InputStream in = place.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("not in the jar: " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
