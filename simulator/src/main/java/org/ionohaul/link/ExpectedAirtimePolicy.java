package org.ionohaul.link;

import java.util.Locale;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Sends at the level with the least expected airtime a byte and now and then samples one that could be better (after J.
 * Bicket, "Bit-rate selection in wireless networks", MIT 2005). Two assumptions carry it over to a handful of decisions
 * a minute: a level not tried yet loses at least as much as any lower one that was tried, and a level that failed four
 * times in a row is not sampled again until a lower one does well.
 */
final class ExpectedAirtimePolicy implements SpeedPolicy {
    private static final int MOST_FAILURES = 4;

    private final LadderRules.ExpectedAirtime rules;
    private final UniformRandomProvider random;
    private final double[] cleanBytesPerSecond;
    private final double[] loss;
    private final int[] failures;
    private int best;
    private boolean isFirst = true;
    private boolean isSample;

    ExpectedAirtimePolicy(LadderRules.ExpectedAirtime rules, Timing timing, int levels, UniformRandomProvider random) {
        this.rules = rules;
        this.random = random;
        best = rules.startLevel();
        cleanBytesPerSecond = new double[levels];
        loss = new double[levels];
        failures = new int[levels];
        for (int at = 0; at < levels; at++) {
            cleanBytesPerSecond[at] = timing.cleanBytesPerSecond(at + 1);
            loss[at] = Double.NaN;
        }
    }

    @Override
    public int chooseLevel(long nowNanos) {
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
        for (int level = 1; level <= loss.length; level++) {
            boolean isTried = !Double.isNaN(loss[level - 1]);
            double expected = expectedBytesPerSecond(level);
            if ((isTried || !anyTried) && expected > least) {
                found = level;
                least = expected;
            }
            anyTried |= isTried;
        }
        return found;
    }

    private double expectedBytesPerSecond(int level) {
        double known = loss[level - 1];
        return cleanBytesPerSecond[level - 1] * (1 - (Double.isNaN(known) ? 0 : known));
    }

    /** Picks one of the levels that would be better than the best known one if they lost nothing. */
    private int sample() {
        int picked = best;
        int candidates = 0;
        for (int level = 1; level <= loss.length; level++) {
            if (couldBeBetter(level) && random.nextInt(++candidates) == 0) {
                picked = level;
            }
        }
        return picked;
    }

    private boolean couldBeBetter(int level) {
        return level != best
                && failures[level - 1] < MOST_FAILURES
                && cleanBytesPerSecond[level - 1] > expectedBytesPerSecond(best);
    }

    @Override
    public void onAcknowledged(long nowNanos, int atLevel, int framesSent, int framesLost, double snrDb) {
        learn(atLevel, (double) framesLost / framesSent);
    }

    @Override
    public void onSilence(long nowNanos, int atLevel, int framesSent) {
        learn(atLevel, 1);
    }

    private void learn(int level, double seen) {
        double known = loss[level - 1];
        loss[level - 1] = Double.isNaN(known) ? seen : known + rules.memory() * (seen - known);
        failures[level - 1] = seen == 1 ? failures[level - 1] + 1 : 0;
        if (seen == 0 && level < loss.length) {
            failures[level] = 0;
        }
    }

    @Override
    public String reason() {
        return String.format(
                Locale.ROOT,
                "%slevel %d expects %.1f bytes a second",
                isSample ? "sampling; best known " : "",
                best,
                expectedBytesPerSecond(best));
    }
}
