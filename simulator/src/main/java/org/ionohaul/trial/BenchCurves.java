package org.ionohaul.trial;

import java.util.function.IntPredicate;
import org.ionohaul.channel.Reception;
import org.ionohaul.link.Signals;
import org.ionohaul.rate.LossCurves;
import org.ionohaul.waveform.SteadyReception;
import org.ionohaul.waveform.Waveform;

/** Measures the frame loss of a mode's data rates on steady paths, as its makers do on the bench: no sky is involved. */
public final class BenchCurves {
    private static final double LOWEST_DB = -40;
    private static final double STEP_DB = 0.25;
    private static final int POINTS = 401;

    private BenchCurves() {}

    /**
     * Measures the data rates of a mode on steady paths from -40 to +60 dB; each of them only where its loss changes, and beyond
     * that at one point on either side.
     */
    public static LossCurves of(Signals signals) {
        double[][] snrDb = new double[signals.dataRateCount()][];
        double[][] loss = new double[signals.dataRateCount()][];
        for (int row = 0; row < snrDb.length; row++) {
            Waveform waveform = signals.dataRate(row + 1);
            double most = loss(waveform, 0);
            double least = loss(waveform, POINTS - 1);
            int first = firstPoint(point -> loss(waveform, point) < most) - 1;
            // Two points of a rate that loses as much everywhere.
            int last = Math.max(first + 1, firstPoint(point -> loss(waveform, point) <= least));
            snrDb[row] = new double[last - first + 1];
            loss[row] = new double[last - first + 1];
            measure(waveform, first, snrDb[row], loss[row]);
        }
        return new LossCurves(snrDb, loss);
    }

    private static void measure(Waveform waveform, int first, double[] snrDb, double[] loss) {
        double least = 1;
        for (int i = 0; i < loss.length; i++) {
            least = Math.min(least, loss(waveform, first + i));
            snrDb[i] = waveform.meanSnrDb(steady(first + i), 0, 1);
            loss[i] = least;
        }
    }

    /** Returns the first point but one of which something is true that is so from some point on; the last one if it is of none before. */
    private static int firstPoint(IntPredicate isSo) {
        int before = 0;
        int from = POINTS - 1;
        while (from - before > 1) {
            int middle = (before + from) >>> 1;
            if (isSo.test(middle)) {
                from = middle;
            } else {
                before = middle;
            }
        }
        return from;
    }

    private static double loss(Waveform waveform, int point) {
        return 1 - waveform.decodingProbability(waveform.evidence(steady(point), 0, 0, 1));
    }

    private static Reception steady(int point) {
        return new SteadyReception(LOWEST_DB + point * STEP_DB);
    }
}
