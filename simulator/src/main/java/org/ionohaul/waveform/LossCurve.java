package org.ionohaul.waveform;

import java.util.List;
import org.ionohaul.channel.Decibels;
import org.ionohaul.waveform.MeasuredFrame.Measurement;

/**
 * Frame loss by SNR through measured points: the logarithm of the odds runs straight in dB from point to point and goes
 * on with the last slope beyond them, the shape of a logistic curve.
 */
final class LossCurve {
    private final List<Measurement> points;

    LossCurve(List<Measurement> points) {
        this.points = points;
    }

    /** Returns the probability that a frame survives at a linear SNR in 3 kHz. */
    double success(double snr) {
        double snrDb = Decibels.ofRatio(snr);
        int right = 1;
        while (right < points.size() - 1 && points.get(right).snrDb() < snrDb) {
            right++;
        }
        Measurement high = points.get(right);
        Measurement low = points.get(right - 1);
        double slope = (logOdds(high) - logOdds(low)) / (high.snrDb() - low.snrDb());
        return 1 / (1 + Math.exp(logOdds(low) + slope * (snrDb - low.snrDb())));
    }

    private static double logOdds(Measurement point) {
        return Math.log(point.loss() / (1 - point.loss()));
    }
}
