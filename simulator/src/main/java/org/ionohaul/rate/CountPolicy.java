package org.ionohaul.rate;

import java.util.Locale;

/**
 * Counts good and bad overs in a row: so many good ones make it rise, so many bad ones fall. On request with the doubling
 * patience of adaptive automatic rate fallback (M. Lacage, M. Manshaei, T. Turletti, "IEEE 802.11 rate adaptation: a
 * practical approach", MSWiM 2004; from memory): a rise that fails at once makes it wait twice as long for the next, a
 * fall for any other reason makes it as hopeful as in the beginning.
 */
public final class CountPolicy implements RatePolicy {
    private static final int MOST_PATIENCE = 16;

    private final RatePolicyRules.Count rules;
    private final int dataRates;
    private int dataRate;
    private int goodInRow;
    private int badInRow;
    private int patience = 1;
    private boolean isProbing;
    private int lastSent;
    private int lastLost;
    private double lastSnrDb = Double.NaN;
    private Step step = Step.STAY;

    private enum Step {
        STAY,
        UP,
        DOWN
    }

    /** Begins at the start data rate of a mode with so many. */
    public CountPolicy(RatePolicyRules.Count rules, int dataRates) {
        this.rules = rules;
        this.dataRates = dataRates;
        dataRate = rules.startDataRate();
    }

    @Override
    public int chooseDataRate(long nowNanos) {
        step = Step.STAY;
        if (badInRow >= rules.badToFall() && dataRate > 1) {
            fall();
        } else if (goodInRow >= rules.goodToRise() * patience && dataRate < dataRates) {
            rise();
        }
        return dataRate;
    }

    private void fall() {
        patience = isProbing && rules.doublesPatience() ? Math.min(2 * patience, MOST_PATIENCE) : 1;
        moveTo(dataRate - 1, Step.DOWN);
        isProbing = false;
    }

    private void rise() {
        moveTo(dataRate + 1, Step.UP);
        isProbing = true;
    }

    private void moveTo(int newDataRate, Step how) {
        dataRate = newDataRate;
        step = how;
        goodInRow = 0;
        badInRow = 0;
    }

    @Override
    public void onAcknowledged(long nowNanos, int atDataRate, int framesSent, int framesLost, double snrDb) {
        lastSnrDb = snrDb;
        boolean isGood = framesLost == 0;
        boolean isBad = framesLost >= rules.badShare() * framesSent;
        count(framesSent, framesLost, isGood, isBad && !isGood);
    }

    @Override
    public void onSilence(long nowNanos, int atDataRate, int framesSent) {
        lastSnrDb = Double.NaN;
        count(framesSent, framesSent, false, true);
    }

    private void count(int sent, int lost, boolean isGood, boolean isBad) {
        lastSent = sent;
        lastLost = lost;
        goodInRow = isGood ? goodInRow + 1 : 0;
        badInRow = isBad ? badInRow + 1 : 0;
        isProbing &= isBad;
    }

    @Override
    public String reason() {
        return switch (step) {
            case UP -> "no frame lost for long enough" + estimate();
            case DOWN -> lastLost + " of " + lastSent + " frames lost" + estimate();
            case STAY ->
                goodInRow + " good overs of " + rules.goodToRise() * patience + " needed to rise, " + badInRow
                        + " bad of " + rules.badToFall() + " to fall";
        };
    }

    private String estimate() {
        return Double.isNaN(lastSnrDb) ? "" : String.format(Locale.ROOT, ", estimate %.1f dB", lastSnrDb);
    }
}
