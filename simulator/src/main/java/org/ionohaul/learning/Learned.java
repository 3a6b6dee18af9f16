package org.ionohaul.learning;

/**
 * What was learned from a log.
 *
 * @param belief what is believed of the unknowns
 * @param effectiveSets what the simulated sets of values are worth as draws of that
 * @param sets how many sets were simulated
 * @param chanceOfLess how often logs that the model itself makes are as unlikely under it as the real one, or have as many runs
 *     beyond all that was simulated, whichever is less
 */
public record Learned(Belief belief, double effectiveSets, int sets, double chanceOfLess) {
    /** With fewer effective sets the simulations say too little of where the truth is believed to be. */
    static final int FEWEST_EFFECTIVE = 100;

    /** A model that makes a log this unlikely no more often is not fitted to it. */
    static final double UNEXPLAINED = 0.01;

    /** Returns whether some values of the unknowns explain the log about as well as logs of the model's own. */
    public boolean isExplained() {
        return chanceOfLess >= UNEXPLAINED;
    }

    /** Returns whether enough was simulated where the truth is believed to be. */
    public boolean isWellFounded() {
        return effectiveSets >= FEWEST_EFFECTIVE;
    }

    /** Returns whether what is believed may be shown. */
    public boolean isFitted() {
        return isExplained() && isWellFounded();
    }
}
