package org.ionohaul.channel;

/**
 * How one end hears the other through one passband: the waveforms' only view of the sky.
 *
 * <p>A pure function of time: it may be asked for any instant in any order and always gives the same answer. An
 * instance caches and so belongs to one thread.
 */
public interface Reception {
    /** Width in Hz of the band in which noise and interference are measured: the trade's 3 kHz. */
    double NOISE_BANDWIDTH_HZ = 3000;

    /** Returns how many sub-bands this reception distinguishes, 1 or more. */
    int subBands();

    /**
     * Fills in what is heard at an instant in each sub-band, as powers over one common reference: the signal as if it
     * filled the passband evenly with the sender's full peak power (a waveform with a crest factor scales it down), noise
     * and interference as if their density at the sub-band filled 3 kHz. {@link SinrMeter} makes ratios of them.
     *
     * @param atNanos the instant, in nanoseconds since the trial began, zero or more
     * @param signal receives the signal power of each sub-band, zero or more; length {@link #subBands()}
     * @param disturbance receives the power of noise and interference together, positive; as long
     */
    void powers(long atNanos, double[] signal, double[] disturbance);

    /**
     * Returns how long the fading stays nearly unchanged, in nanoseconds, positive; sampling at this step loses little
     * of it. {@code Long.MAX_VALUE} on a path that does not fade.
     */
    long steadyNanos();

    /** Returns the widest Doppler spread of the paths (2 sigma), in Hz, zero or more. */
    double dopplerSpreadHz();

    /** Returns the longest delay between paths, in seconds, zero or more. */
    double delaySpreadSeconds();
}
