package org.ionohaul.fieldlog;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;

/** What a reading of a fading signal shows, against looks at exponentially distributed power. */
class HowReadTest {
    private static final int LOOKS = 100_000;

    private static void check(HowRead how, int fades) {
        UniformRandomProvider random = new TrialStreams(3, 0).open(Purpose.FADING, fades);
        Supplier<Double> read = () -> 10
                * Math.log10(DoubleStream.generate(() -> -Math.log(1 - random.nextDouble()))
                        .limit(fades)
                        .max()
                        .orElseThrow());
        SummaryStatistics seen = new SummaryStatistics();
        for (int look = 0; look < LOOKS; look++) {
            seen.addValue(read.get());
        }
        // Five standard errors of the simulated mean, and what the second decimal rounds away.
        double error = 5 * seen.getStandardDeviation() / Math.sqrt(LOOKS) + 0.05;
        assertEquals(seen.getMean(), how.biasDb(), error);
        assertEquals(seen.getStandardDeviation(), how.deviationDb(), error);
    }

    @Test
    void aGlanceShowsOneExponentialPower() {
        check(HowRead.GLANCE, 1);
    }

    @Test
    void thePeakOfTenFadesIsTheLargestOfTen() {
        check(HowRead.PEAK, 10);
    }
}
