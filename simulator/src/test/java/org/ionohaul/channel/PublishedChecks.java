package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The table of every statistical check of the sky, kept in {@code results/reference/sky-statistics.csv}; renew it with
 * {@code mvn test -Dtest='org.ionohaul.channel.*Test' -Dgolden.renew=true}, after deleting it if a check has gone, and
 * review the difference.
 */
final class PublishedChecks {
    private static final Path TABLE = Path.of("..", "results", "reference", "sky-statistics.csv");
    private static final String HEAD = "check,observed,theory,standard_error,difference_in_standard_errors";
    private static final boolean IS_RENEWED = Boolean.getBoolean("golden.renew");

    private PublishedChecks() {}

    /** Fails unless the table holds this row under this name, which has no comma in it. */
    static void assertHold(String name, String row) {
        try {
            Map<String, String> rows = read();
            if (IS_RENEWED) {
                rows.put(name, row);
                write(rows);
            }
            assertEquals(row, rows.get(name), () -> name + " in " + TABLE + " (to renew it: -Dgolden.renew=true)");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Fails if a test of distribution finds the sample implausible: p below 0.001, which a right program meets in one of
     * a thousand fixed seeds.
     */
    static void assertPlausible(String name, double pValue) {
        assertTrue(pValue > 1e-3, () -> name + ": p = " + pValue);
        assertHold(name, String.format(Locale.ROOT, "%s,p = %.3f,,,", name, pValue));
    }

    private static Map<String, String> read() throws IOException {
        Map<String, String> rows = new TreeMap<>();
        if (Files.exists(TABLE)) {
            List<String> lines = Files.readAllLines(TABLE);
            for (String line : lines.subList(1, lines.size())) {
                rows.put(line.substring(0, line.indexOf(',')), line);
            }
        }
        return rows;
    }

    private static void write(Map<String, String> rows) throws IOException {
        List<String> lines = new ArrayList<>(List.of(HEAD));
        lines.addAll(rows.values());
        Files.writeString(TABLE, String.join("\n", lines) + "\n");
    }
}
