package org.ionohaul.channel;

/**
 * A gain whose whole Doppler spectrum is shifted: it turns at the shift's frequency.
 *
 * @param unshifted the gain before the shift
 * @param shiftHz the shift in Hz
 */
record ShiftedGain(PathGain unshifted, double shiftHz) implements PathGain {
    @Override
    public void at(long atNanos, double[] gains, int path) {
        unshifted.at(atNanos, gains, path);
        double turns = shiftHz * (atNanos * 1e-9);
        double phase = 2 * Math.PI * (turns - Math.floor(turns));
        double cosine = Math.cos(phase);
        double sine = Math.sin(phase);
        double real = gains[2 * path];
        double imaginary = gains[2 * path + 1];
        gains[2 * path] = real * cosine - imaginary * sine;
        gains[2 * path + 1] = real * sine + imaginary * cosine;
    }
}
