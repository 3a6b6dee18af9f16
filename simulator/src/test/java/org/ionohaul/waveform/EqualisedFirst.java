package org.ionohaul.waveform;

import java.util.Arrays;
import org.ionohaul.channel.DerivedReception;
import org.ionohaul.channel.Reception;

/**
 * A waveform that hears, in place of a fading band, what a linear equaliser makes of it, so that its receiver's gap comes after
 * the equaliser: it lies in the decoder. In the program it comes before: it is noise at the receiver's input.
 *
 * @param decoder what hears the equalised band; its gap is the receiver's, and it loses nothing by motion
 * @param distortion what the receiver loses by motion
 * @param energyPerSinr Es/N0 for each unit of SINR in 3 kHz
 */
record EqualisedFirst(Waveform decoder, Distortion distortion, double energyPerSinr) implements Waveform {
    @Override
    public int payloadBytes() {
        return decoder.payloadBytes();
    }

    @Override
    public long burstNanos(int frames) {
        return decoder.burstNanos(frames);
    }

    @Override
    public long preambleNanos() {
        return decoder.preambleNanos();
    }

    @Override
    public double detectionProbability(Reception reception, long startNanos) {
        return decoder.detectionProbability(reception, startNanos);
    }

    @Override
    public double evidence(Reception reception, long startNanos, int frame, int frames) {
        double motion = energyPerSinr * distortion.motion(reception);
        return decoder.evidence(new Equalised(reception, motion, energyPerSinr), startNanos, frame, frames);
    }

    @Override
    public double combined(double earlier, double fresh) {
        return decoder.combined(earlier, fresh);
    }

    @Override
    public double decodingProbability(double evidence) {
        return decoder.decodingProbability(evidence);
    }

    @Override
    public double meanSnrDb(Reception reception, long startNanos, int frames) {
        return decoder.meanSnrDb(reception, startNanos, frames);
    }

    private record Equalised(Reception original, double motion, double energyPerSinr) implements DerivedReception {
        @Override
        public void powers(long atNanos, double[] signal, double[] disturbance) {
            original.powers(atNanos, signal, disturbance);
            Equalisation equalisation = new Equalisation(Equaliser.LINEAR);
            for (int band = 0; band < signal.length; band++) {
                double noise = disturbance[band] + motion * original.meanSignal(atNanos);
                equalisation.add(energyPerSinr * signal[band] / noise);
            }
            Arrays.fill(signal, equalisation.esN0() / energyPerSinr);
            Arrays.fill(disturbance, 1);
        }

        /** The noise of motion is in what is disturbed already. */
        @Override
        public double meanSignal(long atNanos) {
            return 0;
        }
    }
}
