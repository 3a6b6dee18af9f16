package org.ionohaul.channel;

/**
 * Complex gain of one propagation path over time, of mean power 1: the path's own power and delay are applied by the
 * reception.
 */
interface PathGain {
    /**
     * Writes the gain at an instant.
     *
     * @param atNanos the instant
     * @param gains receives the real part at {@code 2 * path} and the imaginary part after it
     * @param path the path's place in {@code gains}
     */
    void at(long atNanos, double[] gains, int path);
}
