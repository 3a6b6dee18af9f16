package org.ionohaul.session;

import java.util.List;
import java.util.OptionalLong;

/**
 * What one session came to. Instants are nanoseconds since the operator pressed send.
 *
 * @param outcome what it had achieved when it ended
 * @param ending why it ended for the station that dialled
 * @param endedNanos when it ended for the station that dialled, or the horizon came
 * @param deliveredNanos when the receiver held the last byte of the last file; empty if some are wrong and that is not
 *     accepted
 * @param confirmedNanos when the sender had it acknowledged
 * @param closedNanos when both ends had hung up
 * @param filesDeliveredNanos when the receiver held each file, in the order sent; empty where it never did, or holds it
 *     wrong and that is not accepted
 * @param progress what the receiver held over time, up to the first wrong byte unless wrong ones are accepted
 * @param budget where the time went; sums to {@code endedNanos}
 * @param dataRates use of each data rate, data rate 1 first
 * @param linksLost how often the link was lost
 * @param oversSent overs that carried frames
 * @param acknowledgementsLost acknowledgements sent but not decoded
 * @param wrongFrames frames that the receiver kept and that were wrong, since no check noticed
 */
public record SessionResult(
        Outcome outcome,
        Ending ending,
        long endedNanos,
        OptionalLong deliveredNanos,
        OptionalLong confirmedNanos,
        OptionalLong closedNanos,
        List<OptionalLong> filesDeliveredNanos,
        ProgressCurve progress,
        TimeBudget budget,
        List<DataRateUse> dataRates,
        int linksLost,
        int oversSent,
        int acknowledgementsLost,
        int wrongFrames) {
    /** Copies the lists; checks that outcome and ending agree and that the budget sums to the elapsed time. */
    public SessionResult {
        if ((outcome == Outcome.RUNNING) != ending.isAtHorizon()) {
            throw new IllegalArgumentException("outcome and ending disagree: " + outcome + ", " + ending);
        }
        filesDeliveredNanos = List.copyOf(filesDeliveredNanos);
        dataRates = List.copyOf(dataRates);
        if (budget.totalNanos() != endedNanos) {
            throw new IllegalArgumentException(
                    "budget of " + budget.totalNanos() + " ns does not sum to elapsed " + endedNanos + " ns");
        }
    }
}
