package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.inference.KolmogorovSmirnovTest;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;

/**
 * The program's fading against reference sequences of filtered noise; and reference sequences with the classic mistakes
 * against the same theory, to know that they would be caught.
 */
final class FilteredNoiseTest {
    private static final double SPREAD_HZ = 1;
    private static final double SIGMA_HZ = SPREAD_HZ / 2;
    private static final double STEP_SECONDS = 0.005;
    private static final double[] LEVELS_DB = {-5, -10, -15, -20};
    private static final double[] LAGS_SECONDS = {0.1, 0.25, 0.45, 0.7, 1.0};
    private static final FilteredNoise REFERENCE = new FilteredNoise(SIGMA_HZ, 0.5, STEP_SECONDS, 20_260_107);

    @Test
    void referenceItselfAgreesWithTheory() {
        List<StatisticalCheck> verdicts = againstTheory("reference: ", REFERENCE);
        assertEquals(13, verdicts.size());
        verdicts.forEach(StatisticalCheck::verify);
    }

    @Test
    void programAndReferenceFadeAlike() {
        double length = REFERENCE.lengthSeconds();
        FadingGain gain = new FadingGain(SPREAD_HZ, new TrialStreams(20_260_108, 0), 0);
        for (double levelDb : LEVELS_DB) {
            Crossings expected = Crossings.of(REFERENCE::power, levelDb, length, STEP_SECONDS);
            Crossings found = Crossings.of(gain, levelDb, length, STEP_SECONDS);
            found.rateDifference("program less reference: crossings a second at " + levelDb + " dB", expected)
                    .verify();
        }
        double[] powers =
                IntStream.range(0, 4_000).mapToDouble(i -> power(gain, 2.5 * i)).toArray();
        double[] referencePowers = IntStream.range(0, 4_000)
                .mapToDouble(i -> REFERENCE.power(2.5 * i))
                .toArray();
        double pValue = KolmogorovSmirnovTest.withDefaults()
                .test(powers, referencePowers)
                .getPValue();
        PublishedChecks.assertPlausible("Kolmogorov-Smirnov: program and reference powers", pValue);
    }

    /** The spread is twice the standard deviation; read as the deviation itself it doubles the fade rate. */
    @Test
    void spreadReadAsSigmaWouldBeCaught() {
        FilteredNoise mistaken = new FilteredNoise(SPREAD_HZ, 0.5, STEP_SECONDS, 20_260_109);
        assertTrue(caught(mistaken) >= 8, () -> "caught " + caught(mistaken) + " times");
    }

    /** Filtering with the density in place of its square root narrows the spectrum by the square root of two. */
    @Test
    void densityInPlaceOfItsSquareRootWouldBeCaught() {
        FilteredNoise mistaken = new FilteredNoise(SIGMA_HZ, 1, STEP_SECONDS, 20_260_110);
        assertTrue(caught(mistaken) >= 8, () -> "caught " + caught(mistaken) + " times");
    }

    private static long caught(FilteredNoise mistaken) {
        return againstTheory("", mistaken).stream()
                .filter(verdict -> !verdict.passes())
                .count();
    }

    private static List<StatisticalCheck> againstTheory(String name, FilteredNoise noise) {
        List<StatisticalCheck> verdicts = new ArrayList<>();
        for (double levelDb : LEVELS_DB) {
            Crossings crossings = Crossings.of(noise::power, levelDb, noise.lengthSeconds(), STEP_SECONDS);
            double rho = Math.pow(10, levelDb / 20);
            double rate = 2 * Math.sqrt(Math.PI) * SIGMA_HZ * rho * Math.exp(-rho * rho);
            verdicts.add(crossings.rateCheck(name + "crossings a second at " + levelDb + " dB", rate));
            double duration = (1 - Math.exp(-rho * rho)) / rate;
            verdicts.add(crossings.durationCheck(name + "mean fade in s at " + levelDb + " dB", duration));
        }
        for (double lagSeconds : LAGS_SECONDS) {
            double[] products = IntStream.range(0, 4_000)
                    .mapToDouble(i -> noise.product(2.5 * i, 2.5 * i + lagSeconds))
                    .toArray();
            double theory = Math.exp(-2 * Math.pow(Math.PI * SIGMA_HZ * lagSeconds, 2));
            verdicts.add(StatisticalCheck.ofMean(name + "autocorrelation at " + lagSeconds + " s", products, theory));
        }
        return verdicts;
    }

    private static double power(FadingGain gain, double atSeconds) {
        double[] value = new double[2];
        gain.at(Math.round(atSeconds * 1e9), value, 0);
        return value[0] * value[0] + value[1] * value[1];
    }
}
