package org.ionohaul.onair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

final class TruthTest {
    private static final int REPEATS = 1000;
    private static final Criterion MEDIAN = new Criterion(OptionalDouble.empty());
    private static final Criterion DEADLINE = new Criterion(OptionalDouble.of(200));

    private static Truth truth(Criterion criterion, int number, double... means) {
        MadeUpEvenings skies = new MadeUpEvenings(DoubleStream.of(means).boxed().toList(), 0);
        double[][] seconds = new double[means.length][];
        for (int mode = 0; mode < means.length; mode++) {
            int its = mode;
            seconds[mode] = LongStream.range(200L * number, 200L * (number + 1))
                    .mapToDouble(it -> skies.apply(it).run(its, 0, 0).throughSeconds())
                    .toArray();
        }
        return Truth.of(criterion, seconds);
    }

    /** Repeats whole computations with three like modes: one is named in at most 5 of 100, plus 4 standard errors. */
    @Test
    void likeModesAreSeldomToldApart() {
        for (Criterion criterion : new Criterion[] {MEDIAN, DEADLINE}) {
            int named = 0;
            for (int number = 0; number < REPEATS; number++) {
                named += truth(criterion, number, 300, 300, 300).isBetter() ? 1 : 0;
            }
            assertTrue(named <= 0.05 * REPEATS + 4 * Math.sqrt(0.05 * 0.95 * REPEATS), criterion + ": " + named);
        }
    }

    /** Medians of 69 and 139 s (means times log 2): the lead's range holds 69 s in at least 95 of 100, less 4 standard errors. */
    @Test
    void theLeadsRangeHoldsTheTruth() {
        double lead = 100 * Math.log(2);
        int held = 0;
        int named = 0;
        for (int number = 0; number < REPEATS; number++) {
            Truth truth = truth(MEDIAN, number, 100, 200);
            named += truth.better().equals(OptionalInt.of(0)) ? 1 : 0;
            held += truth.lead()
                            .filter(it -> it.low() <= lead && lead <= it.high())
                            .isPresent()
                    ? 1
                    : 0;
        }
        assertTrue(held >= 0.95 * REPEATS - 4 * Math.sqrt(0.05 * 0.95 * REPEATS), "held " + held);
        assertTrue(named > 0.9 * REPEATS, "named " + named);
    }

    @Test
    void whatIsNeverThroughIsNoBetter() {
        double never = Double.POSITIVE_INFINITY;
        Truth neither = Truth.of(MEDIAN, new double[][] {{never, never, 5}, {never, 4, never}});
        assertFalse(neither.isBetter());
        assertEquals(Optional.empty(), neither.lead());
        double[] some = new double[40];
        double[] none = new double[40];
        Arrays.fill(none, never);
        Truth one = Truth.of(MEDIAN, new double[][] {none, some});
        assertEquals(OptionalInt.of(1), one.better());
        assertEquals(never, one.lead().orElseThrow().value());
    }
}
