package org.ionohaul.fieldlog;

/**
 * How a level or SNR was read. A signal of many paths fades like a complex Gaussian number, so that its power is
 * exponentially distributed (Rayleigh fading): what is read by a glance, or as the highest swing, differs from the mean power
 * by amounts that follow from that. How well a meter itself is set is another matter and added.
 */
public enum HowRead {
    /** Averaged over many fades by eye or by a program: the mean power. */
    AVERAGE(0, 0),
    /** One look: ten times the logarithm of an exponential variable has a mean of -2.51 dB and a deviation of 5.57 dB. */
    GLANCE(-2.51, 5.57),
    /**
     * The highest that the needle reached while somebody watched some ten fades: the largest of ten exponential variables, in
     * dB, has a mean of 4.3 dB and a deviation of 1.8 dB (by simulation, {@code HowReadTest}).
     */
    PEAK(4.3, 1.8);

    private final double biasDb;
    private final double deviationDb;

    HowRead(double biasDb, double deviationDb) {
        this.biasDb = biasDb;
        this.deviationDb = deviationDb;
    }

    /** Returns by how much such a reading lies above the mean power, on average, in dB. */
    public double biasDb() {
        return biasDb;
    }

    /** Returns the standard deviation that fading alone gives such a reading, in dB. */
    public double deviationDb() {
        return deviationDb;
    }
}
