package org.ionohaul.study;

import java.io.Serializable;
import java.util.List;
import org.ionohaul.limits.OutOfRange;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.statistics.Proportion;

/**
 * How exact a study's answers must be before it may stop; asked of every mode in every case.
 *
 * <p>The width of a 95 % interval is looked at again and again while trials come in, which by itself makes the interval
 * cover less often than it says: {@link SampleSizes} says how often it is looked at, and a table in the reference
 * results says what coverage is left.
 */
public sealed interface PrecisionGoal extends Serializable {
    /** Returns whether the goal asks anything of at least one of these transfers. */
    default boolean asksAnythingOf(List<Transfer> transfers) {
        return true;
    }

    /** Returns whether a study's trials are enough for every mode in every case. */
    default boolean isReachedBy(StudyResult result) {
        return result.cases().stream()
                .allMatch(trials -> trials.modes().stream()
                        .allMatch(mode -> isReached(trials.transfer(), OrderedSample.of(mode.completionSeconds()))));
    }

    /** Returns whether the trials of one mode in one case are enough. */
    boolean isReached(Transfer transfer, OrderedSample completionSeconds);

    private static boolean hasDeadline(List<Transfer> transfers) {
        return transfers.stream().anyMatch(it -> !it.deadlinesSeconds().isEmpty());
    }

    private static boolean isWithin(double halfWidth, Proportion share) {
        Estimate chance = share.wilson(Estimate.CONFIDENCE);
        return chance.high() - chance.low() <= 2 * halfWidth;
    }

    /**
     * The chance of every deadline to within so much.
     *
     * @param halfWidth half of the interval's width, above 0, below 0.5
     */
    record DeadlineChances(double halfWidth) implements PrecisionGoal {
        /** Checks the width. */
        public DeadlineChances {
            OutOfRange.unless(
                    halfWidth > 0 && halfWidth < 0.5, "halfWidth", "must lie above 0 and below 0.5", halfWidth);
        }

        @Override
        public boolean asksAnythingOf(List<Transfer> transfers) {
            return hasDeadline(transfers);
        }

        @Override
        public boolean isReached(Transfer transfer, OrderedSample completionSeconds) {
            return transfer.deadlinesSeconds().stream()
                    .allMatch(deadline -> isWithin(halfWidth, completionSeconds.atMost(deadline)));
        }
    }

    /**
     * The chance of every deadline on one side of a share, with the mode that suits: surely above it with one mode, surely below with
     * all, or, where it lies too near for that, every mode's to within so much.
     *
     * @param share of trials that is asked for, above 0, below 1
     * @param halfWidth half of the interval's width where it stays open, above 0, below 0.5
     */
    record DeadlineSides(double share, double halfWidth) implements PrecisionGoal {
        /**
         * How sure a side must be for more trials to be saved: far surer than what is said of it then, so that looking again and again
         * hardly adds to how often that is wrong ({@code grid-verdicts.csv}).
         */
        private static final double SURE = 0.999;

        /** Checks both numbers. */
        public DeadlineSides {
            OutOfRange.unless(share > 0 && share < 1, "share", "must lie above 0 and below 1", share);
            OutOfRange.unless(
                    halfWidth > 0 && halfWidth < 0.5, "halfWidth", "must lie above 0 and below 0.5", halfWidth);
        }

        @Override
        public boolean asksAnythingOf(List<Transfer> transfers) {
            return hasDeadline(transfers);
        }

        @Override
        public boolean isReachedBy(StudyResult result) {
            return result.cases().stream()
                    .allMatch(trials -> isReached(
                            trials.transfer(),
                            trials.modes().stream()
                                    .map(mode -> OrderedSample.of(mode.completionSeconds()))
                                    .toList()));
        }

        @Override
        public boolean isReached(Transfer transfer, OrderedSample completionSeconds) {
            return isReached(transfer, List.of(completionSeconds));
        }

        private boolean isReached(Transfer transfer, List<OrderedSample> modes) {
            return transfer.deadlinesSeconds().stream()
                    .map(deadline ->
                            modes.stream().map(it -> it.atMost(deadline)).toList())
                    .allMatch(kept -> kept.stream()
                                    .anyMatch(it -> it.exact(SURE).low() > share)
                            || kept.stream().allMatch(it -> it.exact(SURE).high() < share)
                            || kept.stream().allMatch(it -> isWithin(halfWidth, it)));
        }
    }

    /**
     * A quantile of the completion time to within a share of itself. A quantile whose whole interval was not reached
     * within the time watched is as exact as it will get.
     *
     * @param probability which quantile, above 0, below 1
     * @param halfWidthShare half of the interval's width as a share of the quantile, above 0
     */
    record CompletionQuantile(double probability, double halfWidthShare) implements PrecisionGoal {
        /** Checks both numbers. */
        public CompletionQuantile {
            OutOfRange.unless(
                    probability > 0 && probability < 1, "probability", "must lie above 0 and below 1", probability);
            OutOfRange.unless(halfWidthShare > 0, "halfWidthShare", "must be positive", halfWidthShare);
        }

        @Override
        public boolean isReached(Transfer transfer, OrderedSample completionSeconds) {
            Estimate quantile = completionSeconds.quantile(probability, Estimate.CONFIDENCE);
            return quantile.low() == Double.POSITIVE_INFINITY
                    || (Double.isFinite(quantile.high())
                            && quantile.high() - quantile.low() <= 2 * halfWidthShare * quantile.value());
        }
    }
}
