package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;

/**
 * The verdict on an observed mean: it must lie within {@value #TOLERANCE} standard errors of theory, which a right
 * program misses once in 16 000 fixed seeds. Each verdict is also written to {@code target/statistical-checks.csv}, so
 * that people can see how close it was.
 */
record StatisticalCheck(String name, double observed, double theory, double standardError) {
    static final double TOLERANCE = 4;
    private static final Path LEDGER = Path.of("target", "statistical-checks.csv");

    /** Returns the check of a sample's mean. */
    static StatisticalCheck ofMean(String name, double[] sample, double theory) {
        double sum = 0;
        for (double value : sample) {
            sum += value;
        }
        double mean = sum / sample.length;
        double squares = 0;
        for (double value : sample) {
            squares += (value - mean) * (value - mean);
        }
        double variance = squares / (sample.length - 1);
        return new StatisticalCheck(name, mean, theory, Math.sqrt(variance / sample.length));
    }

    boolean passes() {
        return Math.abs(observed - theory) <= TOLERANCE * standardError;
    }

    void verify() {
        write();
        assertTrue(passes(), this::toString);
    }

    private void write() {
        double errors = (observed - theory) / standardError;
        String line =
                String.format(Locale.ROOT, "%s,%.6g,%.6g,%.2g,%+.2f%n", name, observed, theory, standardError, errors);
        try {
            Files.createDirectories(LEDGER.getParent());
            Files.writeString(LEDGER, line, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
