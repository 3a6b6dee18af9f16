package org.ionohaul.fieldlog;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The manual of logs says of every column what the reader takes. */
final class LogManualTest {
    private static final Path MANUAL = Path.of("../scenarios/README.md");

    @ParameterizedTest
    @EnumSource(LogColumn.class)
    void everyColumnStandsInTheManual(LogColumn column) throws IOException {
        String row = "| `%s` | `%s` | %s | %s |"
                .formatted(column.head(), column.example(), column.meaning(), column.isNeeded() ? "yes" : "");
        assertTrue(Files.readString(MANUAL).contains(row), row);
    }
}
