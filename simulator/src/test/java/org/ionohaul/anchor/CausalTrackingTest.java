package org.ionohaul.anchor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.ionohaul.channel.EndConditions;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SkySamples;
import org.ionohaul.channel.SlowVariation;
import org.ionohaul.waveform.ReferenceFile;
import org.junit.jupiter.api.Test;

/**
 * What a receiver that sees only the past errs by on the path of MIL-STD-188-110 Appendix C (two paths 2 ms apart, 1 Hz), if
 * all its decisions are right: whether that explains why the model is too kind there.
 */
final class CausalTrackingTest {
    private static final double SYMBOL_RATE = 2400;
    private static final double SPREAD_HZ = 1;
    private static final double SIGMA_HZ = SPREAD_HZ / 2;

    /** 31 known symbols are 16 and again 15 of them (from memory): that many taps can be told from them. */
    private static final int TAPS = 16;

    private static final int[] PATHS = {1, 6};
    private static final int SYMBOLS = 100_000;
    private static final double[] STEPS = {0.005, 0.01, 0.02, 0.03, 0.045, 0.06, 0.08};
    private static final double[] ES_N0_DB = {14, 18, 22, 26, 30, 34, 38};

    /** Error of the best estimate that sees only the past, over a path's power, by Yovits and Jackson (1955). */
    private static double leastError(double noise) {
        double area = new SimpsonIntegrator()
                .integrate(
                        1_000_000, f -> Math.log1p(spectrum(f) * SYMBOL_RATE / noise), -5 * SPREAD_HZ, 5 * SPREAD_HZ);
        return noise / SYMBOL_RATE * area;
    }

    private static double spectrum(double hertz) {
        double x = hertz / SIGMA_HZ;
        return Math.exp(-x * x / 2) / (Math.sqrt(2 * Math.PI) * SIGMA_HZ);
    }

    /**
     * Yovits and Jackson, "Linear filter optimization with game theory considerations", IRE Nat. Conv. Rec. 3(4), 1955 (from
     * memory): of a signal of spectrum S in white noise N the best causal filter misses N times the integral of log(1 + S / N).
     * The same as weights of the 300 last looks, of four symbols each.
     */
    @Test
    void whoSeesOnlyThePastAndKnowsThePathErrs47DecibelsUnderTheSignalAt33Decibels() {
        double noise = 2 * Math.pow(10, -34 / 10.0);
        int symbolsALook = 4;
        double[] looks = IntStream.range(-300, 0)
                .mapToDouble(i -> (i + 0.5) * symbolsALook / SYMBOL_RATE)
                .toArray();
        double[] weights = Tracking.WIENER.weights(looks, new double[] {0}, SPREAD_HZ, noise / symbolsALook)[0];
        double error = 1;
        for (int i = 0; i < looks.length; i++) {
            double turns = Math.PI * SPREAD_HZ * looks[i];
            error -= weights[i] * Math.exp(-turns * turns / 2);
        }
        assertEquals(decibels(leastError(noise)), decibels(error), 0.5);
        assertEquals(-47.5, decibels(error), 0.5);
    }

    /**
     * One that knows neither delays nor spread: a gradient that moves 16 taps after each symbol (Widrow and others, Proc. IEEE
     * 64(8), 1976), its step the best for each level. What it would make of the five rows: too harsh in the lower four, too
     * kind in the last, no nearer than 1.5 times straight lines by more than the difference of such guesses.
     */
    @Test
    void aGradientOfSixteenTapsMovesTheErrorAndDoesNotTakeItAway() throws IOException {
        double[] errorsDb =
                Arrays.stream(ES_N0_DB).map(CausalTrackingTest::bestGradientDb).toArray();
        // Some 40 s of two paths at 1 Hz: about a hundred fades, 0.4 dB of standard error.
        assertEquals(-24, errorsDb[2] / 2 + errorsDb[3] / 2, 1.5);
        assertEquals(-30, errorsDb[5], 1.5);
        PolynomialSplineFunction gradient = new LinearInterpolator().interpolate(ES_N0_DB, errorsDb);
        List<Double> rows = new ArrayList<>();
        for (CSVRecord line : ReferenceFile.read("waveform-calibration.csv")) {
            if (number(line, "assumed_wrong_bit_share") == 0.02) {
                rows.add(predictedDb(number(line, "program_poor_db"), gradient) - number(line, "required_poor_db"));
            }
        }
        assertEquals(5, rows.size());
        assertTrue(rows.subList(0, 3).stream().allMatch(it -> it > 0.8), rows::toString);
        assertTrue(rows.get(4) < -1, rows::toString);
    }

