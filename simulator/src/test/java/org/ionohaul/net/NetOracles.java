package org.ionohaul.net;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.LongToDoubleFunction;
import java.util.stream.LongStream;

/**
 * The table of oracles, kept in {@code results/reference/net-oracles.csv}: what theory says beside what independent replications
 * come to. Renew it with {@code mvn test -Dtest='*OraclesTest' -Dgolden.renew=true}, and review the difference.
 */
final class NetOracles {
    /** A right program oversteps it once in 16,000 comparisons. */
    private static final double MOST_ERRORS = 4;

    private static final Path TABLE = Path.of("..", "results", "reference", "net-oracles.csv");
    private static final String HEAD = "oracle,quantity,source,expected,observed,standard error,z";

    private NetOracles() {}

    /**
     * Compares the mean of independent replications with theory.
     *
     * @param source where the expected value comes from
     * @param replication what one of them comes to, by its number
     * @return a row of the table
     */
    static String row(
            String oracle,
            String quantity,
            String source,
            double expected,
            int replications,
            LongToDoubleFunction replication) {
        double[] values =
                LongStream.range(0, replications).mapToDouble(replication).toArray();
        return row(oracle, quantity, source, expected, values);
    }

    static String row(String oracle, String quantity, String source, double expected, double[] values) {
        double mean = Arrays.stream(values).average().orElseThrow();
        double variance =
                Arrays.stream(values).map(it -> (it - mean) * (it - mean)).sum() / (values.length - 1);
        double error = Math.sqrt(variance / values.length);
        double z = (mean - expected) / error;
        String row = String.format(
                Locale.ROOT, "%s,%s,%s,%.6f,%.6f,%.6f,%+.2f", oracle, quantity, source, expected, mean, error, z);
        assertTrue(error > 0 && Math.abs(z) <= MOST_ERRORS, row);
        return row;
    }

    /** Fails unless the table holds these rows; puts them there if it is to be renewed. */
    static void assertHold(List<String> rows) {
        try {
            Map<String, String> table = new TreeMap<>();
            if (Files.exists(TABLE)) {
                Files.readAllLines(TABLE).stream().skip(1).forEach(it -> table.put(name(it), it));
            }
            if (Boolean.getBoolean("golden.renew")) {
                rows.forEach(it -> table.put(name(it), it));
                Files.writeString(TABLE, HEAD + "\n" + String.join("\n", table.values()) + "\n");
            }
            rows.forEach(it -> assertEquals(it, table.get(name(it)), "to renew " + TABLE + ": -Dgolden.renew=true"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String name(String row) {
        String[] cells = row.split(",", -1);
        return cells[0] + "," + cells[1];
    }
}
