package org.ionohaul.link;

import java.util.Locale;

/**
 * Holds the smoothed share of lost frames between two marks, as HF data links with frame-error statistics do (Trinder
 * and Brown, IEE colloquium 1999/017). After a step the smoothing begins anew midway between the marks: what was lost at
 * the old level says little about the new one.
 */
final class ErrorRatePolicy implements SpeedPolicy {
    private final LadderRules.ErrorRate rules;
    private final int levels;
    private int level;
    private double smoothedLoss;
    private double decidedOn;

    ErrorRatePolicy(LadderRules.ErrorRate rules, int levels) {
        this.rules = rules;
        this.levels = levels;
        level = rules.startLevel();
        smoothedLoss = midway();
    }

    private double midway() {
        return (rules.riseBelow() + rules.fallAbove()) / 2;
    }

    @Override
    public int chooseLevel(long nowNanos) {
        decidedOn = smoothedLoss;
        if (smoothedLoss > rules.fallAbove() && level > 1) {
            moveTo(level - 1);
        } else if (smoothedLoss < rules.riseBelow() && level < levels) {
            moveTo(level + 1);
        }
        return level;
    }

    private void moveTo(int newLevel) {
        level = newLevel;
        smoothedLoss = midway();
    }

    @Override
    public void onAcknowledged(long nowNanos, int atLevel, int framesSent, int framesLost, double snrDb) {
        learn((double) framesLost / framesSent);
    }

    @Override
    public void onSilence(long nowNanos, int atLevel, int framesSent) {
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
