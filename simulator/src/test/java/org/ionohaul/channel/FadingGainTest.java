package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.LongStream;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;
import org.apache.commons.rng.sampling.PermutationSampler;
import org.apache.commons.statistics.distribution.ExponentialDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.inference.KolmogorovSmirnovTest;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One path's gain against the theory of a complex Gaussian process with a Gaussian Doppler spectrum whose standard
 * deviation is half the spread (ITU-R F.1487).
 */
final class FadingGainTest {
    private static final TrialStreams STREAMS = new TrialStreams(20_260_101, 0);
    private static final double SPREAD_HZ = 1;
    private static final double SIGMA_HZ = SPREAD_HZ / 2;
    private static final long SECOND = 1_000_000_000L;

    /** Far enough apart to be independent: exp(-2 pi^2 sigma^2 4^2) is below 1e-34. Not a multiple of the grid step. */
    private static final long INDEPENDENT_NANOS = 4_123_456_789L;

    private static final int SAMPLES = 100_000;

    @Test
    void powerHasTheExponentialDistributionOfARayleighEnvelope() {
        double[] power = new double[SAMPLES];
        double[] real = new double[SAMPLES];
        FadingGain gain = gain(SPREAD_HZ, 0);
        for (int i = 0; i < SAMPLES; i++) {
            double[] value = at(gain, i * INDEPENDENT_NANOS);
            real[i] = value[0] * Math.sqrt(2);
            power[i] = value[0] * value[0] + value[1] * value[1];
        }
        StatisticalCheck.ofMean("mean power", power, 1).verify();
        StatisticalCheck.ofMean("share below -10 dB", below(power, 0.1), 1 - Math.exp(-0.1))
                .verify();
        StatisticalCheck.ofMean("share below -20 dB", below(power, 0.01), 1 - Math.exp(-0.01))
                .verify();
        PublishedChecks.assertPlausible(
                "Kolmogorov-Smirnov: power is exponential",
                pValue(power, ExponentialDistribution.of(1)::cumulativeProbability));
        PublishedChecks.assertPlausible(
                "Kolmogorov-Smirnov: real part is normal",
                pValue(real, NormalDistribution.of(0, 1)::cumulativeProbability));
    }

