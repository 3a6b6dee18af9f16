package org.ionohaul.analysis;

/**
 * How much more often one mode arrives than another, and how much more often it keeps the deadlines.
 *
 * @param deliveredShare lead in trials in which everything is delivered, as a share from -1 to 1
 * @param meanDeadlineShare lead in deadlines kept, in the mean over them; 0 if there are none
 */
public record ArrivalLead(double deliveredShare, double meanDeadlineShare) {
    /** Returns the lead of the first. */
    public static ArrivalLead of(ModeSummary first, ModeSummary second) {
        return new ArrivalLead(
                first.delivered().value() - second.delivered().value(),
                first.meanDeadlineShare() - second.meanDeadlineShare());
    }
}
