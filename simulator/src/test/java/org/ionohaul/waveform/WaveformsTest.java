package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.Reception;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

final class WaveformsTest {
    private static final double NO_CEILING_DB = 900;
    /** From here on 64-QAM carries all its bits, and its SINR no longer shows in them. */
    private static final double SATURATED_QAM64_DB = 28;

    private static final Emission NARROW = new Emission(500, 0);
    private static final GaussIntegrator POWER_GRID = new GaussIntegratorFactory().legendre(200, 0, 40);

    @Test
    void aBurstLastsAsLongAsItsSymbols() {
        // 100 bytes + 4 at rate 1/2 on QPSK: 832 symbols, two thirds of 2400 Bd: 0.52 s a frame.
        Waveform waveform =
                Waveforms.of(burst(0.2, coded(Modulation.QPSK, 0.5, 2400, 1.0 / 3, 0)), NARROW, Combining.NONE);
        assertEquals(200_000_000, waveform.preambleNanos());
        assertEquals(720_000_000, waveform.burstNanos(1));
        assertEquals(200_000_000 + 7 * 520_000_000L, waveform.burstNanos(7));
        assertEquals(100, waveform.payloadBytes());
    }

    @Test
    void aBurstIsFilledUpToWholeInterleavers() {
        Waveform waveform =
                Waveforms.of(burst(0.2, coded(Modulation.QPSK, 0.5, 2400, 1.0 / 3, 0.6)), NARROW, Combining.NONE);
        assertEquals(800_000_000, waveform.burstNanos(1));
        assertEquals(200_000_000 + 2 * 600_000_000L, waveform.burstNanos(2));
        assertEquals(200_000_000 + 7 * 600_000_000L, waveform.burstNanos(8));
    }

    @Test
    void aFrameListensOnlyWhileItIsOnTheAir() {
        Waveform waveform =
                Waveforms.of(burst(0.2, coded(Modulation.QPSK, 0.5, 2400, 1.0 / 3, 0)), NARROW, Combining.NONE);
        assertHeardWithin(waveform, 2, 200_000_000 + 2 * 520_000_000L, 200_000_000 + 3 * 520_000_000L);
    }

    @Test
    void aFrameListensOverItsInterleavers() {
        // Frame 1 runs from 0.52 to 1.04 s of the payload: it lies in the interleavers 0 to 0.6 and 0.6 to 1.2 s.
        Waveform waveform =
                Waveforms.of(burst(0.2, coded(Modulation.QPSK, 0.5, 2400, 1.0 / 3, 0.6)), NARROW, Combining.NONE);
        assertHeardWithin(waveform, 1, 200_000_000, 1_400_000_000);
    }

    @Test
    void framesThatShareAnInterleaverListenOnceTogether() {
        // Eight frames of 0.52 s lie in seven interleavers of 0.6 s, and are heard no more often than frames as long as
        // those.
        ScriptedReception reception = ScriptedReception.of(1, 100_000_000, (at, band) -> 4);
        Waveform waveform =
                Waveforms.of(burst(0.2, coded(Modulation.QPSK, 0.5, 2400, 1.0 / 3, 0.6)), NARROW, Combining.NONE);
        for (int frame = 0; frame < 8; frame++) {
            waveform.evidence(reception, 0, frame, 8);
        }
        assertEquals(7 * 5, reception.asked().size());
        assertEquals(7 * 5, reception.asked().stream().distinct().count());
    }

    @Test
    void whatIsRememberedOfAnInterleaverIsWhatItWouldBeHeardAsAnew() {
        Reception one = ScriptedReception.of(1, 100_000_000, (at, band) -> 2 + Math.sin(at * 3e-9));
        Reception other = ScriptedReception.of(1, 100_000_000, (at, band) -> 2 + Math.cos(at * 5e-9));
        Waveform remembering = interleaved();
        // Backwards and forwards; each time but one thing differs from what was asked before.
        for (int step = -7; step < 8; step++) {
            int frame = Math.abs(step);
            assertHeardAnew(remembering, one, 0, frame);
            assertHeardAnew(remembering, other, 0, frame);
            assertHeardAnew(remembering, other, 900_000_000, frame);
        }
    }

    private static void assertHeardAnew(Waveform waveform, Reception reception, long startNanos, int frame) {
        double anew = interleaved().evidence(reception, startNanos, frame, 8);
        assertEquals(anew, waveform.evidence(reception, startNanos, frame, 8));
    }

