package org.ionohaul.statistics;

import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * An upper bound that at least a share of the population keeps: a one-sided tolerance limit, free of any assumption on the
 * distribution (S. S. Wilks, Ann. Math. Stat. 12, 1941; H. A. David and H. N. Nagaraja, "Order Statistics", 3rd ed. 2003,
 * section 7.2). It is the smallest order statistic that lies at or above the share's quantile with the asked confidence.
 *
 * @param share share of the population that keeps it at least, above 0, below 1
 * @param confidence chance that it does, above 0, below 1
 */
public record ToleranceBound(double share, double confidence) {
    /** Checks the two chances. */
    public ToleranceBound {
        if (!(share > 0 && share < 1 && confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException(
                    "share and confidence must lie above 0 and below 1: " + share + ", " + confidence);
        }
    }

    /** Returns the size of the smallest sample whose largest value is such a bound: 59 for 95 % and 95 %. */
    public int fewestTrials() {
        return (int) Math.ceil(Math.log1p(-confidence) / Math.log(share));
    }

    /**
     * Returns the bound that a sample sets; infinite if the value that sets it never came.
     *
     * @param sample at least {@link #fewestTrials()} observations
     */
    public double of(OrderedSample sample) {
        if (sample.size() < fewestTrials()) {
            throw new IllegalArgumentException("needs " + fewestTrials() + " observations: " + sample.size());
        }
        return sample.at(BinomialDistribution.of(sample.size(), share).inverseCumulativeProbability(confidence));
    }
}
