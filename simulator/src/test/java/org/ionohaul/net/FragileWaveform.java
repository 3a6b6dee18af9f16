package org.ionohaul.net;

import org.ionohaul.channel.Reception;
import org.ionohaul.waveform.Waveform;

/** A packet of the textbooks: lost if anything else is heard while it arrives, else received. */
record FragileWaveform(long lengthNanos) implements Waveform {
    @Override
    public int payloadBytes() {
        return 1;
    }

    @Override
    public long burstNanos(int frames) {
        return lengthNanos;
    }

    @Override
    public long preambleNanos() {
        return 0;
    }

    @Override
    public double detectionProbability(Reception reception, long startNanos) {
        return reception instanceof DisturbedReception ? 0 : 1;
    }

    @Override
    public double evidence(Reception reception, long startNanos, int frame, int frames) {
        return 1;
    }

    @Override
    public double combined(double earlier, double fresh) {
        return fresh;
    }

    @Override
    public double decodingProbability(double evidence) {
        return evidence;
    }

    @Override
    public double meanSnrDb(Reception reception, long startNanos, int frames) {
        return 0;
    }
}
