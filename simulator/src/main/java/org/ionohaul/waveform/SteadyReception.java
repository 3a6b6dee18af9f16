package org.ionohaul.waveform;

import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.Reception;

/**
 * A path that does not change, over white Gaussian noise: the bench on which receivers are measured.
 *
 * @param snrDb signal-to-noise ratio in 3 kHz in dB of a constant-envelope signal
 */
public record SteadyReception(double snrDb) implements Reception {
    /** Checks the level. */
    public SteadyReception {
        if (!(Math.abs(snrDb) < 300)) {
            throw new IllegalArgumentException("snrDb must be finite: " + snrDb);
        }
    }

    @Override
    public int subBands() {
        return 1;
    }

    @Override
    public void powers(long atNanos, double[] signal, double[] disturbance) {
        signal[0] = Decibels.toRatio(snrDb);
        disturbance[0] = 1;
    }

    @Override
    public long steadyNanos() {
        return Long.MAX_VALUE;
    }

    @Override
    public double dopplerSpreadHz() {
        return 0;
    }

    @Override
    public double meanSignal(long atNanos) {
        return Decibels.toRatio(snrDb);
    }

    @Override
    public double shareBeyond(double reachSeconds, double symbolSeconds) {
        return 0;
    }
}
