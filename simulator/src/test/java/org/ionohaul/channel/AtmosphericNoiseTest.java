package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.ionohaul.limits.OutOfRange;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;

/** Static against Middleton's class A (IEEE Trans. EMC 19(3), 1977; formulas from memory). */
final class AtmosphericNoiseTest {
    private static final long CRASH_NANOS = 20_000_000;
    private static final int CRASHES = 200_000;
    private static final AtmosphericNoise STATIC = new AtmosphericNoise(6, 0.1, 0.02);
    private static final Passband ONE_BAND = new Passband(3000, 1);

    @Test
    void theEnvelopeExceedsEveryLevelAsOftenAsClassADoes() {
        double[] power = powers();
        double steady = steady();
        // P(power > x) = sum of e^-A A^m / m! exp(-x / s_m), s_m = (m / A + G) / (1 + G).
        for (double level : new double[] {0.01, 0.1, 0.3, 1, 3, 10, 30}) {
            double expected = 0;
            double probability = Math.exp(-0.1);
            for (int m = 0; m < 30; m++) {
                expected += probability * Math.exp(-level * (1 + steady) / (m / 0.1 + steady));
                probability *= 0.1 / (m + 1);
            }
            double[] exceeds = new double[CRASHES];
            for (int i = 0; i < CRASHES; i++) {
                exceeds[i] = power[i] > level ? 1 : 0;
            }
            StatisticalCheck.ofMean("static: share over " + level + " of the mean power", exceeds, expected)
                    .verify();
        }
    }

    @Test
    void itsVoltageDeviationAndMeanPowerAreThoseStated() {
        // Vd = 20 log10(root mean square / mean of the envelope) (ITU-R P.372).
        double[] power = powers();
        double[] envelope = new double[CRASHES];
        for (int i = 0; i < CRASHES; i++) {
            envelope[i] = Math.sqrt(power[i]);
        }
        StatisticalCheck.ofMean("static: mean power", power, 1).verify();
        StatisticalCheck.ofMean("static: mean envelope at Vd 6 dB", envelope, Math.pow(10, -6 / 20.0))
                .verify();
    }

    @Test
    void aStretchIsToldAsItsInstantsAre() {
        Reception reception = sky().reception(End.FAR, ONE_BAND);
        NoiseBursts bursts = new NoiseBursts();
        double[] disturbance = new double[1];
        reception.powers(0, new double[1], disturbance);
        reception.bursts(CRASH_NANOS / 2, 100 * CRASH_NANOS + CRASH_NANOS / 4, bursts);
        double sum = 0;
        NoiseAtEnd noise = sky().noise(End.FAR);
        for (int quarter = 2; quarter < 401; quarter++) {
            sum += noise.noise(quarter * CRASH_NANOS / 4 + 1);
        }
        assertEquals(sum / 399, disturbance[0] + bursts.meanPower(), 1e-6);
        assertTrue(bursts.meanPower() > 0);
    }

    @Test
    void evenNoiseHasTheDeviationOfRayleighsEnvelopeAndNoCrashes() {
        assertEquals(1.0491, AtmosphericNoise.EVEN_DB, 1e-4);
        assertEquals(1, AtmosphericNoise.NONE.between());
        assertEquals(0, AtmosphericNoise.NONE.crashPower());
    }

    @Test
    void moreThanClassACanMakeIsRefused() {
        // With A = 1 and nothing between crashes: -20 log10(root(pi / 4) e^-1 sum of root(m) / m!) = 3.28 dB.
        double sum = 0;
        double factorial = 1;
        for (int m = 1; m < 30; m++) {
            factorial *= m;
            sum += Math.sqrt(m) / factorial;
        }
        double most = -20 * Math.log10(Math.sqrt(Math.PI / 4) * Math.exp(-1) * sum);
        new AtmosphericNoise(most - 0.02, 1, 0.02);
        assertThrows(OutOfRange.class, () -> new AtmosphericNoise(most + 0.02, 1, 0.02));
        assertThrows(OutOfRange.class, () -> new AtmosphericNoise(1, 1, 0.02));
    }

    private static double steady() {
        return STATIC.between() / (1 - STATIC.between());
    }

    /** Power of a complex Gaussian sample in the middle of each crash's time, over the mean. */
    private static double[] powers() {
        UniformRandomProvider random = RandomSource.SPLIT_MIX_64.create(9);
        ZigguratSampler.Exponential exponential = ZigguratSampler.Exponential.of(random);
        NoiseAtEnd noise = sky().noise(End.FAR);
        double[] powers = new double[CRASHES];
        for (int i = 0; i < CRASHES; i++) {
            powers[i] = noise.noise(i * CRASH_NANOS + CRASH_NANOS / 2) * exponential.sample();
        }
        return powers;
    }

    private static Sky sky() {
        EndConditions end = new EndConditions(
                10, Schedule.NONE, ImpulsiveNoise.NONE, STATIC, List.of(), GainControl.NONE, Optional.empty());
        return new Sky(
                new SkyConditions(FadingCondition.FLAT.paths(), SlowVariation.NONE, Schedule.NONE, end, end),
                new TrialStreams(6, 0));
    }
}