    private static Waveform interleaved() {
        return Waveforms.of(
                burst(0.2, coded(Modulation.QPSK, 0.5, 2400, 1.0 / 3, 0.6)), NARROW, Combining.INCREMENTAL_REDUNDANCY);
    }

    @Test
    void interleaversCountByHowMuchOfTheFrameTheyHold() {
        // Frame 1: 0.08 s in the first interleaver, 0.44 s in the second. A blackout of either costs that share.
        Waveform waveform = Waveforms.of(
                burst(0, coded(Modulation.QPSK, 0.5, 2400, 1.0 / 3, 0.6)), NARROW, Combining.INCREMENTAL_REDUNDANCY);
        double whole = waveform.evidence(new SteadyReception(6), 0, 1, 2);
        double second = waveform.evidence(fromOnward(600_000_000, 6), 0, 1, 2);
        assertEquals(44.0 / 52, second / whole, 1e-9);
    }

    @Test
    void aFadedHalfCostsHalfTheInformation() {
        Waveform waveform = Waveforms.of(
                burst(0, coded(Modulation.QPSK, 0.5, 2400, 0, 0)), NARROW, Combining.INCREMENTAL_REDUNDANCY);
        double whole = waveform.evidence(new SteadyReception(6), 0, 0, 1);
        double half = waveform.evidence(fromOnward(832_000_000_000L / 4800, 6), 0, 0, 1);
        assertEquals(0.5, half / whole, 0.01);
    }

    @Test
    void interferenceInOneSubBandHurtsThatOneAlone() {
        Waveform waveform = Waveforms.of(
                burst(0, coded(Modulation.QPSK, 0.5, 2400, 0, 0)), NARROW, Combining.INCREMENTAL_REDUNDANCY);
        double clear = waveform.evidence(new SteadyReception(6), 0, 0, 1);
        double jammed = waveform.evidence(
                ScriptedReception.of(8, Long.MAX_VALUE, (at, band) -> band == 3 ? 0 : Decibels.toRatio(6)), 0, 0, 1);
        assertEquals(7.0 / 8, jammed / clear, 1e-9);
    }

    /** Mean mutual information of BPSK at two SINRs, mapped back (MIESM), computed independently. */
    @ParameterizedTest(name = "half at {0} dB, half at {1} dB: effectively {2} dB")
    @CsvSource({"0, 10, 2.01550", "-5, 5, -0.74968", "3, 3, 3.0"})
    void effectiveSinrIsThatOfTheMeanInformation(double firstDb, double secondDb, double effectiveDb) {
        // 3000 symbols a second make Es/N0 equal to the SNR in 3 kHz.
        Waveform waveform = Waveforms.of(burst(0, coded(Modulation.BPSK, 0.5, 3000, 0, 0)), NARROW, Combining.NONE);
        Reception reception =
                ScriptedReception.of(2, Long.MAX_VALUE, (at, band) -> Decibels.toRatio(band == 0 ? firstDb : secondDb));
        assertEquals(effectiveDb, Decibels.ofRatio(waveform.evidence(reception, 0, 0, 1)), 5e-4);
    }

    @Test
    void chaseCombiningAddsSinrs() {
        Waveform waveform = Waveforms.of(burst(0, coded(Modulation.BPSK, 0.5, 3000, 0, 0)), NARROW, Combining.CHASE);
        double once = waveform.evidence(new SteadyReception(0), 0, 0, 1);
        assertEquals(3.0103, Decibels.ofRatio(waveform.combined(once, once)), 1e-4);
        double uneven = waveform.combined(
                waveform.combined(waveform.evidence(new SteadyReception(-3), 0, 0, 1), once),
                waveform.evidence(new SteadyReception(2), 0, 0, 1));
        assertEquals(4.8941, Decibels.ofRatio(uneven), 1e-4);
    }

    @Test
    void withoutCombiningOnlyTheNewestCopyCounts() {
        Waveform waveform = Waveforms.of(burst(0, coded(Modulation.BPSK, 0.5, 3000, 0, 0)), NARROW, Combining.NONE);
        assertEquals(2, waveform.combined(5, 2));
    }

