package org.ionohaul.onair;

import org.ionohaul.statistics.DiscordantPairs;

/** By what rule an operator names the better mode after all runs. */
public enum Rule {
    /** The better figure, however little better: the sooner median, or more runs in time. */
    BARE {
        @Override
        boolean isAhead(Criterion criterion, double[] first, double[] second, double errorRate) {
            return criterion.figure(first) < criterion.figure(second);
        }
    },
    /** The exact two-sided sign test over the rounds, McNemar's where a deadline decides. */
    PAIRED {
        @Override
        boolean isAhead(Criterion criterion, double[] first, double[] second, double errorRate) {
            DiscordantPairs rounds = criterion.rounds(first, second);
            return rounds.first() > rounds.second() && rounds.exactPValue() <= errorRate;
        }
    },
    /** A test that does not look at rounds, see {@link Criterion#unpairedPValue}. */
    UNPAIRED {
        @Override
        boolean isAhead(Criterion criterion, double[] first, double[] second, double errorRate) {
            return runsLead(criterion, first, second) > 0 && criterion.unpairedPValue(first, second) <= errorRate;
        }
    };

    /** What is returned where no mode is named. */
    static final int NOBODY = -1;

    abstract boolean isAhead(Criterion criterion, double[] first, double[] second, double errorRate);

    /**
     * Returns the mode that is ahead of every other.
     *
     * @param throughSeconds for each mode, the times of its runs
     * @param errorRate accepted chance that any of several like modes is named, shared out among the others of each
     * @return its place, or {@link #NOBODY}
     */
    int named(Criterion criterion, double[][] throughSeconds, double errorRate) {
        int modes = throughSeconds.length;
        for (int mode = 0; mode < modes; mode++) {
            boolean isAhead = true;
            for (int other = 0; other < modes && isAhead; other++) {
                isAhead = other == mode
                        || isAhead(criterion, throughSeconds[mode], throughSeconds[other], errorRate / (modes - 1));
            }
            if (isAhead) {
                return mode;
            }
        }
        return NOBODY;
    }

    /** By how much the second's runs come later or fail more, in pairs of runs won: the sign of both unpaired tests. */
    private static int runsLead(Criterion criterion, double[] first, double[] second) {
        int lead = 0;
        for (double one : first) {
            for (double other : second) {
                DiscordantPairs pair = criterion.rounds(new double[] {one}, new double[] {other});
                lead += pair.first() - pair.second();
            }
        }
        return lead;
    }
}
