package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.inference.KolmogorovSmirnovTest;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Other stations against the theory of Poisson arrivals and alternating overs and pauses. */
final class OccupancyTest {
    private static final Interference VISITORS = new Interference(12, 300, 20, 40, 6, 10, 0.25);
    private static final int TRIALS = 10_000;

    /**
     * Visitors who talk at one instant are Poisson (a thinned infinite-server queue). A visit of mean length m is
     * of age a with density exp(-a/m)/m and talks then with probability f + (1-f) exp(-k a), f the share of overs and k
     * = 1/over + 1/pause, because it begins with an over; so their mean is rate m (f + (1-f)/(1 + k m)), now as later.
     */
    @ParameterizedTest
    @CsvSource({"0", "700", "7200"})
    void visitorsWhoTalkArePoissonAndStationary(long atSeconds) {
        double overs = VISITORS.overSeconds() / (VISITORS.overSeconds() + VISITORS.pauseSeconds());
        double turns = VISITORS.visitSeconds() * (1 / VISITORS.overSeconds() + 1 / VISITORS.pauseSeconds());
        double underWay = VISITORS.visitsPerHour() / 3600 * VISITORS.visitSeconds();
        double mean = underWay * (overs + (1 - overs) / (1 + turns));
        double[] counts = counts(atSeconds);
        StatisticalCheck.ofMean("visitors talking at " + atSeconds + " s", counts, mean)
                .verify();
        double[] squares = new double[counts.length];
        for (int i = 0; i < counts.length; i++) {
            squares[i] = counts[i] * (counts[i] - 1);
        }
        StatisticalCheck.ofMean("factorial moment of visitors talking at " + atSeconds + " s", squares, mean * mean)
                .verify();
    }

    /** With overs and pauses far longer than visits, each visit after the start is one over: arrivals can be counted. */
    @Test
    void arrivalsComeAtTheirRate() {
        Interference quick = new Interference(30, 1, 1e6, 1e6, 0, 0, 1);
        double[] counts = perTrial(trial -> {
            List<Over> overs = overs(quick, trial, 3600);
            return overs.stream().filter(over -> over.startNanos() >= 0).count();
        });
        StatisticalCheck.ofMean("arrivals in an hour", counts, 30).verify();
        double[] squares = new double[counts.length];
        for (int i = 0; i < counts.length; i++) {
            squares[i] = (counts[i] - 30) * (counts[i] - 30);
        }
        StatisticalCheck.ofMean("variance of arrivals in an hour", squares, 30).verify();
    }

    @Test
    void levelsAreLogNormalOnceAVisit() {
        Interference quick = new Interference(3600, 1, 1e6, 1e6, 6, 10, 0.25);
        double[] levelsDb = overs(quick, 0, 5000).stream()
                .mapToDouble(over -> Decibels.ofRatio(over.power()))
                .toArray();
        double pValue = KolmogorovSmirnovTest.withDefaults()
                .test(levelsDb, NormalDistribution.of(6, 10)::cumulativeProbability)
                .getPValue();
        PublishedChecks.assertPlausible("Kolmogorov-Smirnov: visitors' levels are log-normal", pValue);
        StatisticalCheck.ofMean("mean level of visitors in dB", levelsDb, 6).verify();
    }

    @Test
    void aVisitorStaysInsideTheBandAndKeepsItsPlace() {
        List<Over> overs = overs(VISITORS, 0, 36_000);
        assertTrue(overs.size() > 300);
        for (Over over : overs) {
            assertEquals(750, over.highHz() - over.lowHz(), 1e-9);
            assertTrue(over.lowHz() >= -1500 && over.highHz() <= 1500 + 1e-9);
            assertTrue(over.endNanos() > Math.max(0, over.startNanos()));
        }
    }

    @Test
    void spansHoldExactlyTheOversThatAreOn() {
        List<Over> overs = overs(VISITORS, 5, 20_000);
        Occupancy occupancy = new Occupancy(List.of(visits(VISITORS, 5)));
        int talking = 0;
        for (long t = 9_999_000_000_000L; t >= 0; t -= 999_000_000L) {
            long instant = t;
            int span = occupancy.spanAt(instant);
            assertTrue(occupancy.startNanos(span) <= instant && instant < occupancy.endNanos(span));
            List<Over> on = occupancy.on(span);
            assertEquals(overs.stream().filter(over -> over.isOn(instant)).toList(), on);
            talking += on.size();
        }
        assertTrue(talking > 1000, "something was compared");
    }

    @Test
    void densityIsPowerOverTheShareCovered() {
        Over whole = new Over(0, 1, 2, -1500, 1500);
        Over quarter = new Over(0, 1, 2, 0, 750);
        assertEquals(2, whole.density(-1500, 1500), 1e-12);
        assertEquals(2, quarter.density(-1500, 1500), 1e-12);
        assertEquals(8, quarter.density(100, 200), 1e-12);
        assertEquals(0, quarter.density(-500, 0), 1e-12);
        assertEquals(4, quarter.density(500, 1000), 1e-12);
    }

    private static double[] counts(long atSeconds) {
        return perTrial(trial -> {
            Occupancy occupancy = new Occupancy(List.of(visits(VISITORS, trial)));
            return occupancy.on(occupancy.spanAt(atSeconds * 1_000_000_000L)).size();
        });
    }

    private static double[] perTrial(LongFunction<Number> count) {
        return LongStream.range(0, TRIALS)
                .mapToObj(count)
                .mapToDouble(Number::doubleValue)
                .toArray();
    }

    private static List<Over> overs(Interference population, long trial, long seconds) {
        List<Over> overs = new ArrayList<>();
        visits(population, trial).arriveBefore(seconds * 1_000_000_000L, overs);
        return overs;
    }

    private static Visits visits(Interference population, long trial) {
        return new Visits(population, new TrialStreams(20_260_103, trial).open(Purpose.INTERFERENCE, 0));
    }
}
