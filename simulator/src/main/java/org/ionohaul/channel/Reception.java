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
     * and interference as if their density at the sub-band filled 3 kHz. Impulses and crashes come on top, see {@link
     * #bursts}. {@link SinrMeter} makes ratios of all of it.
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

    /**
     * Returns the signal's power as {@link #powers} has it, averaged over fast fading: what an estimate that no longer fits
     * the path errs by is in proportion to it, not to the faded power of the moment.
     */
    double meanSignal(long atNanos);

    /**
     * Tells what bursts of noise add to the disturbance, evenly over the band, in a stretch of time: none, unless there are
     * impulses, crashes of static or a receiver that is overrun.
     *
     * @param fromNanos when the stretch begins, in nanoseconds since the trial began, zero or more
     * @param toNanos when it ends, not included; later than its beginning
     * @param bursts is filled anew
     */
    default void bursts(long fromNanos, long toNanos, NoiseBursts bursts) {
        bursts.clear();
    }

    /**
     * Returns the width (2 sigma) in Hz of the Doppler spectrum of all paths together, each weighed by its power: their
     * spreads and how far they are shifted against each other. Zero or more.
     */
    double dopplerSpreadHz();

    /**
     * Returns by how much the sender's frequency lies above the receiver's at an instant, in Hz: what a receiver has to find
     * and correct by itself.
     */
    default double frequencyErrorHz(long atNanos) {
        return 0;
    }

    /**
     * Returns the share of the mean power that comes too late for a receiver (or too early, if it prefers the later path),
     * from 0 to below 1: of each path beyond the reach as much as it covers of the next symbol.
     *
     * @param reachSeconds how far behind the first path it accepts that others come, zero or more
     * @param symbolSeconds length of a symbol, positive
     */
    double shareBeyond(double reachSeconds, double symbolSeconds);
}
