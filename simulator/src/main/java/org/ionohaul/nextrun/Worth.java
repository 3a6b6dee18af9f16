package org.ionohaul.nextrun;

import org.ionohaul.statistics.Estimate;

/**
 * What a candidate is worth.
 *
 * @param candidate what is done
 * @param airSeconds how long that takes on average
 * @param fewerWrong by how much it lowers the chance of a wrong choice, in chance
 * @param fewerWrongPerMinute the same for a minute on the air
 * @param changedShare how often another mode is chosen after it, from 0 to 1
 * @param times how often it fits into the time there is, 1 or more; a meter is read once, since its error stays
 * @param fewerWrongInTime by how much it lowers that chance if done as often
 * @param mayBeBest whether no other is better per minute beyond chance
 */
public record Worth(
        Candidate candidate,
        double airSeconds,
        Estimate fewerWrong,
        Estimate fewerWrongPerMinute,
        double changedShare,
        int times,
        Estimate fewerWrongInTime,
        boolean mayBeBest) {}
