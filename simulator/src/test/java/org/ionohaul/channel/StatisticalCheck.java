package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;

/**
 * The verdict on an observed mean: it must lie within {@value #TOLERANCE} standard errors of theory, which a right
 * program misses once in 16 000 fixed seeds. Every verdict is published, so that people can see how close it was.
 */
record StatisticalCheck(String name, double observed, double theory, double standardError) {
    static final double TOLERANCE = 4;

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

    /** Fails if observation and theory disagree, or if the published table says otherwise. */
    void verify() {
        assertTrue(passes(), this::toString);
        double errors = (observed - theory) / standardError;
        PublishedChecks.assertHold(
                name,
                String.format(Locale.ROOT, "%s,%.6g,%.6g,%.2g,%+.2f", name, observed, theory, standardError, errors));
    }
}
