package org.ionohaul.foresight;

import java.util.List;

/**
 * What a learner foretells of a race.
 *
 * @param winner place of the mode that is through first
 * @param sureness how sure that is, from one over the number of modes to 1
 * @param spans when the file is through with each mode: ranges that are to hold 8 times of 10
 */
public record Guess(int winner, double sureness, List<Span> spans) {
    /** How often a span is to hold. */
    public static final double HOLDING = 0.8;

    /** Copies the list. */
    public Guess {
        spans = List.copyOf(spans);
    }

    /**
     * A range of times.
     *
     * @param lowSeconds the least, zero or more; infinite for never
     * @param highSeconds the most, not below; infinite if it may be never
     */
    public record Span(double lowSeconds, double highSeconds) {
        /** Checks the order. */
        public Span {
            if (!(lowSeconds >= 0 && lowSeconds <= highSeconds)) {
                throw new IllegalArgumentException("not in order: " + lowSeconds + ", " + highSeconds);
            }
        }

        /**
         * Returns the interval score of the span, in doublings of time; less is better, and on average least if one in ten times lies
         * below and one in ten above (T. Gneiting and A. E. Raftery, "Strictly proper scoring rules, prediction, and
         * estimation", J. Am. Stat. Assoc. 102, 2007, equation 43, here of the logarithm of the time). What was not through
         * when watching ended counts as through then, on either side.
         *
         * @param seconds what happened; infinite for never
         * @param horizonSeconds when watching ended
         */
        double score(double seconds, double horizonSeconds) {
            double low = doublings(lowSeconds, horizonSeconds);
            double high = doublings(highSeconds, horizonSeconds);
            double happened = doublings(seconds, horizonSeconds);
            double missed = Math.max(0, low - happened) + Math.max(0, happened - high);
            return high - low + 2 / (1 - HOLDING) * missed;
        }

        /** Nothing is quicker than a second. */
        private static double doublings(double seconds, double horizonSeconds) {
            return Math.log(Math.max(1, Math.min(seconds, horizonSeconds))) / Math.log(2);
        }

        /** Returns whether a time lies in the range; never does if its end is never or not before watching ended. */
        boolean holds(double seconds, double horizonSeconds) {
            double seen = Math.min(seconds, horizonSeconds);
            return seen >= Math.min(lowSeconds, horizonSeconds) && seen <= Math.min(highSeconds, horizonSeconds);
        }
    }
}
