package org.ionohaul.report;

import org.ionohaul.channel.End;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.Sky;
import org.ionohaul.waveform.Emission;

/** Reads the true SINR off a trial's sky, as a mode's signals meet it. Belongs to one thread, as the sky does. */
public final class SkyGauge {
    private static final int SAMPLES = 24;

    private final Reception atNear;
    private final Reception atFar;
    private final double crestFactorDb;
    private final double[] sinr;

    /** Holds the gauge to a sky, in the passband and at the mean power of a mode's signals. */
    public SkyGauge(Sky sky, Emission emission) {
        atNear = sky.reception(End.NEAR, emission.passband());
        atFar = sky.reception(End.FAR, emission.passband());
        crestFactorDb = emission.crestFactorDb();
        sinr = new double[atNear.subBands()];
    }

    /** Returns the mean SINR in 3 kHz at an end over a stretch of time, in dB. */
    double meanDb(End receiver, long fromNanos, long untilNanos) {
        Reception reception = receiver == End.NEAR ? atNear : atFar;
        double sum = 0;
        for (int sample = 0; sample < SAMPLES; sample++) {
            reception.sinr(fromNanos + (untilNanos - fromNanos) * (2 * sample + 1) / (2 * SAMPLES), sinr);
            for (double each : sinr) {
                sum += each;
            }
        }
        return 10 * Math.log10(sum / (SAMPLES * sinr.length)) - crestFactorDb;
    }
}
