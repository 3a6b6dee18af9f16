package org.ionohaul.session;

import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.SinrMeter;
import org.ionohaul.waveform.Waveform;

/**
 * A waveform whose frames are decoded with a given chance, whatever the sky; evidence is that chance. On the makers' own
 * test bench it loses nothing.
 */
record PlainWaveform(int payloadBytes, long preambleNanos, long frameNanos, Chance chance) implements Waveform {
    /** How likely a frame gets through. */
    @FunctionalInterface
    interface Chance {
        double of(End listener, long startNanos);
    }

    static PlainWaveform certain(int payloadBytes, long preambleNanos, long frameNanos) {
        return losing(payloadBytes, preambleNanos, frameNanos, 0);
    }

    static PlainWaveform losing(int payloadBytes, long preambleNanos, long frameNanos, double loss) {
        return new PlainWaveform(payloadBytes, preambleNanos, frameNanos, (listener, startNanos) -> 1 - loss);
    }

    PlainWaveform with(Chance newChance) {
        return new PlainWaveform(payloadBytes, preambleNanos, frameNanos, newChance);
    }

    @Override
    public long burstNanos(int frames) {
        return preambleNanos + frames * frameNanos;
    }

    @Override
    public double detectionProbability(Reception reception, long startNanos) {
        return 1;
    }

    @Override
    public double evidence(Reception reception, long startNanos, int frame, int frames) {
        return reception instanceof Bench.Listener listener ? chance.of(listener.end(), startNanos) : 1;
    }

    @Override
    public double combined(double earlier, double fresh) {
        return Math.min(1, earlier + fresh);
    }

    @Override
    public double decodingProbability(double evidence) {
        return evidence;
    }

    @Override
    public double meanSnrDb(Reception reception, long startNanos, int frames) {
        return Decibels.ofRatio(new SinrMeter().mean(reception, startNanos, 0, 1));
    }
}
