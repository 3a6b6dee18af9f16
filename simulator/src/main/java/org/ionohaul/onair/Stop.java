package org.ionohaul.onair;

import org.ionohaul.statistics.DiscordantPairs;
import org.ionohaul.statistics.SignTestStops;

/** When an operator who compares two modes round by round stops early and names the one that won more rounds. */
public enum Stop {
    /** After four rounds, if one mode won them all: what feels like proof. */
    FOUR_OF_FOUR {
        @Override
        public SignTestStops within(int mostRounds, double errorRate) {
            return SignTestStops.atLead(4, 4);
        }
    },
    /** As soon as the sign test, made anew after each round, says so. */
    ANY_ROUND {
        @Override
        public SignTestStops within(int mostRounds, double errorRate) {
            return SignTestStops.atEveryPair(mostRounds, errorRate);
        }
    },
    /** As soon as one mode is so many rounds ahead that two like ones hardly ever get there. */
    SAFE_LEAD {
        @Override
        public SignTestStops within(int mostRounds, double errorRate) {
            return SignTestStops.atSafeLead(mostRounds, errorRate);
        }
    };

    /**
     * Returns the rule.
     *
     * @param mostRounds where it ends in any case, 1 or more
     * @param errorRate accepted chance that either of two like modes is named, above 0, below 1
     */
    public abstract SignTestStops within(int mostRounds, double errorRate);

    /**
     * What became of two modes that were compared so.
     *
     * @param named the place of the mode that was named, or {@link Rule#NOBODY}
     * @param rounds how many rounds were made
     */
    record Ended(int named, int rounds) {
        static Ended of(SignTestStops stops, Criterion criterion, double[] first, double[] second) {
            int won = 0;
            int lead = 0;
            for (int round = 0; round < first.length; round++) {
                DiscordantPairs winner = criterion.rounds(new double[] {first[round]}, new double[] {second[round]});
                if (winner.total() == 0) {
                    continue;
                }
                won++;
                lead += winner.first() - winner.second();
                if (stops.isEnough(won, lead)) {
                    return new Ended(lead > 0 ? 0 : 1, round + 1);
                }
                if (won == stops.mostPairs()) {
                    return new Ended(Rule.NOBODY, round + 1);
                }
            }
            return new Ended(Rule.NOBODY, first.length);
        }
    }
}
