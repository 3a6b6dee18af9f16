package org.ionohaul.rate;

import java.util.Locale;

/**
 * Holds the smoothed share of lost frames between two marks, as HF data links with frame-error statistics do (Trinder
 * and Brown, IEE colloquium 1999/017). After a step the smoothing begins anew midway between the marks: what was lost at
 * the old data rate says little about the new one.
 */
public final class ErrorRatePolicy implements RatePolicy {
    private final RatePolicyRules.ErrorRate rules;
    private final int dataRates;
    private int dataRate;
    private double smoothedLoss;
    private double decidedOn;

    /** Begins at the start data rate of a mode with so many. */
    public ErrorRatePolicy(RatePolicyRules.ErrorRate rules, int dataRates) {
        this.rules = rules;
        this.dataRates = dataRates;
        dataRate = rules.startDataRate();
        smoothedLoss = midway();
    }

    private double midway() {
        return (rules.riseBelow() + rules.fallAbove()) / 2;
    }

    @Override
    public int chooseDataRate(long nowNanos) {
        decidedOn = smoothedLoss;
        if (smoothedLoss > rules.fallAbove() && dataRate > 1) {
            moveTo(dataRate - 1);
        } else if (smoothedLoss < rules.riseBelow() && dataRate < dataRates) {
            moveTo(dataRate + 1);
        }
        return dataRate;
    }

    private void moveTo(int newDataRate) {
        dataRate = newDataRate;
        smoothedLoss = midway();
    }

    @Override
    public void onAcknowledged(long nowNanos, int atDataRate, int framesSent, int framesLost, double snrDb) {
        learn((double) framesLost / framesSent);
    }

    @Override
    public void onSilence(long nowNanos, int atDataRate, int framesSent) {
        learn(1);
    }

    private void learn(double loss) {
        smoothedLoss += rules.memory() * (loss - smoothedLoss);
    }

    @Override
    public String reason() {
        return String.format(
                Locale.ROOT,
                "smoothed loss %.0f %%, rises below %.0f %%, falls above %.0f %%",
                100 * decidedOn,
                100 * rules.riseBelow(),
                100 * rules.fallAbove());
    }
}
