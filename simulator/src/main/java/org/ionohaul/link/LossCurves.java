package org.ionohaul.link;

import java.util.Arrays;
import org.ionohaul.channel.Reception;
import org.ionohaul.waveform.SteadyReception;
import org.ionohaul.waveform.Waveform;

/**
 * How many frames each data rate loses on a steady path, against the SNR in 3 kHz that a meter shows: what a mode's
 * makers measure on the bench and build into its rate policy. On a fading path the truth differs, as it does for them.
 *
 * <p>Immutable: made once a mode, shared by all trials.
 */
public final class LossCurves {
    private static final double LOWEST_DB = -40;
    private static final double STEP_DB = 0.25;
    private static final int POINTS = 401;

    private final double[][] snrDb;
    private final double[][] loss;

    private LossCurves(double[][] snrDb, double[][] loss) {
        this.snrDb = snrDb;
        this.loss = loss;
    }

    /** Measures the data rates of a mode on steady paths from -40 to +60 dB. */
    public static LossCurves of(Signals signals) {
        double[][] snrDb = new double[signals.dataRateCount()][POINTS];
        double[][] loss = new double[signals.dataRateCount()][POINTS];
        for (int dataRate = 1; dataRate <= signals.dataRateCount(); dataRate++) {
            measure(signals.dataRate(dataRate), snrDb[dataRate - 1], loss[dataRate - 1]);
        }
        return new LossCurves(snrDb, loss);
    }

    private static void measure(Waveform waveform, double[] snrDb, double[] loss) {
        double least = 1;
        for (int point = 0; point < POINTS; point++) {
            Reception steady = new SteadyReception(LOWEST_DB + point * STEP_DB);
            least = Math.min(least, 1 - waveform.decodingProbability(waveform.evidence(steady, 0, 0, 1)));
            snrDb[point] = waveform.meanSnrDb(steady, 0, 1);
            loss[point] = least;
        }
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
        if (above == 0 || above == POINTS) {
            return losses[Math.min(above, POINTS - 1)];
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
        for (int point = 0; point < POINTS; point++) {
            if (losses[point] <= mostLoss) {
                return snrDb[dataRate - 1][point];
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
