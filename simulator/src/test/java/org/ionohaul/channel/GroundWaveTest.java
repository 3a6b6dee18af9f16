package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A steady wave beside one that fades, against Rice's distribution. */
final class GroundWaveTest {
    private static final TrialStreams STREAMS = new TrialStreams(20_260_111, 0);
    private static final long SECOND = 1_000_000_000L;

    /** Far enough apart to be independent at a spread of 1 Hz; see FadingGainTest. */
    private static final long INDEPENDENT_NANOS = 4_123_456_789L;

    private static final int SAMPLES = 50_000;
    private static final Passband CARRIER = new Passband(3000, 1);

    /**
     * Power over its mean, of a steady wave K times as strong as a Rayleigh-fading one: variance (1 + 2 K) / (1 + K)^2, and
     * below x with probability sum over k of the Poisson chance of k at mean K times the chance that a gamma variable of
     * shape k + 1 is below (1 + K) x (Proakis, Digital Communications, non-central chi-square distribution).
     */
    @ParameterizedTest
    @CsvSource({"-6", "3", "10"})
    void besideOneFadingPathItMakesARicianPath(double levelDb) {
        double k = Math.pow(10, levelDb / 10);
        List<PropagationPath> fading = List.of(new PropagationPath(0, 0, 0, 1));
        Reception reception = sky(fading, Schedule.NONE, levelDb).reception(End.NEAR, CARRIER);
        double[] power = new double[SAMPLES];
        double[] squares = new double[SAMPLES];
        double[] faded = new double[SAMPLES];
        double[] disturbance = new double[1];
        double[] signal = new double[1];
        for (int i = 0; i < SAMPLES; i++) {
            reception.powers(i * INDEPENDENT_NANOS, signal, disturbance);
            power[i] = signal[0] / reception.meanSignal(i * INDEPENDENT_NANOS);
            squares[i] = (power[i] - 1) * (power[i] - 1);
            faded[i] = power[i] < 0.5 ? 1 : 0;
        }
        StatisticalCheck.ofMean("Rice: mean power at K = " + levelDb + " dB", power, 1)
                .verify();
        StatisticalCheck.ofMean(
                        "Rice: variance of power at K = " + levelDb + " dB", squares, (1 + 2 * k) / ((1 + k) * (1 + k)))
                .verify();
        StatisticalCheck.ofMean("Rice: share below -3 dB at K = " + levelDb + " dB", faded, below(0.5, k))
                .verify();
        assertEquals(10 * (1 + k), reception.meanSignal(0), 1e-9);
    }

    private static double below(double x, double k) {
        double sum = 0;
        double chance = Math.exp(-k);
        for (int i = 0; i < 100; i++) {
            sum += chance * GammaDistribution.of(i + 1, 1).cumulativeProbability((1 + k) * x);
            chance *= k / (i + 1);
        }
        return sum;
    }

    /** Where the sky wave is gone, the ground wave is all there is, at both ends as far below what the sky wave was. */
    @Test
    void itStaysWhenTheSkyWaveGoesAndBothEndsHearIt() {
        Schedule closing = new Schedule(List.of(new Schedule.Point(0, 0), new Schedule.Point(100, -90)));
        Sky sky = sky(FadingCondition.POOR.paths(), closing, -4);
        SinrMeter meter = new SinrMeter();
        for (long at = 200 * SECOND; at < 400 * SECOND; at += SECOND) {
            meter.listen(sky.reception(End.NEAR, CARRIER), at);
            assertEquals(10 - 4, Decibels.ofRatio(meter.sinr(0)), 0.002);
            meter.listen(sky.reception(End.FAR, CARRIER), at);
            assertEquals(3 - 4, Decibels.ofRatio(meter.sinr(0)), 0.002);
        }
    }

    @Test
    void theSkyWaveFadesAsItDoesWithoutIt() {
        double[] with = signals(sky(FadingCondition.POOR.paths(), Schedule.NONE, -200));
        double[] without = signals(new Sky(
                new SkyConditions(
                        FadingCondition.POOR.paths(),
                        SlowVariation.NONE,
                        Schedule.NONE,
                        EndConditions.quiet(10),
                        EndConditions.quiet(3)),
                STREAMS));
        for (int i = 0; i < with.length; i++) {
            assertEquals(without[i], with[i], 1e-7);
        }
        assertTrue(Arrays.stream(with).distinct().count() > 90);
    }

    /** A steady share of the power narrows the Doppler spectrum as a whole: half the power, spread / sqrt 2. */
    @Test
    void itArrivesFirstAndNarrowsTheSpectrum() {
        SkyConditions conditions =
                sky(FadingCondition.POOR.paths(), Schedule.NONE, 0).conditions();
        List<PropagationPath> arrivals = conditions.arrivals();
        assertEquals(0, arrivals.get(0).delaySeconds());
        assertEquals(0.0016, arrivals.get(1).delaySeconds(), 1e-12);
        assertEquals(0.0036, arrivals.get(2).delaySeconds(), 1e-12);
        assertEquals(10 * Math.log10(2), arrivals.get(0).powerDb(), 1e-9);
        assertEquals(Math.sqrt(0.5), conditions.dopplerSpreadHz(), 1e-9);
    }

    private static double[] signals(Sky sky) {
        Reception reception = sky.reception(End.NEAR, CARRIER);
        double[] signal = new double[1];
        double[] signals = new double[100];
        for (int i = 0; i < signals.length; i++) {
            reception.powers(i * SECOND, signal, new double[1]);
            signals[i] = signal[0];
        }
        return signals;
    }

    private static Sky sky(List<PropagationPath> paths, Schedule trend, double levelDb) {
        return new Sky(
                new SkyConditions(
                        paths,
                        SlowVariation.NONE,
                        trend,
                        EndConditions.quiet(10),
                        EndConditions.quiet(3),
                        Spells.NONE,
                        Spells.NONE,
                        Optional.of(new GroundWave(0.0016, levelDb))),
                STREAMS);
    }
}
