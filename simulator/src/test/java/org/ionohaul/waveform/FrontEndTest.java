package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.ionohaul.channel.Decibels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class FrontEndTest {
    private static final int DRAWS = 400_000;
    private static final FrontEnd BLANKING = new FrontEnd(Excision.NONE, ImpulseDefence.BLANKER, 10);

    @ParameterizedTest
    @CsvSource({"LIMITER, 0.1", "LIMITER, 1", "LIMITER, 5", "BLANKER, 0.1", "BLANKER, 1", "BLANKER, 5"})
    void limiterAndBlankerLeaveWhatDrawingLeaves(ImpulseDefence defence, double limit) {
        // Complex Gaussian samples of mean power 1: what is a scaled copy is E(out in), what comes through E(out^2).
        UniformRandomProvider random = RandomSource.SPLIT_MIX_64.create(4);
        ZigguratSampler.Exponential power = ZigguratSampler.Exponential.of(random);
        double copied = 0;
        double squares = 0;
        double through = 0;
        for (int i = 0; i < DRAWS; i++) {
            double in = Math.sqrt(power.sample());
            double out = in * in <= limit ? in : defence == ImpulseDefence.LIMITER ? Math.sqrt(limit) : 0;
            copied += out * in;
            squares += out * in * out * in;
            through += out * out;
        }
        double mean = copied / DRAWS;
        double error = Math.sqrt((squares / DRAWS - mean * mean) / DRAWS);
        assertEquals(mean, defence.amplitude(limit), 3.5 * error);
        // The power that comes through varies no more than the copy does.
        assertEquals(through / DRAWS, defence.power(limit), 3.5 * error);
    }

    @ParameterizedTest
    @CsvSource({"LIMITER, 0, -3", "LIMITER, 3, 2", "LIMITER, 3, 12", "LIMITER, 6, 12", "BLANKER, 8, 2"})
    void betweenBurstsADefenceCostsWhatItMakesNoiseOf(ImpulseDefence defence, double limitDb, double snrDb) {
        // Of what passes, a scaled copy and the rest of the power as noise: never easier to decode than what came in.
        double limit = Decibels.toRatio(limitDb);
        double passes = defence.passes(limit);
        double copy = Math.pow(defence.amplitude(limit) / passes, 2);
        double snr = Decibels.toRatio(snrDb);
        double left = copy * snr / (copy + (defence.power(limit) / passes - copy) * (snr + 1));
        assertTrue(left < snr, () -> left + " of " + snr);
        Waveform plain = waveform(0.5, 0, FrontEnd.PLAIN);
        double expected = plain.evidence(steady(Decibels.ofRatio(left)), 0, 0, 1);
        Waveform defended = waveform(0.5, 0, new FrontEnd(Excision.NONE, defence, limitDb));
        assertEquals(expected, defended.evidence(steady(snrDb), 0, 0, 1), 1e-3 * expected);
        // Bursts too weak to matter change nothing. The weight of a word is sought to a thousandth.
        double hardlyStruck = defended.evidence(steady(snrDb).struckUntil(10_000_000, 1e-6), 0, 0, 1);
        assertEquals(expected, hardlyStruck, 2e-3 * expected);
    }

    @ParameterizedTest
    @CsvSource({"LIMITER, 3, 12, 3", "LIMITER, 6, 5, 6", "BLANKER, 8, 2, 3"})
    void aDefenceSeesTheMeanPowerWhateverThePeaksAre(
            ImpulseDefence defence, double limitDb, double snrDb, double crestFactorDb) {
        // Signals are told by the power of a full carrier: one whose mean lies so much under that is heard as one
        // without peaks that is weaker by as much.
        FrontEnd frontEnd = new FrontEnd(Excision.NONE, defence, limitDb);
        Coding coding = Coding.oneByOne(Modulation.BPSK, 2400, 0.5);
        for (double burst : new double[] {1e-9, 99}) {
            ScriptedReception weaker = steady(snrDb).struckUntil(10_000_000, burst);
            double expected = waveform(coding, 0, frontEnd, 0).evidence(weaker, 0, 0, 1);
            ScriptedReception full = steady(snrDb + crestFactorDb).struckUntil(10_000_000, burst);
            double peaking = waveform(coding, 0, frontEnd, crestFactorDb).evidence(full, 0, 0, 1);
            assertEquals(expected, peaking, 1e-9 * expected);
        }
    }

    @Test
    void whatLeaksFallsWithTheSquareOfTheDistanceAndNothingIsLostWithinAWideBand() {
        // 99 sub-bands of four carriers, an interferer in the middle: nearly all power is found again, and ten sub-
        // bands away it lies 1 / (2 (pi x 40)^2) x 4 below.
        double[] densities = new double[99];
        Arrays.fill(densities, 1);
        densities[49] = 1 + 1e6;
        new Leakage(99, 200, 1 / 50.0).spread(densities, new double[99]);
        double found = Arrays.stream(densities).sum() - 99;
        assertEquals(1e6, found, 3e3);
        double expected = 1e6 * 4 / (2 * Math.pow(Math.PI * 40, 2));
        assertEquals(expected, densities[59] - 1, 0.1 * expected);
    }

    @Test
    void aPlainDecoderTakesImpulsesAsItsMetricDoesAndBitsByTheirOwn() {
        // 20 dB over the floor for 10 ms of 100, symbols of 5 / 12 ms: 10.42 ms of symbols are struck, on average for
        // 0.96 of their time. Es/N0 is 3000 / 2400 of the SNR in 3 kHz. Uncoded bits suffer where they are struck.
        BlindMetric metric =
                new BlindMetric(1, CodedInformation.of(Modulation.BPSK).bits());
        metric.begin();
        metric.place(Decibels.toRatio(9) * 3000 / 2400, 0);
        metric.add(1 - 0.1 / 0.96, 1, 1);
        metric.add(0.1 / 0.96, 1, 1 + 0.96 * 99);
        metric.weigh();
        double even = metric.evenEsN0(0) * 2400 / 3000;
        Waveform coded = waveform(0.5, 0, FrontEnd.PLAIN);
        double struck = coded.evidence(steady(9).struckUntil(10_000_000, 99), 0, 0, 1);
        assertEquals(coded.evidence(steady(Decibels.ofRatio(even)), 0, 0, 1), struck, 1e-3 * struck);
        Waveform uncoded = waveform(1, 0, FrontEnd.PLAIN);
        double alone = Math.log(uncoded.decodingProbability(uncoded.evidence(steady(6), 0, 0, 1)));
        double noisyDb = 6 - Decibels.ofRatio(1 + 0.96 * 99);
        double noisy = Math.log(uncoded.decodingProbability(uncoded.evidence(steady(noisyDb), 0, 0, 1)));
        double both = uncoded.decodingProbability(uncoded.evidence(steady(6).struckUntil(10_000_000, 99), 0, 0, 1));
        assertEquals(Math.exp((1 - 0.1 / 0.96) * alone + 0.1 / 0.96 * noisy), both, 1e-3 * both);
    }

    /** Symbols of 5 / 6 ms on two carriers, one heard at 12 dB and one at 6: each part of the band is weighed by itself. */
    @Test
    void carriersAreStruckEachInItsOwnPartOfTheBand() {
        RatioTable bits = CodedInformation.of(Modulation.BPSK).bits();
        BlindMetric metric = new BlindMetric(1, bits);
        double struckPart = 0.01 / (0.01 + 2 / 2400.0);
        metric.begin();
        for (double snrDb : new double[] {12, 6}) {
            metric.place(Decibels.toRatio(snrDb) * 3000 / 2400, 0);
            metric.add(1 - 0.1 / struckPart, 1, 1);
            metric.add(0.1 / struckPart, 1, 1 + struckPart * 99);
        }
        metric.weigh();
        double even = bits.inverse(metric.information() / 2) * 2400 / 3000;
        Waveform carriers = waveform(new Coding(Modulation.BPSK, 2, 2400, 0.5), 0, FrontEnd.PLAIN);
        ScriptedReception uneven =
                ScriptedReception.of(2, 5_000_000, (at, band) -> Decibels.toRatio(band == 0 ? 12 : 6));
        double struck = carriers.evidence(uneven.struckUntil(10_000_000, 99), 0, 0, 1);
        assertEquals(carriers.evidence(steady(Decibels.ofRatio(even)), 0, 0, 1), struck, 1e-3 * struck);
        assertTrue(struck < 0.95 * carriers.evidence(uneven, 0, 0, 1), () -> struck + " of an undisturbed frame");
    }

    @Test
    void aBlankerHelpsAgainstImpulsesFarOverTheSignal() {
        // 50 dB over the floor for 10 ms of 100, signal at -2 dB. Hardly a sample of an impulse passes a blanker at 10
        // dB, a tenth of the symbols is gone: -ln(0.1 + 0.9 exp(-x)) instead of x = Es/N0, 0.789. A limiter lets them
        // through at ten times the mean of signal and noise, 12 dB over the floor, with next to nothing of the signal
        // in them; to the decoder they are noise that costs it somewhat more than the mean power says, and more than
        // the gaps do.
        ScriptedReception struck = steady(-2).struckUntil(10_000_000, 99_999);
        Waveform plain = waveform(0.5, 0, FrontEnd.PLAIN);
        double without = plain.evidence(steady(-2), 0, 0, 1);
        double blanked = waveform(0.5, 0, BLANKING).evidence(struck, 0, 0, 1);
        assertEquals(-Math.log(0.1 + 0.9 * Math.exp(-without)), blanked, 0.05 * blanked);
        double limited = waveform(0.5, 0, new FrontEnd(Excision.NONE, ImpulseDefence.LIMITER, 10))
                .evidence(struck, 0, 0, 1);
        double mean = without / (1 + 0.1 * 10 * (1 + Decibels.toRatio(-2)));
        assertTrue(limited > 0.5 * mean && limited < mean && limited < blanked, mean + ", " + limited + ", " + blanked);
        double left = plain.evidence(struck, 0, 0, 1);
        assertTrue(left < 0.1 * limited, left + ", " + limited);
        assertTrue(waveform(0.5, 0.1, BLANKING).detectionProbability(struck, 0) > 0.99);
        assertEquals(0, waveform(0.5, 0.1, FrontEnd.PLAIN).detectionProbability(struck, 0), 1e-6);
    }

    private static ScriptedReception steady(double snrDb) {
        return ScriptedReception.of(1, 5_000_000, (at, band) -> Decibels.toRatio(snrDb));
    }

    private static Waveform waveform(double codeRate, double preambleSeconds, FrontEnd frontEnd) {
        return waveform(Coding.oneByOne(Modulation.BPSK, 2400, codeRate), preambleSeconds, frontEnd);
    }

    private static Waveform waveform(Coding coding, double preambleSeconds, FrontEnd frontEnd) {
        return waveform(coding, preambleSeconds, frontEnd, 0);
    }

    private static Waveform waveform(Coding coding, double preambleSeconds, FrontEnd frontEnd, double crestFactorDb) {
        // 120 bits of BPSK in 100 ms.
        ModelledFrame frame =
                new ModelledFrame(coding, new Receiver(1, 0, 0, 900), 15, 120, FrameCheck.WHOLE_FRAME, 0.1, 0);
        return Waveforms.of(
                new BurstShape(preambleSeconds, -5, frontEnd, frame),
                new Emission(2400, crestFactorDb),
                Combining.CHASE);
    }
}
