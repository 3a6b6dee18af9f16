package org.ionohaul.channel;

import java.util.List;

/**
 * What the gains of several paths make of a signal in each sub-band: the power transfer |H|^2 of their delayed sum.
 *
 * <p>With H the sum of a_i g_i exp(-j 2 pi f d_i) over paths of amplitude a_i, gain g_i and delay d_i, |H|^2 is the sum
 * of a_i^2 |g_i|^2, the same at all frequencies, and for each pair of paths of 2 a_i a_j Re(g_i g_j* exp(-j 2 pi f (d_i -
 * d_j))). The pair's product is formed once and only turned for each sub-band. A single path makes a pair of amplitude
 * zero with itself.
 */
final class FrequencyResponse {
    private final int subBands;
    private final double[] powers;
    private final int[] firsts;
    private final int[] seconds;
    private final double[] cosines;
    private final double[] sines;

    FrequencyResponse(List<PropagationPath> paths, Passband passband) {
        subBands = passband.subBands();
        powers = PropagationPath.shares(paths);
        int pairs = powers.length * (powers.length - 1) / 2;
        firsts = new int[Math.max(1, pairs)];
        seconds = new int[firsts.length];
        cosines = new double[firsts.length * subBands];
        sines = new double[cosines.length];
        int pair = 0;
        for (int i = 0; i < powers.length; i++) {
            for (int j = i + 1; j < powers.length; j++, pair++) {
                firsts[pair] = 2 * i;
                seconds[pair] = 2 * j;
                double delaySeconds = paths.get(i).delaySeconds() - paths.get(j).delaySeconds();
                turn(pair, 2 * Math.sqrt(powers[i] * powers[j]), delaySeconds, passband);
            }
        }
    }

    private void turn(int pair, double amplitude, double delaySeconds, Passband passband) {
        for (int band = 0; band < subBands; band++) {
            double phase = -2 * Math.PI * passband.centreHz(band) * delaySeconds;
            cosines[pair * subBands + band] = amplitude * Math.cos(phase);
            sines[pair * subBands + band] = amplitude * Math.sin(phase);
        }
    }

    /**
     * Writes the power transfer of each sub-band.
     *
     * @param gains real and imaginary part of each path's gain in turn
     * @param transfer receives one ratio a sub-band, zero or more up to rounding
     */
    void write(double[] gains, double[] transfer) {
        double power = 0;
        for (int i = 0; i < powers.length; i++) {
            power += powers[i] * (gains[2 * i] * gains[2 * i] + gains[2 * i + 1] * gains[2 * i + 1]);
        }
        for (int pair = 0; pair < firsts.length; pair++) {
            int i = firsts[pair];
            int j = seconds[pair];
            double real = gains[i] * gains[j] + gains[i + 1] * gains[j + 1];
            double imaginary = gains[i + 1] * gains[j] - gains[i] * gains[j + 1];
            boolean isFirst = pair == 0;
            int at = pair * subBands;
            for (int band = 0; band < subBands; band++) {
                double before = isFirst ? power : transfer[band];
                transfer[band] = before + real * cosines[at + band] - imaginary * sines[at + band];
            }
        }
    }
}
