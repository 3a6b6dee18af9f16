package org.ionohaul.rate;

import org.ionohaul.limits.OutOfRange;

/** How a mode chooses its data rate; data rate 1 is the most robust. */
public sealed interface RatePolicyRules {
    /** Returns the data rate of the first over, 1 or more. */
    int startDataRate();

    /** Returns whether the policy uses the SNR that the receiver measures. */
    default boolean usesSnr() {
        return false;
    }

    /** Returns the standard deviation of the error of measured SNR, in dB; shown only, where no policy uses it. */
    default double estimateDeviationDb() {
        return 1;
    }

    /**
     * Always the same data rate.
     *
     * @param startDataRate the data rate
     */
    record Fixed(int startDataRate) implements RatePolicyRules {}

    /**
     * Counts good and bad overs in a row.
     *
     * @param startDataRate data rate of the first over
     * @param goodToRise how many overs in a row without loss make it rise one data rate, 1 or more
     * @param badToFall how many overs in a row with heavy loss (or none acknowledged) make it fall one, 1 or more
     * @param badShare from which share of lost frames on an over counts as bad, above 0, at most 1
     * @param doublesPatience whether a rise that fails at once doubles the count needed for the next (up to 16 times)
     */
    record Count(int startDataRate, int goodToRise, int badToFall, double badShare, boolean doublesPatience)
            implements RatePolicyRules {
        /** Checks every value. */
        public Count {
            OutOfRange.unless(goodToRise >= 1, "goodToRise", "must be at least 1", goodToRise);
            OutOfRange.unless(badToFall >= 1, "badToFall", "must be at least 1", badToFall);
            OutOfRange.unless(badShare > 0 && badShare <= 1, "badShare", "must be above 0 and at most 1", badShare);
        }
    }

    /**
     * Holds the smoothed share of lost frames between two marks.
     *
     * @param startDataRate data rate of the first over
     * @param riseBelow rises while the smoothed loss is below this, from 0 to below {@code fallAbove}
     * @param fallAbove falls while it is above this, above 0, at most 1
     * @param memory weight of the newest over in the smoothing, above 0, at most 1
     */
    record ErrorRate(int startDataRate, double riseBelow, double fallAbove, double memory) implements RatePolicyRules {
        /** Checks every value. */
        public ErrorRate {
            OutOfRange.unless(fallAbove > 0 && fallAbove <= 1, "fallAbove", "must be above 0 and at most 1", fallAbove);
            OutOfRange.unless(riseBelow >= 0, "riseBelow", "must not be negative", riseBelow);
            OutOfRange.unless(riseBelow < fallAbove, "riseBelow", "must lie below fallAbove", riseBelow);
            OutOfRange.unless(memory > 0 && memory <= 1, "memory", "must be above 0 and at most 1", memory);
        }
    }

    /**
     * Looks the measured SNR up in the data rates' needs and corrects itself by what gets lost (outer loop).
     *
     * @param startDataRate data rate of the first over
     * @param targetLoss share of lost frames it aims at, above 0, below 1
     * @param hysteresisDb how much more than a higher data rate's need it wants before it rises, in dB, zero or more
     * @param correctionStepDb outer-loop step after an over that was lost, in dB, zero or more; 0 switches it off
     * @param estimateDeviationDb standard deviation of the error of measured SNR, in dB, zero or more
     */
    record SnrLookup(
            int startDataRate,
            double targetLoss,
            double hysteresisDb,
            double correctionStepDb,
            double estimateDeviationDb)
            implements RatePolicyRules {
        /** Checks every value. */
        public SnrLookup {
            OutOfRange.unless(
                    targetLoss > 0 && targetLoss < 1, "targetLoss", "must be above 0 and below 1", targetLoss);
            requireNotNegative(hysteresisDb, "hysteresisDb");
            requireNotNegative(correctionStepDb, "correctionStepDb");
            requireNotNegative(estimateDeviationDb, "estimateDeviationDb");
        }

        @Override
        public boolean usesSnr() {
            return true;
        }
    }

    /**
     * Sends most overs at the data rate with the least expected airtime a byte and now and then samples one that could be
     * better.
     *
     * @param startDataRate data rate of the first over
     * @param samplingShare share of overs used for sampling, from 0 to below 1
     * @param memory weight of the newest over in each data rate's loss, above 0, at most 1
     */
    record ExpectedAirtime(int startDataRate, double samplingShare, double memory) implements RatePolicyRules {
        /** Checks every value. */
        public ExpectedAirtime {
            OutOfRange.unless(
                    samplingShare >= 0 && samplingShare < 1,
                    "samplingShare",
                    "must be from 0 to below 1",
                    samplingShare);
            OutOfRange.unless(memory > 0 && memory <= 1, "memory", "must be above 0 and at most 1", memory);
        }
    }

    /**
     * Keeps a belief about the path's SNR, updates it with each frame's outcome and forgets with time.
     *
     * @param startDataRate data rate of the first over
     * @param priorDeviationDb width of the belief before the first over, in dB, positive
     * @param forgettingDbPerRootSecond how fast the belief widens, in dB per square root of a second, zero or more
     * @param estimateDeviationDb standard deviation of the error of measured SNR, in dB, zero or more
     */
    record LatentSnr(
            int startDataRate, double priorDeviationDb, double forgettingDbPerRootSecond, double estimateDeviationDb)
            implements RatePolicyRules {
        /** Checks every value. */
        public LatentSnr {
            OutOfRange.unless(
                    priorDeviationDb > 0 && priorDeviationDb < Double.POSITIVE_INFINITY,
                    "priorDeviationDb",
                    "must be positive",
                    priorDeviationDb);
            requireNotNegative(forgettingDbPerRootSecond, "forgettingDbPerRootSecond");
            requireNotNegative(estimateDeviationDb, "estimateDeviationDb");
        }

        @Override
        public boolean usesSnr() {
            return true;
        }
    }

    /**
     * The yardstick: knows the sky over the coming over and takes the best data rate. No real station can.
     *
     * @param startDataRate unused but for display
     */
    record Omniscient(int startDataRate) implements RatePolicyRules {}

    private static void requireNotNegative(double value, String name) {
        OutOfRange.unless(value >= 0 && value < Double.POSITIVE_INFINITY, name, "must not be negative", value);
    }
}
