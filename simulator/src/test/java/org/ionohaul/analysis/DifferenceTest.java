package org.ionohaul.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.ionohaul.scenario.Direction;
import org.ionohaul.trial.EndSky;
import org.ionohaul.trial.TrialSky;
import org.junit.jupiter.api.Test;

/** When two invented modes differ, under skies of which just the far end's middle SINR matters. */
final class DifferenceTest {
    private static final int TRIALS = 100;
    private static final double NEVER = Double.POSITIVE_INFINITY;

    private final UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(11L);

    /** Trial i has i dB at the far end; everything else is chance. */
    private final List<TrialSky> skies = IntStream.range(0, TRIALS)
            .mapToObj(i -> new TrialSky(
                    new EndSky(random.nextDouble(), random.nextDouble(), random.nextDouble()),
                    new EndSky(i, random.nextDouble(), random.nextDouble())))
            .toList();

    private static double[] times(java.util.function.IntToDoubleFunction time) {
        return IntStream.range(0, TRIALS).mapToDouble(time).toArray();
    }

    /** The first takes 50 s, the second 250 s less 2 s a dB: its lead is 180 s on the median of the 20 weakest trials. */
    @Test
    void theMeasureThatGoesWithTheLeadIsNamedWithItsFifths() {
        Difference found = Difference.of(Direction.UPLOAD, 600, skies, times(i -> 50), times(i -> 250 - 2 * i))
                .orElseThrow();
        assertTrue(found.isAtReceiver());
        assertEquals(SkyMeasure.MIDDLE_SINR_DB, found.measure());
        // The 10th of the leads 162, 164 ... 200 s, and of 2, 4 ... 40 s.
        assertEquals("0 0-19 1 0 180", line(found.most()));
        assertEquals("4 80-99 1 0 20", line(found.least()));
        // Wilson's for 20 of 20 at 99 %, that of each of five: 20 / (20 + 2.5758^2). Ranks 4 and 17 of 20 leave 0.3 %
        // beyond them on either side, 5 and 16 would leave 0.6 %.
        assertEquals(0.7509, found.most().firstBefore().low(), 1e-4);
        assertEquals(20, found.most().trials());
        assertEquals(168, found.most().medianLeadSeconds().low());
        assertEquals(194, found.most().medianLeadSeconds().high());
        assertTrue(found.share() > 0.9, found.toString());
    }

    @Test
    void onTheWayBackTheFarEndSends() {
        assertEquals(
                false,
                Difference.of(Direction.DOWNLOAD, 600, skies, times(i -> 50), times(i -> 250 - 2 * i))
                        .orElseThrow()
                        .isAtReceiver());
    }

    /** On the 20 weakest trials just the first arrives, on the 20 next to them neither: no more difference than a tie. */
    @Test
    void neverArrivingCountsAsDifferingMost() {
        Difference found = Difference.of(
                        Direction.UPLOAD,
                        600,
                        skies,
                        times(i -> i < 20 || i >= 40 ? 50 : NEVER),
                        times(i -> i < 40 ? NEVER : 60))
                .orElseThrow();
        assertEquals("0 0-19 1 0 Infinity", line(found.most()));
        assertEquals("1 20-39 0 0 0", line(found.least()));
    }

    /** Only the first arrives on the 60 weakest trials, so three fifths are alike; the weakest is told. */
    @Test
    void ofFifthsThatAreAlikeTheOutermostIsTold() {
        Difference found = Difference.of(Direction.UPLOAD, 600, skies, times(i -> 50), times(i -> i < 60 ? NEVER : 60))
                .orElseThrow();
        assertEquals("0 0-19 1 0 Infinity", line(found.most()));
    }

    @Test
    void whereTheLeadIsChanceNothingIsNamed() {
        double[] second = times(i -> 100 * random.nextDouble());
        assertEquals(Optional.empty(), Difference.of(Direction.UPLOAD, 600, skies, times(i -> 50), second));
    }

    private static String line(Difference.Fifth fifth) {
        return String.format(
                        Locale.ROOT,
                        "%d %.0f-%.0f %.0f %.0f %f",
                        fifth.place(),
                        fifth.from(),
                        fifth.to(),
                        fifth.firstBefore().value(),
                        fifth.secondBefore().value(),
                        fifth.medianLeadSeconds().value())
                .replace(".000000", "");
    }
}
