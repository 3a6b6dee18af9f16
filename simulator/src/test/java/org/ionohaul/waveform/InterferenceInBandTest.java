package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ionohaul.channel.End;
import org.ionohaul.channel.EndConditions;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.channel.ImpulsiveNoise;
import org.ionohaul.channel.Interference;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.Sky;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SlowVariation;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;

final class InterferenceInBandTest {
    private static final double SNR_DB = 15;
    private static final Emission WIDE = new Emission(2400, 0);

    @Test
    void aNarrowVisitorCostsTheSubBandsItCoversAndNoOthers() {
        // One visitor on average, always sending, far over the signal, on a fifth of the band: each sub-band it covers
        // carries nothing, the others all they can.
        Waveform waveform = Waveforms.of(burst(), WIDE, Combining.INCREMENTAL_REDUNDANCY);
        double clear = waveform.evidence(new SteadyReception(SNR_DB), 0, 0, 1);
        int partly = 0;
        for (int trial = 0; trial < 40; trial++) {
            Reception reception = new Sky(conditions(), new TrialStreams(3, trial)).reception(End.FAR, WIDE.passband());
            int jammed = jammed(reception);
            partly += jammed > 0 && jammed < reception.subBands() ? 1 : 0;
            double share = waveform.evidence(reception, 0, 0, 1) / clear;
            assertEquals(1 - (double) jammed / reception.subBands(), share, 0.05, "trial " + trial);
        }
        // 1 - exp(-1) of the trials have a visitor at all.
        assertTrue(partly > 10, partly + " trials partly jammed");
    }

    private static int jammed(Reception reception) {
        double[] sinr = new double[reception.subBands()];
        reception.sinr(1_000_000, sinr);
        int jammed = 0;
        for (double band : sinr) {
            jammed += band < 0.1 ? 1 : 0;
        }
        return jammed;
    }

    private static SkyConditions conditions() {
        Interference visitor = new Interference(3.6e-3, 1e6, 1e6, 1e-3, 60, 0, 0.2);
        EndConditions end = new EndConditions(SNR_DB, Schedule.NONE, ImpulsiveNoise.NONE, List.of(visitor));
        return new SkyConditions(FadingCondition.FLAT.paths(), SlowVariation.NONE, Schedule.NONE, end, end);
    }

    private static BurstShape burst() {
        return new BurstShape(
                0,
                -100,
                ModelledFrame.ofBytes(
                        Coding.oneByOne(Modulation.QPSK, 2400, 0.5), new Receiver(1, 0, 0, 900), 0, 100, 4, 0));
    }
}