    @Test
    void incrementalRedundancyGainsMoreOverChaseTheHigherTheCodeRate() {
        // Direction known from Cheng, IEEE Trans. Commun. 54(6), 2006, and Frenger et al., VTC 2001.
        double before = 0;
        for (double rate : new double[] {0.25, 0.5, 0.75, 0.9}) {
            double gainDb = needOfTwoCopiesDb(rate, Combining.CHASE)
                    - needOfTwoCopiesDb(rate, Combining.INCREMENTAL_REDUNDANCY);
            assertTrue(gainDb > before, "gain at rate " + rate + ": " + gainDb + " dB after " + before);
            before = gainDb;
        }
    }

    @Test
    void firstCopiesFareAlikeUnderEitherCombining() {
        for (double snrDb = -2; snrDb <= 4; snrDb += 0.5) {
            assertEquals(success(Combining.CHASE, snrDb), success(Combining.INCREMENTAL_REDUNDANCY, snrDb), 1e-6);
        }
    }

    @Test
    void symbolEnergyFollowsSymbolRateCrestFactorAndGap() {
        // 75 Bd in 3 kHz: 16.0206 dB more energy a symbol; 4 dB of crest and 2 dB of gap take 6 of them away.
        FrameShape slow = heardBy(new Receiver(1, 0, 2, NO_CEILING_DB), Coding.oneByOne(Modulation.BPSK, 75, 0.5));
        Waveform waveform = Waveforms.of(burst(0, slow), new Emission(500, 4), Combining.CHASE);
        assertEquals(10.0206 - 15, Decibels.ofRatio(waveform.evidence(new SteadyReception(-15), 0, 0, 1)), 1e-3);
    }

    @Test
    void noSignalIsStrongEnoughToPassTheCeiling() {
        FrameShape limited = heardBy(new Receiver(1, 0, 0, 20), Coding.oneByOne(Modulation.QAM64, 3000, 0.75));
        Waveform waveform = Waveforms.of(burst(0, limited), NARROW, Combining.CHASE);
        assertEquals(20, Decibels.ofRatio(waveform.evidence(new SteadyReception(80), 0, 0, 1)), 1e-3);
        assertEquals(20 - 3.0103, Decibels.ofRatio(waveform.evidence(new SteadyReception(20), 0, 0, 1)), 1e-3);
    }

