package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.channel.PropagationPath;
import org.ionohaul.waveform.BurstShape;
import org.ionohaul.waveform.Coding;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.Emission;
import org.ionohaul.waveform.ModelledFrame;
import org.ionohaul.waveform.Modulation;
import org.ionohaul.waveform.Receiver;
import org.ionohaul.waveform.Waveform;
import org.ionohaul.waveform.Waveforms;
import org.junit.jupiter.api.Test;

final class LossOnPathTest {
    private static final Emission EMISSION = new Emission(100, 0);
    private static final long SEED = 5;

    @Test
    void onASteadyPathTheNeedIsThatOfTheClosedForm() {
        // One byte of noncoherent tones at Eb/N0 10.9444 dB: bit error rate 1e-3 (Proakis), so 1 - 0.999^8 are lost.
        FadingSkies steady = new FadingSkies(FadingCondition.FLAT.paths(), EMISSION.passband(), 1, SEED);
        assertEquals(10.9444, new LossOnPath(oneByte(-150), steady).needDb(1 - Math.pow(0.999, 8)), 0.02);
    }

    @Test
    void onARayleighPathTheLossIsThatOfTheClosedForm() {
        // One byte in 2.7 ms sees one fade level: E[1 - (1 - exp(-g/2)/2)^8] over exponential g of mean 100 (20 dB) =
        // -sum over k = 1 to 8 of C(8,k) (-1/2)^k / (1 + 50 k), computed below with the terms written out.
        double expected = 0;
        double[] binomials = {8, 28, 56, 70, 56, 28, 8, 1};
        for (int k = 1; k <= 8; k++) {
            expected -= binomials[k - 1] * Math.pow(-0.5, k) / (1 + 50.0 * k);
        }
        List<PropagationPath> rayleigh = List.of(new PropagationPath(0, 0, 0, 1));
        int bursts = 4_000;
        FadingSkies skies = new FadingSkies(rayleigh, EMISSION.passband(), bursts, SEED);
        // The loss of a burst lies between 0 and 1 with mean p: its standard deviation is at most sqrt(p).
        double standardError = Math.sqrt(expected / bursts);
        assertEquals(expected, new LossOnPath(oneByte(-150), skies).loss(20), 4 * standardError);
    }

    @Test
    void aBurstThatIsNotFoundIsLost() {
        FadingSkies steady = new FadingSkies(FadingCondition.FLAT.paths(), EMISSION.passband(), 1, SEED);
        assertEquals(40, new LossOnPath(oneByte(40), steady).needDb(0.5), 0.02);
    }

    @Test
    void aNeedBeyondTheCeilingIsInfinite() {
        FadingSkies steady = new FadingSkies(FadingCondition.FLAT.paths(), EMISSION.passband(), 1, SEED);
        ModelledFrame limited = ModelledFrame.ofBytes(
                Coding.oneByOne(Modulation.QAM64, 3000, 0.75), new Receiver(1, 0, 0, 10), 0, 100, 0, 0);
        Waveform waveform = Waveforms.of(new BurstShape(0, -150, limited), EMISSION, Combining.NONE);
        assertEquals(Double.POSITIVE_INFINITY, new LossOnPath(waveform, steady).needDb(0.5));
    }

    @Test
    void lossFallsWithSnrAndNeedsRiseAsLessMayBeLost() {
        FadingSkies poor = new FadingSkies(FadingCondition.POOR.paths(), EMISSION.passband(), 200, SEED);
        LossOnPath bench = new LossOnPath(oneByte(-150), poor);
        for (double snrDb = -10; snrDb < 40; snrDb += 0.7) {
            assertTrue(bench.loss(snrDb) >= bench.loss(snrDb + 0.7));
        }
        assertTrue(bench.needDb(0.01) > bench.needDb(0.1) && bench.needDb(0.1) > bench.needDb(0.5));
        assertThrows(IllegalArgumentException.class, () -> bench.needDb(0));
        assertThrows(
                IllegalArgumentException.class,
                () -> new FadingSkies(FadingCondition.POOR.paths(), EMISSION.passband(), 0, SEED));
    }

    private static Waveform oneByte(double detectionDb) {
        ModelledFrame frame = ModelledFrame.ofBytes(
                Coding.oneByOne(Modulation.FSK2, 3000, 1), new Receiver(1, 0, 0, 900), 0, 1, 0, 0);
        return Waveforms.of(new BurstShape(0, detectionDb, frame), EMISSION, Combining.NONE);
    }
}
