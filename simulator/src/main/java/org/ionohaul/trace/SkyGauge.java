package org.ionohaul.trace;

import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.SinrMeter;
import org.ionohaul.channel.Sky;
import org.ionohaul.waveform.Emission;

/** Reads the true SINR off a trial's sky, as a mode's signals meet it. Belongs to one thread, as the sky does. */
public final class SkyGauge {
    private static final int SAMPLES = 24;

    private final Reception atNear;
    private final Reception atFar;
    private final double crestFactorDb;
    private final SinrMeter meter = new SinrMeter();

    /** Holds the gauge to a sky, in the passband and at the mean power of a mode's signals. */
    public SkyGauge(Sky sky, Emission emission) {
        atNear = sky.reception(End.NEAR, emission.passband());
        atFar = sky.reception(End.FAR, emission.passband());
        crestFactorDb = emission.crestFactorDb();
    }

    /**
     * Returns the mean SINR in 3 kHz at an end over a stretch of time, in dB: mean signal power over mean power of noise
     * and interference.
     */
    double meanDb(End receiver, long fromNanos, long untilNanos) {
        Reception reception = receiver == End.NEAR ? atNear : atFar;
        double mean = meter.mean(reception, fromNanos, (double) (untilNanos - fromNanos), SAMPLES);
        return Decibels.ofRatio(mean) - crestFactorDb;
    }
}