    /** Returns what a row needs if the gradient's error takes the place of 1.5 times what straight lines miss. */
    private static double predictedDb(double programDb, PolynomialSplineFunction gradient) {
        double lines = 1.5 * Math.pow(Math.PI * SPREAD_HZ * 287 / SYMBOL_RATE, 4) / 40;
        double borne = Math.pow(10, -esN0Db(programDb) / 10) + lines;
        double esN0Db = Arrays.stream(IntStream.range(0, 2400)
                        .mapToDouble(i -> 14 + i / 100.0)
                        .toArray())
                .boxed()
                .min(Comparator.comparingDouble(
                        it -> Math.abs(Math.pow(10, -it / 10) + Math.pow(10, gradient.value(it) / 10) - borne)))
                .orElseThrow();
        return esN0Db - esN0Db(0);
    }

    private static double esN0Db(double snrDb) {
        return snrDb + decibels(3000 / SYMBOL_RATE);
    }

    private static double bestGradientDb(double esN0Db) {
        return Arrays.stream(STEPS)
                .map(step -> gradientErrorDb(step, esN0Db))
                .min()
                .orElseThrow();
    }

    private static double gradientErrorDb(double step, double esN0Db) {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(61L);
        ContinuousSampler gaussian = ZigguratSampler.NormalizedGaussian.of(random);
        Signal[] gains = poorPath();
        double deviation = Math.pow(10, -esN0Db / 20) * Math.sqrt(0.5);
        double[] re = new double[TAPS];
        double[] im = new double[TAPS];
        double[] signs = new double[TAPS];
        double sum = 0;
        for (int at = 0; at < SYMBOLS; at++) {
            System.arraycopy(signs, 0, signs, 1, TAPS - 1);
            signs[0] = random.nextBoolean() ? 1 : -1;
            double missedRe = deviation * gaussian.sample();
            double missedIm = deviation * gaussian.sample();
            for (int path = 0; path < PATHS.length; path++) {
                missedRe += gains[path].real()[at] * signs[PATHS[path]];
                missedIm += gains[path].imaginary()[at] * signs[PATHS[path]];
            }
            double error = 0;
            for (int tap = 0; tap < TAPS; tap++) {
                missedRe -= re[tap] * signs[tap];
                missedIm -= im[tap] * signs[tap];
                int path = tap == PATHS[0] ? 0 : tap == PATHS[1] ? 1 : -1;
                double errorRe = re[tap] - (path < 0 ? 0 : gains[path].real()[at]);
                double errorIm = im[tap] - (path < 0 ? 0 : gains[path].imaginary()[at]);
                error += errorRe * errorRe + errorIm * errorIm;
            }
            sum += at < SYMBOLS / 10 ? 0 : error;
            for (int tap = 0; tap < TAPS; tap++) {
                re[tap] += step * missedRe * signs[tap];
                im[tap] += step * missedIm * signs[tap];
            }
        }
        return decibels(sum / (0.9 * SYMBOLS));
    }

    private static Signal[] poorPath() {
        SkyConditions poor = new SkyConditions(
                FadingCondition.POOR.paths(),
                SlowVariation.NONE,
                Schedule.NONE,
                EndConditions.quiet(0),
                EndConditions.quiet(0));
        SkySamples sky = new SkySamples(poor, 62, 0);
        Signal[] gains = {new Signal(SYMBOLS), new Signal(SYMBOLS)};
        double[] now = new double[4];
        for (int at = 0; at < SYMBOLS; at++) {
            sky.gains(Math.round(at * 1e9 / SYMBOL_RATE), now);
            gains[0].set(at, now[0], now[1]);
            gains[1].set(at, now[2], now[3]);
        }
        return gains;
    }

    private static double decibels(double ratio) {
        return 10 * Math.log10(ratio);
    }

    private static double number(CSVRecord line, String column) {
        return Double.parseDouble(line.get(column));
    }
}
