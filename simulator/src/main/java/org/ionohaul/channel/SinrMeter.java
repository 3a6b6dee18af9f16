package org.ionohaul.channel;

/**
 * Reads the SINR off a reception: of each sub-band at an instant, and the mean over a stretch of time. Keeps its last
 * reading and so belongs to one thread.
 */
public final class SinrMeter {
    private double[] signal = new double[0];
    private double[] disturbance = new double[0];
    private final NoiseBursts bursts = new NoiseBursts();

    /** Listens at an instant, in nanoseconds since the trial began; {@link #sinr(int)} then tells what was heard. */
    public void listen(Reception reception, long atNanos) {
        reception.bursts(atNanos, atNanos + 1, bursts);
        hear(reception, atNanos);
    }

    private void hear(Reception reception, long atNanos) {
        if (signal.length != reception.subBands()) {
            signal = new double[reception.subBands()];
            disturbance = new double[signal.length];
        }
        reception.powers(atNanos, signal, disturbance);
        double added = bursts.meanPower();
        for (int band = 0; band < disturbance.length; band++) {
            disturbance[band] += added;
        }
    }

    /** Returns how many sub-bands were heard last, zero before the first time. */
    public int subBands() {
        return signal.length;
    }

    /** Returns the ratio of signal power to that of noise and interference in a sub-band when last heard, linear. */
    public double sinr(int subBand) {
        return signal[subBand] / disturbance[subBand];
    }

    /**
     * Returns the SINR of a stretch of time, linear: mean signal power over mean power of noise and interference, both
     * means over all sub-bands and over evenly spaced instants, impulses and crashes over all of the time. That is what a
     * meter shows that measures the two powers in turn. The mean of the ratios would be kinder, and hardly notice
     * interference on a part of the band or of the time.
     *
     * @param fromNanos when the stretch begins, in nanoseconds since the trial began
     * @param spanNanos how long it is, zero or more
     * @param samples how many instants are looked at, each in the middle of its share of the stretch; 1 or more
     */
    public double mean(Reception reception, long fromNanos, double spanNanos, int samples) {
        double signals = 0;
        double disturbances = 0;
        reception.bursts(fromNanos, fromNanos + Math.max(1, (long) spanNanos), bursts);
        for (int sample = 0; sample < samples; sample++) {
            hear(reception, fromNanos + (long) ((sample + 0.5) / samples * spanNanos));
            for (int band = 0; band < signal.length; band++) {
                signals += signal[band];
                disturbances += disturbance[band];
            }
        }
        return signals / disturbances;
    }
}
