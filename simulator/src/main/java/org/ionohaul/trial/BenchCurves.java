package org.ionohaul.trial;

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
}
