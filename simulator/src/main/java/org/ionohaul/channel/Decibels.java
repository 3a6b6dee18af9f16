package org.ionohaul.channel;

/** Power ratios and their decibels. */
public final class Decibels {
    private static final double NEPERS = Math.log(10) / 10;

    private Decibels() {}

    /** Returns the linear power ratio of a number of decibels. */
    public static double toRatio(double decibels) {
        return Math.exp(decibels * NEPERS);
    }

    /**
     * Returns a linear power ratio in decibels.
     *
     * @param ratio zero (which gives minus infinity) or more
     */
    public static double ofRatio(double ratio) {
        return 10 * Math.log10(ratio);
    }
}
