package org.ionohaul.channel;

import java.util.List;

/**
 * The slice of spectrum that a waveform fills, cut into equal sub-bands; each is represented by its centre.
 *
 * @param widthHz occupied bandwidth in Hz, positive; centred on the middle of the receiver's 3 kHz
 * @param subBands how many sub-bands, 1 or more
 * @param isRefined whether receptions cut it more finely where the paths' delays ask for it
 */
public record Passband(double widthHz, int subBands, boolean isRefined) {
    /**
     * How far the sub-bands' mean may be from the band's, for a rating like log(1 + |H|^2): as a share of the scatter that
     * two equal paths cause.
     */
    private static final double TOLERATED_ALIASING = 0.15;

    private static final int HARMONICS = 4;

    /** Checks width and count. */
    public Passband {
        if (!(widthHz > 0 && widthHz < 1e6)) {
            throw new IllegalArgumentException("widthHz must be positive and below 1 MHz: " + widthHz);
        }
        if (subBands < 1) {
            throw new IllegalArgumentException("subBands must be at least 1: " + subBands);
        }
    }

    /** Makes a passband that is cut into exactly so many sub-bands whatever the paths. */
    public Passband(double widthHz, int subBands) {
        this(widthHz, subBands, false);
    }

    /**
     * Returns the centre of a sub-band as an offset from the middle of the passband, in Hz.
     *
     * @param subBand from 0 to {@code subBands - 1}
     */
    public double centreHz(int subBand) {
        return widthHz * ((subBand + 0.5) / subBands - 0.5);
    }

    /**
     * Returns the band as it has to be cut for an echo not to alias: where delay times distance of the centres is near a
     * whole number, or a simple fraction, they fade alike though the band between them does not. The first count that will
     * do, from its own on; the best one up to twice as many and two where none will.
     */
    Passband cutFor(List<PropagationPath> paths) {
        int best = subBands;
        for (int count = subBands;
                isRefined && aliasing(best, paths) > TOLERATED_ALIASING && count <= 2 * subBands + 2;
                count++) {
            best = aliasing(count, paths) < aliasing(best, paths) ? count : best;
        }
        return new Passband(widthHz, best);
    }

    private double aliasing(int count, List<PropagationPath> paths) {
        double[] shares = PropagationPath.shares(paths);
        double worst = 0;
        for (int i = 0; i < shares.length; i++) {
            for (int j = 0; j < i; j++) {
                double delaySeconds =
                        Math.abs(paths.get(i).delaySeconds() - paths.get(j).delaySeconds());
                worst = Math.max(worst, aliasing(count, 2 * Math.sqrt(shares[i] * shares[j]), widthHz * delaySeconds));
            }
        }
        return worst;
    }

    /**
     * What the mean over the centres misses of each harmonic of the fading over frequency. Two paths of relative amplitude
     * a give the h-th harmonic of log |H|^2 a weight of a^h / h at most.
     *
     * @param turns by how many turns the echo's phase differs between the band's edges
     */
    private static double aliasing(int count, double amplitude, double turns) {
        double sum = 0;
        for (int harmonic = 1; harmonic <= HARMONICS; harmonic++) {
            double phase = Math.PI * harmonic * turns;
            double centres = Math.sin(phase / count) == 0 ? 1 : Math.sin(phase) / (count * Math.sin(phase / count));
            double band = phase == 0 ? 1 : Math.sin(phase) / phase;
            double missed = Math.pow(amplitude, harmonic) / harmonic * (Math.abs(centres) - Math.abs(band));
            sum += missed * missed;
        }
        return Math.sqrt(sum);
    }
}
