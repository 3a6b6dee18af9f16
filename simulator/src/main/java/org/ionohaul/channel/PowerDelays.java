package org.ionohaul.channel;

import java.util.List;

/** When the power of several paths arrives. */
final class PowerDelays {
    private final double[] shares;
    private final double[] delaysSeconds;

    PowerDelays(List<PropagationPath> paths) {
        this.shares = PropagationPath.shares(paths);
        this.delaysSeconds =
                paths.stream().mapToDouble(PropagationPath::delaySeconds).toArray();
    }

    /**
     * Returns the share of the mean power that is outside a window, for the window that misses least: one that begins with
     * a path. A path misses it in the measure that it reaches over into a neighbouring symbol.
     */
    double shareBeyond(double reachSeconds, double symbolSeconds) {
        double least = 1;
        for (double begin : delaysSeconds) {
            double missed = 0;
            for (int i = 0; i < shares.length; i++) {
                double late = delaysSeconds[i] - begin - reachSeconds;
                double early = begin - delaysSeconds[i];
                missed += shares[i] * Math.min(1, Math.max(0, Math.max(late, early)) / symbolSeconds);
            }
            least = Math.min(least, missed);
        }
        return least;
    }
}
