package org.ionohaul.waveform;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.channel.NoiseBursts;
import org.ionohaul.channel.Reception;

/**
 * A reception whose powers the test dictates.
 *
 * @param signal power of each sub-band at an instant
 * @param disturbance noise and interference likewise, positive
 * @param mean power of the signal without its fading
 * @param shareBeyond share of the power that comes too late
 * @param burstUntilNanos until when a burst of noise lasts that begins at 0
 * @param burst what it adds
 * @param asked receives every instant that was asked for
 */
record ScriptedReception(
        int subBands,
        Bands signal,
        Bands disturbance,
        long steadyNanos,
        double dopplerSpreadHz,
        double mean,
        double shareBeyond,
        long burstUntilNanos,
        double burst,
        List<Long> asked)
        implements Reception {
    /** What is heard at an instant. */
    interface Bands {
        double power(long atNanos, int band);
    }

    /** Returns a path that changes as told, over steady noise of power 1, without Doppler spread or delay spread. */
    static ScriptedReception of(int subBands, long steadyNanos, Bands signal) {
        return of(subBands, steadyNanos, signal, (at, band) -> 1);
    }

    /** Returns a path and noise that change as told, without Doppler spread or delay spread. */
    static ScriptedReception of(int subBands, long steadyNanos, Bands signal, Bands disturbance) {
        return new ScriptedReception(subBands, signal, disturbance, steadyNanos, 0, 1, 0, 0, 0, new ArrayList<>());
    }

    /** Returns one sub-band of a path that never changes, with the spread and the share that is late as told. */
    static ScriptedReception spread(double sinr, long steadyNanos, double dopplerSpreadHz, double shareBeyond) {
        return new ScriptedReception(
                1,
                (at, band) -> sinr,
                (at, band) -> 1,
                steadyNanos,
                dopplerSpreadHz,
                sinr,
                shareBeyond,
                0,
                0,
                new ArrayList<>());
    }

    /** Returns the same with a burst of noise at the beginning. */
    ScriptedReception struckUntil(long nanos, double power) {
        return new ScriptedReception(
                subBands, signal, disturbance, steadyNanos, dopplerSpreadHz, mean, shareBeyond, nanos, power, asked);
    }

    @Override
    public void bursts(long fromNanos, long toNanos, NoiseBursts bursts) {
        bursts.clear();
        long overlap = Math.min(toNanos, burstUntilNanos) - fromNanos;
        if (overlap > 0) {
            bursts.add(burst, (double) overlap / (toNanos - fromNanos), burstUntilNanos / 1e9);
        }
    }

    @Override
    public double meanSignal(long atNanos) {
        return mean;
    }

    @Override
    public double shareBeyond(double reachSeconds, double symbolSeconds) {
        return shareBeyond;
    }

    @Override
    public void powers(long atNanos, double[] signals, double[] disturbances) {
        asked.add(atNanos);
        for (int band = 0; band < subBands; band++) {
            signals[band] = signal.power(atNanos, band);
            disturbances[band] = disturbance.power(atNanos, band);
        }
    }
}
