package org.ionohaul.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

final class RearrangedTest {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    @Test
    void valuesAndEndsAreSortedEachByThemselves() {
        List<Estimate> asFound =
                List.of(new Estimate(5, 4, NEVER), new Estimate(3, 1, 6), new Estimate(NEVER, 2, NEVER));
        List<Estimate> rising =
                List.of(new Estimate(3, 1, 6), new Estimate(5, 2, NEVER), new Estimate(NEVER, 4, NEVER));
        assertEquals(rising, Rearranged.rising(asFound));
        assertEquals(List.of(rising.get(2), rising.get(1), rising.get(0)), Rearranged.falling(asFound));
    }

    /** Proposition 1 of Chernozhukov, Fernandez-Val and Galichon: never further from a rising truth, in any mean. */
    @Test
    void rearrangedEstimatesLieAtLeastAsNearARisingTruth() {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(7L);
        int nearer = 0;
        for (int repetition = 0; repetition < 200; repetition++) {
            double[] found = IntStream.range(0, 30)
                    .mapToDouble(i -> i + 20 * random.nextDouble())
                    .toArray();
            List<Estimate> rising = Rearranged.rising(IntStream.range(0, 30)
                    .mapToObj(i -> new Estimate(found[i], found[i], found[i]))
                    .toList());
            double before = IntStream.range(0, 30)
                    .mapToDouble(i -> Math.pow(found[i] - (i + 10), 2))
                    .sum();
            double after = IntStream.range(0, 30)
                    .mapToDouble(i -> Math.pow(rising.get(i).value() - (i + 10), 2))
                    .sum();
            assertTrue(after <= before + 1e-9, after + " after " + before);
            nearer += after < before ? 1 : 0;
        }
        assertTrue(nearer > 150, "nearer in " + nearer);
    }
}
