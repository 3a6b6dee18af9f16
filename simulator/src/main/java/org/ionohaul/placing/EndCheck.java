package org.ionohaul.placing;

import org.ionohaul.channel.End;

/**
 * How levels that were read at an end compare with those that the scenario states.
 *
 * @param end the end
 * @param readings how many runs there was a reading in
 * @param aboveStatedDb mean of what was read less what is stated, each weighed by how exactly it was read, in dB
 * @param deviationDb standard error of that, in dB; from the readings' own errors or from how they scatter, whichever is more
 */
public record EndCheck(End end, int readings, double aboveStatedDb, double deviationDb) {
    /** The two-sided quantile of the normal distribution for an interval that is made to hold the truth in 95 of 100 cases. */
    private static final double NORMAL_95 = 1.96;

    /** Returns the lower end of the interval, in dB. */
    public double lowDb() {
        return aboveStatedDb - NORMAL_95 * deviationDb;
    }

    /** Returns the upper end of the interval, in dB. */
    public double highDb() {
        return aboveStatedDb + NORMAL_95 * deviationDb;
    }

    /** Returns whether what was read differs from what is stated, beyond the error of reading. */
    public boolean isBeyondChance() {
        return lowDb() > 0 || highDb() < 0;
    }
}
