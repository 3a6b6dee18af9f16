package org.ionohaul.waveform;

/**
 * What carriers hear of an interferer elsewhere in the band. A symbol looked at for a time T by a discrete Fourier transform
 * hears the density at a distance f with the weight T sinc^2(f T) (the transform of its rectangular window; Proakis, Digital
 * Communications), which falls no faster than 1 / (2 (pi f T)^2).
 */
final class Leakage {
    private static final int STEPS_A_LOBE = 16;

    private final double[] shares;

    /**
     * Prepares for equal sub-bands.
     *
     * @param subBands how many
     * @param widthHz width of one
     * @param symbolSeconds for how long a symbol is looked at
     */
    Leakage(int subBands, double widthHz, double symbolSeconds) {
        shares = new double[subBands];
        double lobes = widthHz * symbolSeconds;
        for (int distance = 0; distance < subBands; distance++) {
            shares[distance] = share(distance, lobes);
        }
    }

    /** Returns how many sub-bands there are. */
    int subBands() {
        return shares.length;
    }

    /** Returns the share of a sub-band's power that is heard at a distance of so many sub-bands. */
    private static double share(int distance, double lobes) {
        // Mean over both sub-bands: distances of v sub-bands between two points have the weight 1 - |v|.
        int steps = (int) Math.ceil(2 * STEPS_A_LOBE * Math.max(1, lobes));
        double sum = 0;
        for (int step = 0; step < steps; step++) {
            double v = 2 * (step + 0.5) / steps - 1;
            double x = Math.PI * lobes * (distance + v);
            double sinc = Math.abs(x) < 1e-9 ? 1 : Math.sin(x) / x;
            sum += (1 - Math.abs(v)) * sinc * sinc;
        }
        return 2 * lobes * sum / steps;
    }

    /**
     * Spreads what stands out of the band's lowest density.
     *
     * @param densities of each sub-band; replaced
     * @param spread working memory, as long
     */
    void spread(double[] densities, double[] spread) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = 0;
        for (double density : densities) {
            lowest = Math.min(lowest, density);
            highest = Math.max(highest, density);
        }
        if (highest <= lowest) {
            return;
        }
        for (int to = 0; to < shares.length; to++) {
            spread[to] = lowest;
            for (int band = 0; band < shares.length; band++) {
                spread[to] += shares[Math.abs(to - band)] * (densities[band] - lowest);
            }
        }
        System.arraycopy(spread, 0, densities, 0, shares.length);
    }
}
