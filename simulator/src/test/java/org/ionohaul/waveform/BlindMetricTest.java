package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.numbers.combinatorics.BinomialCoefficientDouble;
import org.apache.commons.numbers.gamma.Erfc;
import org.ionohaul.channel.Decibels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two code words of two-phase symbols that differ in ten places, the free distance of the K = 7 code of rate 1/2. */
final class BlindMetricTest {
    private static final int PLACES = 10;
    private static final RatioTable BPSK = CodedInformation.of(Modulation.BPSK).bits();

    @Test
    void withoutBurstsNothingChanges() {
        assertEquals(3, even(3, 0, 100, 0), 1e-6);
    }

    @Test
    void farBelowTheNoiseTheMeanPowerCounts() {
        // exp(u) = 1 + u: E = max of 2 t x - t^2 x r = x / r, r being the mean.
        assertEquals(1e-4 / (1 + 0.05 * 99), even(1e-4, 0.05, 100, 0), 1e-6);
    }

    @ParameterizedTest
    @CsvSource({"0.05, 100, 3", "0.05, 100, 10", "0.05, 100, 30", "0.25, 20, 3", "0.25, 20, 10", "0.01, 1000, 100"})
    void tenPlacesOfWhichSomeAreStruckFareAsInTheEvenNoise(double share, double noise, double esN0) {
        // Exactly: j of ten places struck, the metric's noise is the sum of theirs. Chernoff's bound leaves out a
        // factor that is not quite the same for both: 0.7 dB where less than one pair of words in a hundred is
        // mistaken; a frame of many bits asks for less.
        double wrong = 0;
        for (int struck = 0; struck <= PLACES; struck++) {
            double power = PLACES + struck * (noise - 1);
            wrong += chance(struck, share) * tail(PLACES / Math.sqrt(power) * Math.sqrt(2 * esN0));
        }
        assertTrue(wrong < 0.01, "wrong " + wrong);
        assertEquals(Decibels.ofRatio(evenFor(wrong)), Decibels.ofRatio(even(esN0, share, noise, 0)), 0.7);
    }

    @ParameterizedTest
    @CsvSource({"0.05, 1", "0.05, 3", "0.2, 1", "0.2, 3"})
    void blankedPlacesTellNothing(double blanked, double esN0) {
        double wrong = 0;
        for (int gone = 0; gone <= PLACES; gone++) {
            wrong += chance(gone, blanked) * tail(Math.sqrt(2 * (PLACES - gone) * esN0));
        }
        assertEquals(Decibels.ofRatio(evenFor(wrong)), Decibels.ofRatio(even(esN0, 0, 1, blanked)), 0.7);
    }

    @Test
    void moreSignalNeverHurtsWhateverTheBursts() {
        for (double share : new double[] {1e-5, 0.01, 0.3}) {
            for (double noise : new double[] {1.01, 30, 1e4, 1e7}) {
                double last = 0;
                for (int tenths = -300; tenths < 400; tenths++) {
                    double esN0 = Decibels.toRatio(tenths / 10.0);
                    double now = even(esN0, share, noise, 0);
                    // The weight is sought until by its bend a thousandth of the information is left to gain; it ends
                    // less sharply.
                    double bits = BPSK.at(now);
                    assertTrue(bits >= last * 0.995 && now <= esN0 * (1 + 1e-9), share + ", " + noise + ", " + esN0);
                    last = bits;
                }
            }
        }
    }

    @Test
    void oneWeightForPlacesThatFadeApartIsTheBestOfAllForThemTogether() {
        // Two places 13 dB apart, a tenth struck 20 dB over the floor: tried weight by weight, without the derivatives.
        double[] esN0 = {1, 20};
        double best = Double.NEGATIVE_INFINITY;
        double apart = 0;
        for (double x : esN0) {
            apart += BPSK.at(even(x, 0.1, 100, 0));
        }
        for (int i = 1; i < 20_000; i++) {
            double sum = 0;
            for (double x : esN0) {
                double t = i / 20_000.0;
                double bound = 0.9 * Math.exp(x * (t * t - 2 * t)) + 0.1 * Math.exp(x * (100 * t * t - 2 * t));
                sum += BPSK.at(-Math.log(bound));
            }
            best = Math.max(best, sum);
        }
        BlindMetric metric = new BlindMetric(Modulation.BPSK.separation(), BPSK);
        metric.begin();
        for (double x : esN0) {
            metric.place(x, 0);
            metric.add(0.9, 1, 1);
            metric.add(0.1, 1, 100);
        }
        metric.weigh();
        assertEquals(best, metric.information(), 0.002 * best);
        assertTrue(best < 0.99 * apart, best + ", each by its own: " + apart);
    }

    private static double even(double esN0, double share, double noise, double blanked) {
        BlindMetric metric = new BlindMetric(Modulation.BPSK.separation(), BPSK);
        metric.begin();
        metric.place(esN0, blanked);
        metric.add(1 - share - blanked, 1, 1);
        metric.add(share, 1, noise);
        metric.weigh();
        return metric.evenEsN0(0);
    }

    private static double chance(int of, double share) {
        return BinomialCoefficientDouble.value(PLACES, of) * Math.pow(share, of) * Math.pow(1 - share, PLACES - of);
    }

    private static double tail(double deviations) {
        return Erfc.value(deviations / Math.sqrt(2)) / 2;
    }

    /** Returns the Es/N0 of even noise at which ten places point the wrong way as often. */
    private static double evenFor(double wrong) {
        double low = 1e-6;
        double high = 1e3;
        for (int halving = 0; halving < 80; halving++) {
            double middle = Math.sqrt(low * high);
            if (tail(Math.sqrt(2 * PLACES * middle)) > wrong) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
