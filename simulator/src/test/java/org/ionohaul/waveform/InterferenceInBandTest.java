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
import org.ionohaul.channel.SinrMeter;
import org.ionohaul.channel.Sky;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SkyWatch;
import org.ionohaul.channel.SlowVariation;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;

final class InterferenceInBandTest {
    private static final double SNR_DB = 15;
    private static final Emission WIDE = new Emission(2400, 0);

    @Test
    void behindANotchANarrowVisitorCostsTheSubBandsItCoversAndNoOthers() {
        // One visitor on average, always sending, far over the signal, on a fifth of the band: each sub-band it covers
        // carries nothing, the others all they can.
        Waveform waveform = Waveforms.of(burst(Excision.NOTCH), WIDE, Combining.INCREMENTAL_REDUNDANCY);
        double clear = waveform.evidence(new SteadyReception(SNR_DB), 0, 0, 1);
        int partly = 0;
        for (int trial = 0; trial < 40; trial++) {
            Reception reception =
                    new Sky(conditions(60, 0.2), new TrialStreams(3, trial)).reception(End.FAR, WIDE.passband());
            int jammed = jammed(reception);
            partly += jammed > 0 && jammed < reception.subBands() ? 1 : 0;
            double share = waveform.evidence(reception, 0, 0, 1) / clear;
            assertEquals(1 - (double) jammed / reception.subBands(), share, 0.05, "trial " + trial);
        }
        // 1 - exp(-1) of the trials have a visitor at all.
        assertTrue(partly > 10, partly + " trials partly jammed");
    }

    @Test
    void oneReceiverHearsPreambleAndData() {
        // A visitor 60 dB over the floor in 3 kHz on a tenth of the band, seldom in the passband of 2400 Hz not at all:
        // plain receivers lose both, those with a notch keep both, whatever the trial.
        Waveform plain = Waveforms.of(burst(Excision.NONE), WIDE, Combining.NONE);
        Waveform notched = Waveforms.of(burst(Excision.NOTCH), WIDE, Combining.NONE);
        int visited = 0;
        for (int trial = 0; trial < 40; trial++) {
            Reception reception =
                    new Sky(conditions(60, 0.1), new TrialStreams(5, trial)).reception(End.FAR, WIDE.passband());
            if (jammed(reception) == 0 || jammed(reception) > 2) {
                continue;
            }
            visited++;
            assertEquals(0, plain.detectionProbability(reception, 0), 1e-6);
            assertEquals(0, plain.decodingProbability(plain.evidence(reception, 0, 0, 1)), 1e-6);
            assertEquals(1, notched.detectionProbability(reception, 0), 1e-6);
            assertEquals(1, notched.decodingProbability(notched.evidence(reception, 0, 0, 1)), 1e-6);
        }
        assertTrue(visited > 10, visited + " trials visited");
    }

    @Test
    void theMeterCountsAllThePowerOfAVisitorWhereverItLies() {
        // Visitors always on, each 10 dB over the floor in 3 kHz and within the passband of the same 3 kHz: whatever
        // share of
        // it they cover, n of them make the noise 1 + 10 n times as strong.
        Emission whole = new Emission(3000, 0);
        Waveform waveform = Waveforms.of(burst(Excision.NONE), whole, Combining.NONE);
        int visited = 0;
        for (double share : new double[] {0.05, 0.6, 1}) {
            for (int trial = 0; trial < 20; trial++) {
                Sky sky = new Sky(conditions(10, share), new TrialStreams(4, trial));
                int visitors = new SkyWatch(sky, End.FAR, 1_000_000_000).overs().size();
                double expectedDb = SNR_DB - 10 * Math.log10(1 + 10 * visitors);
                Reception reception = sky.reception(End.FAR, whole.passband());
                assertEquals(expectedDb, waveform.meanSnrDb(reception, 0, 1), 1e-9, visitors + " on " + share);
                visited += visitors > 0 ? 1 : 0;
            }
        }
        assertTrue(visited > 20, visited + " trials with visitors");
    }

    private static int jammed(Reception reception) {
        SinrMeter meter = new SinrMeter();
        meter.listen(reception, 1_000_000);
        int jammed = 0;
        for (int band = 0; band < meter.subBands(); band++) {
            jammed += meter.sinr(band) < 0.1 ? 1 : 0;
        }
        return jammed;
    }

    private static SkyConditions conditions(double levelDb, double bandShare) {
        Interference visitor = new Interference(3.6e-3, 1e6, 1e6, 1e-3, levelDb, 0, bandShare);
        EndConditions end = new EndConditions(SNR_DB, Schedule.NONE, ImpulsiveNoise.NONE, List.of(visitor));
        return new SkyConditions(FadingCondition.FLAT.paths(), SlowVariation.NONE, Schedule.NONE, end, end);
    }

    private static BurstShape burst(Excision excision) {
        return new BurstShape(
                0.1,
                -5,
                new FrontEnd(excision, ImpulseDefence.NONE, 10),
                ModelledFrame.ofBytes(
                        Coding.oneByOne(Modulation.QPSK, 2400, 0.5), new Receiver(1, 0, 0, 900), 0, 100, 4, 0));
    }
}