    @ParameterizedTest
    @CsvSource({"0.1", "0.25", "0.45", "0.7", "1.0"})
    void autocorrelationIsThatOfAGaussianSpectrum(double lagSeconds) {
        FadingGain gain = gain(SPREAD_HZ, 1);
        double[] products = new double[SAMPLES];
        double[] crossed = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            double[] now = at(gain, i * INDEPENDENT_NANOS);
            double[] later = at(gain, i * INDEPENDENT_NANOS + Math.round(lagSeconds * SECOND));
            products[i] = now[0] * later[0] + now[1] * later[1];
            crossed[i] = now[1] * later[0] - now[0] * later[1];
        }
        double theory = Math.exp(-2 * Math.pow(Math.PI * SIGMA_HZ * lagSeconds, 2));
        StatisticalCheck.ofMean("autocorrelation at " + lagSeconds + " s", products, theory)
                .verify();
        StatisticalCheck.ofMean("imaginary part of the autocorrelation at " + lagSeconds + " s", crossed, 0)
                .verify();
    }

    /**
     * Rice's level-crossing rate 2 sqrt(pi) sigma rho exp(-rho^2), with rho the level over the root mean square (for a
     * Gaussian spectrum its rms width is sigma), and average fade duration (1 - exp(-rho^2)) over that rate.
     */
    @ParameterizedTest
    @CsvSource({"-5", "-10", "-15", "-20"})
    void fadesComeAsOftenAndLastAsLongAsRiceSays(double levelDb) {
        Crossings crossings = Crossings.of(gain(SPREAD_HZ, 2), levelDb, 50_000, 0.002);
        double rho = Math.pow(10, levelDb / 20);
        double rate = 2 * Math.sqrt(Math.PI) * SIGMA_HZ * rho * Math.exp(-rho * rho);
        crossings.rateCheck("crossings a second at " + levelDb + " dB", rate).verify();
        double duration = (1 - Math.exp(-rho * rho)) / rate;
        crossings
                .durationCheck("mean fade in s at " + levelDb + " dB", duration)
                .verify();
    }

    /** Level-crossing rate at rho = 1 for every spread in use: 1.30410 sigma. */
    @ParameterizedTest
    @CsvSource({"0.1", "0.5", "1.5", "10", "30"})
    void everythingScalesWithTheSpread(double spreadHz) {
        Crossings crossings = Crossings.of(gain(spreadHz, 3), 0, 5_000 / spreadHz, 0.01 / spreadHz);
        crossings
                .rateCheck("crossings a second at 0 dB and " + spreadHz + " Hz", 1.30410 * spreadHz / 2)
                .verify();
    }

    @Test
    void pathsFadeIndependently() {
        FadingGain first = gain(SPREAD_HZ, 0);
        FadingGain second = gain(SPREAD_HZ, 1);
        double[] real = new double[SAMPLES];
        double[] power = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            double[] a = at(first, i * INDEPENDENT_NANOS);
            double[] b = at(second, i * INDEPENDENT_NANOS);
            real[i] = a[0] * b[0] + a[1] * b[1];
            power[i] = (a[0] * a[0] + a[1] * a[1]) * (b[0] * b[0] + b[1] * b[1]);
        }
        StatisticalCheck.ofMean("correlation of two paths", real, 0).verify();
        StatisticalCheck.ofMean("mean product of two paths' powers", power, 1).verify();
    }

    @Test
    void anyOrderOfAskingGivesTheSameBits() {
        long[] instants =
                LongStream.range(0, 20_000).map(i -> i * 4_321_987_654L).toArray();
        double[] forward = realParts(gain(10, 0), instants);
        int[] order = PermutationSampler.natural(instants.length);
        PermutationSampler.shuffle(STREAMS.open(Purpose.POLICY, 0), order);
        FadingGain asked = gain(10, 0);
        double[] shuffled = new double[instants.length];
        for (int i : order) {
            shuffled[i] = at(asked, instants[i])[0];
        }
        assertArrayEquals(forward, shuffled);
        assertArrayEquals(forward, realParts(asked, instants));
    }

    @Test
    void trialsAndSeedsHaveTheirOwnFading() {
        long[] instants = {0, SECOND, 3_600 * SECOND};
        double[] here = realParts(gain(1, 0), instants);
        double[] otherTrial = realParts(new FadingGain(1, new TrialStreams(20_260_101, 1), 0), instants);
        double[] otherSeed = realParts(new FadingGain(1, new TrialStreams(20_260_102, 0), 0), instants);
        assertEquals(
                9,
                LongStream.concat(bits(here), LongStream.concat(bits(otherTrial), bits(otherSeed)))
                        .distinct()
                        .count());
    }

    /** The process has no beginning: just before and after the trial's start it is the same smooth curve. */
    @Test
    void itRunsSmoothlyThroughTheStartOfTheTrialAndThroughBlocks() {
        FadingGain gain = gain(SPREAD_HZ, 0);
        double largest = 0;
        for (long t = -200 * SECOND; t < 400 * SECOND; t += SECOND / 1000) {
            largest = Math.max(largest, Math.abs(at(gain, t)[0] - at(gain, t - SECOND / 1000)[0]));
        }
        // The slope's standard deviation is sqrt(2) pi sigma = 2.2 a second; 6 of them in 1 ms.
        assertTrue(largest < 6 * 2.2e-3, () -> "a jump");
    }

    /**
     * Twenty-four hours of a fast path, sampled where samples are independent: at no lag does the sequence resemble
     * itself. The largest of n periodogram-like |r|^2 n is about ln n = 10; 25 would be passed once in 1e6 seeds.
     */
    @Test
    void nothingRepeatsInTwentyFourHours() {
        int samples = 1 << 15;
        long stepNanos = 24 * 3600 * SECOND / samples;
        FadingGain gain = gain(30, 0);
        Complex[] day = new Complex[2 * samples];
        Arrays.fill(day, Complex.ZERO);
        for (int i = 0; i < samples; i++) {
            double[] value = at(gain, i * stepNanos);
            day[i] = new Complex(value[0], value[1]);
        }
        double likeness = 0;
        double[] correlation = autocorrelation(day);
        for (int lag = 1; lag < samples - 100; lag++) {
            likeness = Math.max(likeness, correlation[lag] * correlation[lag] / (samples - lag));
        }
        assertTrue(likeness < 25, "likeness at some lag: " + likeness);
    }

    private static double[] autocorrelation(Complex[] padded) {
        var transformer = new FastFourierTransformer(DftNormalization.STANDARD);
        Complex[] spectrum = transformer.transform(padded, TransformType.FORWARD);
        Complex[] power = Arrays.stream(spectrum)
                .map(value -> value.multiply(value.conjugate()))
                .toArray(Complex[]::new);
        return Arrays.stream(transformer.transform(power, TransformType.INVERSE))
                .mapToDouble(Complex::abs)
                .toArray();
    }

    private static double pValue(double[] sample, java.util.function.DoubleUnaryOperator distribution) {
        return KolmogorovSmirnovTest.withDefaults().test(sample, distribution).getPValue();
    }

    private static double[] below(double[] power, double level) {
        return Arrays.stream(power).map(value -> value < level ? 1 : 0).toArray();
    }

    private static LongStream bits(double[] values) {
        return Arrays.stream(values).mapToLong(Double::doubleToRawLongBits);
    }

    private static double[] realParts(PathGain gain, long[] instants) {
        return Arrays.stream(instants).mapToDouble(t -> at(gain, t)[0]).toArray();
    }

    private static double[] at(PathGain gain, long atNanos) {
        double[] value = new double[2];
        gain.at(atNanos, value, 0);
        return value;
    }

    private static FadingGain gain(double spreadHz, int path) {
        return new FadingGain(spreadHz, STREAMS, path);
    }
}
