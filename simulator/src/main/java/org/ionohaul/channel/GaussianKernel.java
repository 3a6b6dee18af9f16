package org.ionohaul.channel;

/**
 * Turns white complex noise on a grid into a process with a Gaussian autocorrelation at any instant between.
 *
 * <p>A Gaussian Doppler power spectrum of standard deviation sigma needs a filter whose amplitude response is the
 * <em>square root</em> of the spectrum: again a Gaussian, and so is its impulse response exp(-t^2 / (2 s^2)), with s =
 * 1 / (2 sqrt(2) pi sigma). The sum over the grid of noise times impulse response is then an exactly Gaussian process
 * with autocorrelation exp(-t^2 / (4 s^2)) = exp(-2 pi^2 sigma^2 t^2), the one of ITU-R F.1487.
 *
 * <p>What is not exact, all of it far below what a receiver notices: the grid step is s, so sums over the grid ripple by 2
 * exp(-pi^2) = 1.0e-4 with the place in it; the weights are normalised at every place, which rids the variance of it
 * and leaves up to 4 exp(-pi^2 - 1/4) = 1.6e-4 in the autocorrelation; responses are cut beyond 4 to 5 s, where a point
 * that enters weighs 4e-6; weights between the {@value #PLACES} tabulated places are interpolated linearly, with an error
 * below 1 / (8 * {@value #PLACES}^2) = 8e-6.
 */
final class GaussianKernel {
    /** How many grid points a value is made of. */
    static final int POINTS = 10;

    private static final int PLACES = 128;
    private static final double[] WEIGHTS = weights();

    private GaussianKernel() {}

    /**
     * Returns the width s of the impulse response, which is also the grid step, in seconds.
     *
     * @param dopplerSpreadHz the Doppler spread in Hz, twice the spectrum's standard deviation; positive
     */
    static double stepSeconds(double dopplerSpreadHz) {
        double sigmaHz = dopplerSpreadHz / 2;
        return 1 / (2 * Math.sqrt(2) * Math.PI * sigmaHz);
    }

    /**
     * Writes the weighted sum of the grid points around an instant.
     *
     * @param noise real and imaginary parts in turn
     * @param first where in {@code noise} the first of the {@link #POINTS} grid points stands: the one that is four
     *     steps before the last grid point at or before the instant
     * @param place the instant's place between two grid points, from 0 to below 1
     * @param gains receives the real part at {@code 2 * path} and the imaginary part after it
     */
    static void apply(double[] noise, int first, double place, double[] gains, int path) {
        double tablePlace = place * PLACES;
        int row = (int) tablePlace;
        double share = tablePlace - row;
        int at = row * POINTS;
        double real = 0;
        double imaginary = 0;
        for (int i = 0; i < POINTS; i++) {
            double weight = WEIGHTS[at + i] + share * (WEIGHTS[at + POINTS + i] - WEIGHTS[at + i]);
            real += weight * noise[first + 2 * i];
            imaginary += weight * noise[first + 2 * i + 1];
        }
        gains[2 * path] = real;
        gains[2 * path + 1] = imaginary;
    }

    private static double[] weights() {
        double[] weights = new double[(PLACES + 1) * POINTS];
        for (int row = 0; row <= PLACES; row++) {
            double power = 0;
            for (int i = 0; i < POINTS; i++) {
                double steps = (double) row / PLACES + POINTS / 2 - 1 - i;
                double weight = Math.exp(-steps * steps / 2);
                weights[row * POINTS + i] = weight;
                power += weight * weight;
            }
            for (int i = 0; i < POINTS; i++) {
                weights[row * POINTS + i] /= Math.sqrt(power);
            }
        }
        return weights;
    }
}
