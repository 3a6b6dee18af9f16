package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.complex.Complex;
import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.DerivedReception;
import org.ionohaul.channel.Reception;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is lost between two stations whose frequencies differ, against phasors that are turned and added up here. */
final class MistuningTest {
    private static final Emission NARROW = new Emission(500, 0);
    private static final double PREAMBLE_SECONDS = 0.1;
    private static final double TRACKING_SECONDS = 0.01;
    private static final double TOLERANCE_HZ = 20;
    private static final int STEPS = 20_000;

    @ParameterizedTest
    @CsvSource({"0.5, 0.1", "3, 0.1", "10, 0.25", "7, 0.3"})
    void aCorrelatorLosesWhatATurningPhasorLoses(double hertz, double seconds) {
        Complex sum = Complex.ZERO;
        for (int i = 0; i < STEPS; i++) {
            sum = sum.add(phasor(2 * Math.PI * hertz * seconds * (i + 0.5) / STEPS));
        }
        double power = Math.pow(sum.abs() / STEPS, 2);
        assertEquals(power, Mistuning.coherentPower(hertz, seconds), 1e-6);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.099, 0.101, 0.5, 2, 6.5})
    void straightLinesMissWhatTheyMissOfATurningPhasor(double u) {
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            double x = (i + 0.5) / STEPS;
            Complex line = new Complex(1 - x).add(phasor(u).multiply(x));
            sum += Math.pow(phasor(u * x).subtract(line).abs(), 2);
        }
        assertEquals(sum / STEPS, Mistuning.missedByLines(u), 1e-7 + 1e-3 * sum / STEPS);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-20, -5, 0, 12, 20})
    void upToTheToleranceNothingIsLost(double hertz) {
        Waveform waveform = waveform();
        Reception tuned = new SteadyReception(3);
        Reception off = new Mistuned(3, hertz, 0);
        assertEquals(waveform.detectionProbability(tuned, 0), waveform.detectionProbability(off, 0));
        assertEquals(waveform.evidence(tuned, 0, 0, 1), waveform.evidence(off, 0, 0, 1));
    }

    /** Beyond it a preamble is as hard to find as a tuned one that is weaker by sinc^2 of the rest. */
    @ParameterizedTest
    @ValueSource(doubles = {22, -24, 26, -28})
    void beyondItAPreambleIsHarderToFindBySincSquare(double hertz) {
        Waveform waveform = waveform();
        double halfTurn = Math.PI * (Math.abs(hertz) - TOLERANCE_HZ) * PREAMBLE_SECONDS;
        double lossDb = -20 * Math.log10(Math.sin(halfTurn) / halfTurn);
        double found = waveform.detectionProbability(new Mistuned(lossDb, hertz, 0), 0);
        assertEquals(waveform.detectionProbability(new SteadyReception(0), 0), found, 1e-9);
        assertTrue(lossDb > 0.5);
    }

    /**
     * BPSK at 3000 Bd, where Es/N0 is the SNR in 3 kHz: a symbol keeps sinc^2 of its energy, the rest is heard as noise, and
     * so is 1.5 times what straight lines between known symbols miss.
     */
    @ParameterizedTest
    @CsvSource({"0, 40", "10, 40", "5, 25", "5, -60"})
    void beyondItSymbolsTurnWhileTheyLast(double snrDb, double hertz) {
        double excess = Math.abs(hertz) - TOLERANCE_HZ;
        double halfTurn = Math.PI * excess / 3000;
        double left = Math.pow(Math.sin(halfTurn) / halfTurn, 2);
        double u = 2 * Math.PI * excess * TRACKING_SECONDS;
        double missed = 1.5 * (5.0 / 3 + Math.cos(u) / 3 - 4 * (1 - Math.cos(u)) / (u * u));
        double energy = Math.pow(10, snrDb / 10);
        double expected = energy * left / (1 + energy * (1 - left + missed));
        double heard = waveform().evidence(new Mistuned(snrDb, hertz, 0), 0, 0, 1);
        assertEquals(Decibels.ofRatio(expected), Decibels.ofRatio(heard), 0.01);
    }

    /** 90 Hz a minute: in the tolerance at first, 70 Hz beyond it after a minute, more than half a turn between looks. */
    @Test
    void aDriftTakesAStationOutOfTheTolerance() {
        Waveform waveform = waveform();
        Reception drifting = new Mistuned(10, 0, 90);
        double atFirst = waveform.evidence(drifting, 0, 0, 1);
        double later = waveform.evidence(drifting, 60_000_000_000L, 0, 1);
        assertEquals(waveform.evidence(new SteadyReception(10), 0, 0, 1), atFirst);
        assertTrue(waveform.decodingProbability(atFirst) > 0.999);
        assertEquals(0, waveform.decodingProbability(later), 1e-9);
    }

    private static Complex phasor(double radians) {
        return new Complex(Math.cos(radians), Math.sin(radians));
    }

    private static Waveform waveform() {
        Receiver receiver = new Receiver(1, TRACKING_SECONDS, 0, 900, TOLERANCE_HZ, Equaliser.BY_PARTS);
        FrameShape frame = ModelledFrame.ofBytes(Coding.oneByOne(Modulation.BPSK, 3000, 0.5), receiver, 0, 100, 4, 0);
        return Waveforms.of(new BurstShape(PREAMBLE_SECONDS, 0, frame), NARROW, Combining.NONE);
    }

    /** A steady path between stations whose frequencies differ. */
    private record Mistuned(double snrDb, double hertz, double hertzPerMinute) implements DerivedReception {
        @Override
        public Reception original() {
            return new SteadyReception(snrDb);
        }

        @Override
        public double frequencyErrorHz(long atNanos) {
            return hertz + hertzPerMinute * atNanos / 60e9;
        }
    }
}
