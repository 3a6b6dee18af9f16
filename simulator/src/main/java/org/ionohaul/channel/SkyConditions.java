package org.ionohaul.channel;

import java.util.DoubleSummaryStatistics;
import java.util.List;

/**
 * Everything that is fixed about one trial's sky before its random processes run.
 *
 * @param paths the propagation paths, at least one; powers are relative, their sum is normalised to 1
 * @param slowVariation slow variation of the median level, shared by both directions
 * @param trendDb change of the path's median level over the clock, in dB, shared by both directions
 * @param near what the near end receives
 * @param far what the far end receives
 */
public record SkyConditions(
        List<PropagationPath> paths,
        SlowVariation slowVariation,
        Schedule trendDb,
        EndConditions near,
        EndConditions far) {
    /** Copies the list and checks that there is a path. */
    public SkyConditions {
        paths = List.copyOf(paths);
        if (paths.isEmpty()) {
            throw new IllegalArgumentException("paths must not be empty");
        }
    }

    /** Returns what the given end receives. */
    public EndConditions at(End end) {
        return end == End.NEAR ? near : far;
    }

    /** Returns the widest Doppler spread of the paths (2 sigma), in Hz. */
    public double dopplerSpreadHz() {
        return paths.stream()
                .mapToDouble(PropagationPath::dopplerSpreadHz)
                .max()
                .orElseThrow();
    }

    /** Returns the difference between the longest and the shortest delay of the paths, in seconds. */
    public double delaySpreadSeconds() {
        DoubleSummaryStatistics delays =
                paths.stream().mapToDouble(PropagationPath::delaySeconds).summaryStatistics();
        return delays.getMax() - delays.getMin();
    }
}
