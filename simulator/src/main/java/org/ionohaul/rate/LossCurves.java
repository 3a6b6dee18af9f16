package org.ionohaul.rate;

import java.util.Arrays;

/**
 * How many frames each data rate loses on a steady path, against the SNR in 3 kHz that a meter shows: what a mode's
 * makers measure on the bench and build into its rate policy. On a fading path the truth differs, as it does for them.
 *
 * <p>Immutable: made once a mode, shared by all trials.
 */
public final class LossCurves {
    private final double[][] snrDb;
    private final double[][] loss;

    /**
     * Takes measured curves.
     *
     * @param snrDb SNRs in 3 kHz, in dB, that a meter showed, rising, of each data rate
     * @param loss share of frames that were lost there, from 0 to 1, falling
     */
    public LossCurves(double[][] snrDb, double[][] loss) {
        if (snrDb.length != loss.length || snrDb.length == 0) {
            throw new IllegalArgumentException(snrDb.length + " data rates measured, " + loss.length + " told");
        }
        this.snrDb = copy(snrDb);
        this.loss = copy(loss);
    }

    private static double[][] copy(double[][] rows) {
        return Arrays.stream(rows).map(double[]::clone).toArray(double[][]::new);
    }

    /** Returns the number of data rates. */
    public int dataRateCount() {
        return loss.length;
    }

    /**
     * Returns the share of frames lost, from 0 to 1.
     *
     * @param dataRate data rate, counted from 1
     * @param atSnrDb SNR in 3 kHz, in dB
     */
    public double loss(int dataRate, double atSnrDb) {
        double[] snrs = snrDb[dataRate - 1];
        double[] losses = loss[dataRate - 1];
        int found = Arrays.binarySearch(snrs, atSnrDb);
        int above = found >= 0 ? found : -found - 1;
        if (above == 0 || above == snrs.length) {
            return losses[Math.min(above, snrs.length - 1)];
        }
        double share = (atSnrDb - snrs[above - 1]) / (snrs[above] - snrs[above - 1]);
        return losses[above - 1] + share * (losses[above] - losses[above - 1]);
    }

    /**
     * Returns the least SNR in 3 kHz, in dB, at which a data rate loses no more than a share of its frames; infinite if it
     * never does.
     *
     * @param dataRate data rate, counted from 1
     * @param mostLoss that share, from 0 to 1
     */
    public double needDb(int dataRate, double mostLoss) {
        double[] losses = loss[dataRate - 1];
        for (int point = 0; point < losses.length; point++) {
            if (losses[point] <= mostLoss) {
                return snrDb[dataRate - 1][point];
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
