package org.ionohaul.rate;

import java.util.Locale;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Sends at the data rate with the least expected airtime a byte and now and then samples one that could be better (after J.
 * Bicket, "Bit-rate selection in wireless networks", MIT 2005). Two assumptions carry it over to a handful of decisions
 * a minute: a data rate not tried yet loses at least as much as any lower one that was tried, and a data rate that failed four
 * times in a row is not sampled again until a lower one does well.
 */
public final class ExpectedAirtimePolicy implements RatePolicy {
    private static final int MOST_FAILURES = 4;

    private final RatePolicyRules.ExpectedAirtime rules;
    private final UniformRandomProvider random;
    private final double[] cleanBytesPerSecond;
    private final double[] loss;
    private final int[] failures;
    private int best;
    private boolean isFirst = true;
    private boolean isSample;

    /**
     * Begins at the start data rate of a mode with such data rates.
     *
     * @param random decides when to sample what
     */
    public ExpectedAirtimePolicy(
            RatePolicyRules.ExpectedAirtime rules, DesignRates rates, UniformRandomProvider random) {
        int dataRates = rates.dataRateCount();
        this.rules = rules;
        this.random = random;
        best = rules.startDataRate();
        cleanBytesPerSecond = new double[dataRates];
        loss = new double[dataRates];
        failures = new int[dataRates];
        for (int at = 0; at < dataRates; at++) {
            cleanBytesPerSecond[at] = rates.cleanBytesPerSecond(at + 1);
            loss[at] = Double.NaN;
        }
    }

    @Override
    public int chooseDataRate(long nowNanos) {
        if (isFirst) {
            isFirst = false;
            return best;
        }
        best = bestKnown();
        isSample = random.nextDouble() < rules.samplingShare();
        int sample = isSample ? sample() : best;
        isSample = sample != best;
        return sample;
    }

    private int bestKnown() {
        int found = 1;
        double least = 0;
        boolean anyTried = false;
        for (int dataRate = 1; dataRate <= loss.length; dataRate++) {
            boolean isTried = !Double.isNaN(loss[dataRate - 1]);
            double expected = expectedBytesPerSecond(dataRate);
            if ((isTried || !anyTried) && expected > least) {
                found = dataRate;
                least = expected;
            }
            anyTried |= isTried;
        }
        return found;
    }

    private double expectedBytesPerSecond(int dataRate) {
        double known = loss[dataRate - 1];
        return cleanBytesPerSecond[dataRate - 1] * (1 - (Double.isNaN(known) ? 0 : known));
    }

    /** Picks one of the data rates that would be better than the best known one if they lost nothing. */
    private int sample() {
        int picked = best;
        int candidates = 0;
        for (int dataRate = 1; dataRate <= loss.length; dataRate++) {
            if (couldBeBetter(dataRate) && random.nextInt(++candidates) == 0) {
                picked = dataRate;
            }
        }
        return picked;
    }

    private boolean couldBeBetter(int dataRate) {
        return dataRate != best
                && failures[dataRate - 1] < MOST_FAILURES
                && cleanBytesPerSecond[dataRate - 1] > expectedBytesPerSecond(best);
    }

    @Override
    public void onAcknowledged(long nowNanos, int atDataRate, int framesSent, int framesLost, double snrDb) {
        learn(atDataRate, (double) framesLost / framesSent);
    }

    @Override
    public void onSilence(long nowNanos, int atDataRate, int framesSent) {
        learn(atDataRate, 1);
    }

    private void learn(int dataRate, double seen) {
        double known = loss[dataRate - 1];
        loss[dataRate - 1] = Double.isNaN(known) ? seen : known + rules.memory() * (seen - known);
        failures[dataRate - 1] = seen == 1 ? failures[dataRate - 1] + 1 : 0;
        if (seen == 0 && dataRate < loss.length) {
            failures[dataRate] = 0;
        }
    }

    @Override
    public String reason() {
        return String.format(
                Locale.ROOT,
                "%sdata rate %d expects %.1f bytes a second",
                isSample ? "sampling; best known " : "",
                best,
                expectedBytesPerSecond(best));
    }
}
