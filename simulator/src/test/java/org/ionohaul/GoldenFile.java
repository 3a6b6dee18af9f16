package org.ionohaul;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A file that holds what the program is expected to write, as it once wrote it and somebody read it.
 *
 * <p>Renew all of them with {@code ./mvnw test -Dgolden.renew=true}, then review the diff.
 *
 * @param path where it lies
 */
public record GoldenFile(Path path) {
    private static final boolean IS_RENEWED = Boolean.getBoolean("golden.renew");

    /** Returns a golden file among the test resources. */
    public static GoldenFile of(String name) {
        return new GoldenFile(Path.of("src", "test", "resources", "golden").resolve(name));
    }

    /** Fails unless the file holds exactly this text. */
    public void assertHolds(String text) {
        try {
            if (IS_RENEWED) {
                Files.createDirectories(path.toAbsolutePath().getParent());
                Files.writeString(path, text);
            }
            assertEquals(Files.readString(path), text, path + " (to renew it: -Dgolden.renew=true)");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