    @ParameterizedTest(name = "{0} Hz, looked at every {1} s: {2} dB")
    @CsvSource({"0, 0.1, 40", "1, 0.2, 22.62", "2, 0.1, 22.62", "1, 0.3, 16.09", "5, 0.1, 8.59", "1, 0, 40"})
    void theFasterThePathAndTheRarerTheLookTheWorseTheReceiverHears(double hz, double seconds, double ceilingDb) {
        // 1.5 pi^4 (spread x time)^4 / 40 of the mean power for slow paths, and 1e-4 of the signal's: 3.65e-4 + 1e-4 at
        // 0.1, 33.3 dB, beyond what shows in 64-QAM. At 0.2, 0.3 and 0.5 the closed form, by quadrature: see below.
        FrameShape frame = heardBy(new Receiver(1, seconds, 0, 40), Coding.oneByOne(Modulation.QAM64, 3000, 0.75));
        Waveform waveform = Waveforms.of(burst(0, frame), NARROW, Combining.CHASE);
        Reception moving = ScriptedReception.spread(1e8, 1_000_000, hz, 0);
        double expected = Math.min(ceilingDb, SATURATED_QAM64_DB);
        assertEquals(
                expected, Math.min(SATURATED_QAM64_DB, Decibels.ofRatio(waveform.evidence(moving, 0, 0, 1))), 0.15);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.05, 0.3, 1, 2, 5})
    void straightLinesMissWhatTheirCorrelationsSay(double u) {
        // Mean over the step of 1 + a^2 + b^2 + 2 a b r(1) - 2 a r(x) - 2 b r(1 - x), a = 1 - x, b = x, by quadrature.
        DoubleUnaryOperator r = x -> Math.exp(-u * u * x * x / 2);
        double missed = new GaussIntegratorFactory().legendre(60, 0, 1).integrate(x -> {
            double a = 1 - x;
            return 1
                    + a * a
                    + x * x
                    + 2 * a * x * r.applyAsDouble(1)
                    - 2 * a * r.applyAsDouble(x)
                    - 2 * x * r.applyAsDouble(a);
        });
        assertEquals(missed, Distortion.missedByLines(u), 0.01 * missed);
    }

    @Test
    void anEstimateOutOfDateErrsByWhatThePathWasNotByWhatIsLeftOfIt() {
        // Two sub-bands of which one is 20 dB down, as strong a signal as you like: the strong one is heard at the
        // ceiling of motion, the weak one 20 dB below it. Relative to the faded power both would be heard alike.
        double hz = 1;
        double seconds = 0.2;
        Receiver receiver = new Receiver(1, seconds, 0, NO_CEILING_DB);
        FrameShape frame = heardBy(receiver, Coding.oneByOne(Modulation.QPSK, 3000, 0.5));
        Hearing hearing = Hearing.of(frame, NARROW);
        double motion = hearing.distortion().motion(ScriptedReception.spread(1, 1, hz, 0));
        Hearing.OnPath onPath = hearing.on(0, motion);
        double strong = onPath.esN0(1e8, onPath.noise(1e8, 1e8, 1));
        double faded = onPath.esN0(1e6, onPath.noise(1e6, 1e8, 1));
        assertEquals(1 / motion, strong, 1e-3 / motion);
        assertEquals(20, Decibels.ofRatio(strong / faded), 0.01);
    }

    @ParameterizedTest(name = "{0} of the power comes too late: {1} dB")
    @CsvSource({"0, 28", "0.15, 7.53", "0.5, 0", "0.1, 9.54", "0.01, 19.96"})
    void whatComesTooLateIsLostAndHeardAsNoise(double share, double sinrDb) {
        FrameShape frame =
                heardBy(new Receiver(2e-3, 0, 0, NO_CEILING_DB), Coding.oneByOne(Modulation.QAM64, 3000, 0.75));
        Waveform waveform = Waveforms.of(burst(0, frame), NARROW, Combining.CHASE);
        double heard =
                Decibels.ofRatio(waveform.evidence(ScriptedReception.spread(1e8, Long.MAX_VALUE, 0, share), 0, 0, 1));
        assertEquals(sinrDb, Math.min(SATURATED_QAM64_DB, heard), 0.02);
    }

    @Test
    void detectionGetsWorseWithDopplerSpread() {
        // A correlator over 304 ms keeps 0.86 of the power at 1 Hz and 0.24, 0.085 of it at 10 and 30 Hz: 6 and 11 dB.
        Waveform waveform = Waveforms.of(burst(0.304, coded(Modulation.BPSK, 0.5, 2400, 0, 0)), NARROW, Combining.NONE);
        double before = 1;
        for (double hz : new double[] {0, 1, 3, 10}) {
            double found = waveform.detectionProbability(
                    ScriptedReception.spread(Decibels.toRatio(-5 + 2), Long.MAX_VALUE, hz, 0), 0);
            assertTrue(found < before, "at " + hz + " Hz " + found + " after " + before);
            before = found;
        }
        assertTrue(before < 0.001, "two decibels over the threshold less six: " + before);
        assertEquals(10.7, -Decibels.ofRatio(Coherence.power(Math.PI * 30 * 0.304)), 0.1);
        assertEquals(6.2, -Decibels.ofRatio(Coherence.power(Math.PI * 10 * 0.304)), 0.1);
    }

    @Test
    void aPreambleHearsEveryImpulseThatStrikesIt() {
        // 20 dB over the floor for 10 ms of 114: the mean noise is 1 + 10 / 114 x 99 = 9.68, wherever one looks.
        Waveform waveform = Waveforms.of(burst(0.114, coded(Modulation.BPSK, 0.5, 2400, 0, 0)), NARROW, Combining.NONE);
        double costDb = Decibels.ofRatio(1 + 10.0 / 114 * 99);
        Reception louder = ScriptedReception.of(1, Long.MAX_VALUE, (at, band) -> Decibels.toRatio(-5 + costDb))
                .struckUntil(10_000_000, 99);
        assertEquals(0.5, waveform.detectionProbability(louder, 0), 1e-6);
    }

    /** Mean bit error rates over Rayleigh fading (Proakis), through the whole path: one bit cannot be sent, a byte can. */
    @ParameterizedTest(name = "{0} at a mean of {1} dB")
    @CsvSource({
        "BPSK, 10, 2.326871e-2", "BPSK, 20, 2.481405e-3", "BPSK, 30, 2.498127e-4",
        "DBPSK, 10, 4.545455e-2", "DBPSK, 20, 4.950495e-3", "DBPSK, 30, 4.995005e-4",
        "FSK2, 10, 8.333333e-2", "FSK2, 20, 9.803922e-3", "FSK2, 30, 9.980040e-4"
    })
    void rayleighFading(Modulation modulation, double meanDb, double rate) {
        FrameShape oneByte = uncoded(modulation, 3000, 1);
        Waveform waveform = Waveforms.of(burst(0, oneByte), NARROW, Combining.NONE);
        double mean = Decibels.toRatio(meanDb);
        // The exponential law of power, on a grid fine where the errors are: power = mean x^2 / 40.
        double errors = POWER_GRID.integrate(x -> {
            double share = x * x / 40;
            Reception steady = new SteadyReception(Decibels.ofRatio(mean * share));
            double success = waveform.decodingProbability(waveform.evidence(steady, 0, 0, 1));
            return (1 - Math.pow(success, 1.0 / 8)) * Math.exp(-share) * x / 20;
        });
        assertEquals(rate, errors, 2e-4 * rate);
    }

    @Test
    void anUncodedFrameSurvivesIfEveryBitDoes() {
        // NC-FSK at Eb/N0 10 dB: 3.3690e-3 a bit, 160 bits.
        FrameShape frame = uncoded(Modulation.FSK2, 300, 20);
        Waveform waveform = Waveforms.of(burst(0, frame), NARROW, Combining.NONE);
        double success = waveform.decodingProbability(waveform.evidence(new SteadyReception(0), 0, 0, 1));
        assertEquals(Math.pow(1 - 3.3690e-3, 160), success, 1e-4);
    }

    @Test
    void anUncodedFrameHalfFadedIsTheProductOfItsHalves() {
        FrameShape frame = uncoded(Modulation.FSK2, 300, 20);
        Waveform waveform = Waveforms.of(burst(0, frame), NARROW, Combining.NONE);
        Reception halves = ScriptedReception.of(2, Long.MAX_VALUE, (at, band) -> band == 0 ? 1 : Decibels.toRatio(-2));
        double success = waveform.decodingProbability(waveform.evidence(halves, 0, 0, 1));
        // NC-FSK at Eb/N0 10 dB: 3.3690e-3; at 8 dB: 2.1324e-2.
        assertEquals(Math.pow(1 - 3.3690e-3, 80) * Math.pow(1 - 2.1324e-2, 80), success, 1e-3);
    }

    @Test
    void copiesOfAnUncodedFrameAddTheirSinrs() {
        FrameShape frame = uncoded(Modulation.FSK2, 3000, 20);
        Waveform waveform = Waveforms.of(burst(0, frame), NARROW, Combining.CHASE);
        double once = waveform.evidence(new SteadyReception(5), 0, 0, 1);
        assertEquals(5 + 3.0103, Decibels.ofRatio(waveform.combined(once, once)), 1e-4);
    }

    @Test
    void aFourOfSevenCharacterPassesUnhurtOrWithAnUnnoticedPairOfErrors() {
        // At a bit error rate of 1e-2 a block of 21 elements is hurt with probability 1 - 0.99^21 = 0.19027; of the 21
        // pairs of errors in a character 4 x 3 = 12 leave the ratio as it was.
        double ber = 0.01;
        Coding tones = Coding.oneByOne(Modulation.FSK2, 100, 1);
        ModelledFrame block =
                new ModelledFrame(tones, new Receiver(1, 0, 0, 900), 3, 21, FrameCheck.FOUR_OF_SEVEN, 0.21, 0);
        Waveform waveform = Waveforms.of(burst(0, block), NARROW, Combining.NONE);
        double ebN0 = -2 * Math.log(2 * ber);
        double accepted = waveform.decodingProbability(
                waveform.evidence(new SteadyReception(Decibels.ofRatio(ebN0 * 100 / 3000)), 0, 0, 1));
        double character = Math.pow(0.99, 7) + 12 * 1e-4 * Math.pow(0.99, 5);
        assertEquals(Math.pow(character, 3), accepted, 1e-5);
        double unnoticed = waveform.unnoticedErrorProbability(
                waveform.evidence(new SteadyReception(Decibels.ofRatio(ebN0 * 100 / 3000)), 0, 0, 1));
        assertEquals(Math.pow(character, 3) - Math.pow(0.99, 21), unnoticed, 1e-6);
        assertEquals(210_000_000, waveform.burstNanos(1));
    }

    /**
     * Four signs of the two kinds at which the two control signals differ must turn, and three stay: p^4 (1 - p)^3. From memory
     * of ITU-R M.625, B as 1: BYBYYBB, YBYBYBB; and the third, BYYBBYB.
     */
    @Test
    void aControlSignalIsTakenForTheOtherIfFourElementsAreWrong() {
        int first = 0b1010011;
        int second = 0b0101011;
        int third = 0b1001101;
        for (int signal : new int[] {first, second, third}) {
            assertEquals(4, Integer.bitCount(signal));
        }
        assertEquals(4, Integer.bitCount(first ^ second));
        assertEquals(4, Integer.bitCount(first ^ third));
        assertEquals(4, Integer.bitCount(second ^ third));
        double ber = 0.2;
        Coding tones = Coding.oneByOne(Modulation.FSK2, 100, 1);
        Waveform waveform = Waveforms.of(
                burst(
                        0,
                        new ModelledFrame(tones, new Receiver(1, 0, 0, 900), 0, 7, FrameCheck.CONTROL_SIGNAL, 0.07, 0)),
                NARROW,
                Combining.NONE);
        double ebN0 = -2 * Math.log(2 * ber);
        double evidence = waveform.evidence(new SteadyReception(Decibels.ofRatio(ebN0 * 100 / 3000)), 0, 0, 1);
        double mistaken = Math.pow(0.2, 4) * Math.pow(0.8, 3);
        assertEquals(mistaken, waveform.unnoticedErrorProbability(evidence), 1e-5);
        assertEquals(Math.pow(0.8, 7) + mistaken, waveform.decodingProbability(evidence), 1e-4);
    }

    @Test
    void ofSevenElementsExactlyTwelveOfTwentyOnePairsOfErrorsPass() {
        double ber = 1e-4;
        assertEquals(12 * ber * ber, ConstantRatioCode.undetectedError(ber), 1e-3 * 12 * ber * ber);
    }

    /** Of 2^n sums that a wrong frame may have one is right: so many more frames pass, and are wrong. */
    @ParameterizedTest
    @CsvSource({"CRC_16, 65536", "CRC_24, 16777216", "CRC_32, 4294967296", "WHOLE_FRAME, Infinity"})
    void aCheckSumPassesOneWrongFrameInAsManyAsItHasValues(FrameCheck check, double values) {
        Coding tones = Coding.oneByOne(Modulation.FSK2, 300, 1);
        Waveform perfect = Waveforms.of(
                burst(0, new ModelledFrame(tones, new Receiver(1, 0, 0, 900), 20, 160, FrameCheck.WHOLE_FRAME, 1, 0)),
                NARROW,
                Combining.NONE);
        Waveform summed = Waveforms.of(
                burst(0, new ModelledFrame(tones, new Receiver(1, 0, 0, 900), 20, 160, check, 1, 0)),
                NARROW,
                Combining.NONE);
        double evidence = summed.evidence(new SteadyReception(0), 0, 0, 1);
        double right = perfect.decodingProbability(evidence);
        assertTrue(right > 0.1 && right < 0.9, "right " + right);
        assertEquals((1 - right) / values, summed.unnoticedErrorProbability(evidence), 1e-18);
        assertEquals(right + (1 - right) / values, summed.decodingProbability(evidence), 1e-15);
    }

    @Test
    void aMeasuredFrameIsLostAsMeasured() {
        MeasuredFrame frame = new MeasuredFrame(
                50, 1.5, 0, List.of(new MeasuredFrame.Measurement(2, 0.8), new MeasuredFrame.Measurement(4, 0.1)));
        Waveform waveform = Waveforms.of(new BurstShape(0, -5, frame), new Emission(500, 3), Combining.NONE);
        assertEquals(1_500_000_000, waveform.burstNanos(1));
        assertEquals(0.2, measuredSuccess(waveform, 2), 1e-4);
        assertEquals(0.9, measuredSuccess(waveform, 4), 1e-4);
        // Odds of loss run from 4 to 1/9: at the middle their geometric mean, 2/3.
        assertEquals(1 / (1 + 2.0 / 3), measuredSuccess(waveform, 3), 1e-4);
        assertTrue(measuredSuccess(waveform, -20) < 1e-9 && measuredSuccess(waveform, 20) > 1 - 1e-9);
    }

    private static double measuredSuccess(Waveform waveform, double snrDb) {
        return waveform.decodingProbability(waveform.evidence(new SteadyReception(snrDb + 3), 0, 0, 1));
    }

    @Test
    void measurementsThatRiseAreRefused() {
        List<MeasuredFrame.Measurement> rising =
                List.of(new MeasuredFrame.Measurement(2, 0.1), new MeasuredFrame.Measurement(4, 0.8));
        assertThrows(IllegalArgumentException.class, () -> new MeasuredFrame(50, 1.5, 0, rising));
        assertThrows(IllegalArgumentException.class, () -> new MeasuredFrame(50, 1.5, 0, rising.subList(0, 1)));
    }

    @Test
    void detectionIsEvenAtItsThresholdAndCertainAbove() {
        Waveform waveform =
                Waveforms.of(burst(0.1, coded(Modulation.BPSK, 0.5, 2400, 0, 0)), new Emission(500, 3), Combining.NONE);
        assertEquals(0.5, waveform.detectionProbability(new SteadyReception(-5 + 3), 0), 1e-9);
        // Three standard deviations of 1 dB: 0.99865.
        assertEquals(0.99865, waveform.detectionProbability(new SteadyReception(-2 + 3), 0), 1e-5);
        assertTrue(waveform.detectionProbability(new SteadyReception(-10), 0) < 1e-9);
        assertEquals(0, waveform.detectionProbability(ScriptedReception.of(1, 1, (at, band) -> 0), 0));
    }

    @Test
    void theMeterShowsTheMeanOverTheBurstWithoutTheCrest() {
        Waveform waveform =
                Waveforms.of(burst(0.1, coded(Modulation.BPSK, 0.5, 2400, 0, 0)), new Emission(500, 3), Combining.NONE);
        assertEquals(4, waveform.meanSnrDb(new SteadyReception(7), 0, 3), 1e-9);
        Reception uneven = ScriptedReception.of(2, Long.MAX_VALUE, (at, band) -> band == 0 ? 0 : 20);
        assertEquals(10 - 3, waveform.meanSnrDb(uneven, 0, 3), 1e-9);
    }

    @Test
    void meterAndDetectionWeighMeanPowersSoThatPartialInterferenceCounts() {
        // 20 dB over the floor's density on three of five sub-bands during a quarter of the time: the mean power of
        // noise and interference is 1 + 3/5 * 1/4 * (100 - 1) = 15.85, 12.0003 dB. (The mean of the ratios lies 0.7 dB
        // down.)
        Waveform waveform =
                Waveforms.of(burst(1, coded(Modulation.BPSK, 0.5, 2400, 0, 0)), new Emission(1500, 3), Combining.NONE);
        double costDb = 12.0003;
        assertEquals(4 - costDb, waveform.meanSnrDb(jammed(7, waveform.burstNanos(3) / 4), 0, 3), 1e-3);
        assertEquals(0.5, waveform.detectionProbability(jammed(-5 + 3 + costDb, 250_000_000), 0), 1e-3);
        // Three standard deviations of 1 dB: 0.99865.
        assertEquals(0.99865, waveform.detectionProbability(jammed(-2 + 3 + costDb, 250_000_000), 0), 1e-5);
    }

    @ParameterizedTest
    @EnumSource(Modulation.class)
    void moreSignalNeverHurts(Modulation modulation) {
        for (Combining combining : Combining.values()) {
            for (double rate : new double[] {0.5, 1}) {
                assertRises(Waveforms.of(burst(0, coded(modulation, rate, 1200, 0, 0)), NARROW, combining));
            }
        }
    }

    @Test
    void aCodedFrameNeedsMoreThanTheCapacityLimitAndHardlyADecibelMore() {
        // Es/N0 0.187 dB for QPSK at rate 1/2, 2400 Bd in 3 kHz; three quarters of a dB for the finite length of 832
        // symbols; 3 dB of crest.
        Waveform waveform =
                Waveforms.of(burst(0, coded(Modulation.QPSK, 0.5, 2400, 0, 0)), new Emission(500, 3), Combining.NONE);
        double limitDb = 0.187 - 0.969;
        assertTrue(measuredSuccess(waveform, limitDb) < 0.9);
        assertTrue(measuredSuccess(waveform, limitDb + 0.75) > 0.9);
    }

    @Test
    void wideEmissionsAreHeardInSubBands() {
        assertEquals(1, new Emission(170, 0).passband().subBands());
        assertEquals(2, new Emission(500, 0).passband().subBands());
        assertEquals(8, new Emission(2400, 0).passband().subBands());
        assertEquals(8, new Emission(24000, 0).passband().subBands());
    }

    @Test
    void framesThatAreNotThereAreRefused() {
        Waveform waveform = Waveforms.of(burst(0, coded(Modulation.QPSK, 0.5, 2400, 0, 0)), NARROW, Combining.NONE);
        assertThrows(IllegalArgumentException.class, () -> waveform.burstNanos(0));
        assertThrows(IllegalArgumentException.class, () -> waveform.evidence(new SteadyReception(0), 0, 2, 2));
    }

    private static void assertRises(Waveform waveform) {
        double before = 0;
        for (double snrDb = -30; snrDb <= 40; snrDb += 0.5) {
            double now = waveform.decodingProbability(waveform.evidence(new SteadyReception(snrDb), 0, 0, 1));
            assertTrue(now >= before - 1e-9, "falls at " + snrDb + " dB: " + before + ", " + now);
            before = now;
        }
        assertTrue(before > 0.999, "ends at " + before);
    }

    private static void assertHeardWithin(Waveform waveform, int frame, long fromNanos, long toNanos) {
        ScriptedReception reception = ScriptedReception.spread(1, 10_000_000, 0, 0);
        waveform.evidence(reception, 0, frame, frame + 1);
        List<Long> asked = reception.asked();
        assertTrue(asked.size() >= 10, "asked " + asked.size() + " times");
        assertTrue(asked.stream().allMatch(at -> at > fromNanos && at < toNanos), asked.toString());
        long first = asked.stream().mapToLong(Long::longValue).min().orElseThrow();
        long last = asked.stream().mapToLong(Long::longValue).max().orElseThrow();
        assertTrue(first - fromNanos < 30_000_000 && toNanos - last < 30_000_000, "from " + first + " to " + last);
    }

    private static double needOfTwoCopiesDb(double codeRate, Combining combining) {
        Waveform waveform = Waveforms.of(burst(0, coded(Modulation.QPSK, codeRate, 3000, 0, 0)), NARROW, combining);
        double db = -20;
        while (true) {
            double once = waveform.evidence(new SteadyReception(db), 0, 0, 1);
            if (waveform.decodingProbability(waveform.combined(once, once)) > 0.9) {
                return db;
            }
            db += 0.01;
        }
    }

    private static double success(Combining combining, double snrDb) {
        Waveform waveform = Waveforms.of(burst(0, coded(Modulation.QPSK, 0.5, 2400, 0, 0)), NARROW, combining);
        return waveform.decodingProbability(waveform.evidence(new SteadyReception(snrDb), 0, 0, 1));
    }

    private static Reception fromOnward(long nanos, double snrDb) {
        return ScriptedReception.of(1, 1_000_000, (at, band) -> at < nanos ? 0 : Decibels.toRatio(snrDb));
    }

    private static Reception jammed(double snrDb, long untilNanos) {
        return ScriptedReception.of(
                5,
                10_000_000,
                (at, band) -> Decibels.toRatio(snrDb),
                (at, band) -> at < untilNanos && band < 3 ? 100 : 1);
    }

    private static BurstShape burst(double preambleSeconds, FrameShape frame) {
        return new BurstShape(preambleSeconds, -5, frame);
    }

    private static FrameShape coded(
            Modulation modulation, double codeRate, double symbolRateBd, double knownShare, double interleaverSeconds) {
        return ModelledFrame.ofBytes(
                Coding.oneByOne(modulation, symbolRateBd, codeRate),
                new Receiver(1, 0, 0, NO_CEILING_DB),
                knownShare,
                100,
                4,
                interleaverSeconds);
    }

    private static FrameShape uncoded(Modulation modulation, double symbolRateBd, int bytes) {
        return ModelledFrame.ofBytes(
                Coding.oneByOne(modulation, symbolRateBd, 1), new Receiver(1, 0, 0, NO_CEILING_DB), 0, bytes, 0, 0);
    }

    private static FrameShape heardBy(Receiver receiver, Coding coding) {
        return ModelledFrame.ofBytes(coding, receiver, 0, 100, 4, 0);
    }
}
