package org.ionohaul.channel;

import java.util.List;
import org.ionohaul.random.TrialStreams;

/**
 * A trial's sky at the level of samples: the complex gain of every path and the noise of the moment, for a reference
 * receiver that hears signals, where the model hears powers. Belongs to one thread.
 */
public final class SkySamples {
    private final Sky sky;
    private final double[] amplitudes;

    /** Opens the sky of one trial. */
    public SkySamples(SkyConditions conditions, long seed, long trial) {
        this.sky = new Sky(conditions, new TrialStreams(seed, trial));
        List<PropagationPath> paths = conditions.paths();
        double total = paths.stream()
                .mapToDouble(path -> Decibels.toRatio(path.powerDb()))
                .sum();
        this.amplitudes = paths.stream()
                .mapToDouble(path -> Math.sqrt(Decibels.toRatio(path.powerDb()) / total))
                .toArray();
    }

    /** Returns how the model hears this sky at the far end. */
    public Reception reception(Passband passband) {
        return sky.reception(End.FAR, passband);
    }

    /** Writes the gain of each path, its amplitude included: real and imaginary part in turn. */
    public void gains(long atNanos, double[] gains) {
        for (int path = 0; path < amplitudes.length; path++) {
            sky.gains()[path].at(atNanos, gains, path);
            gains[2 * path] *= amplitudes[path];
            gains[2 * path + 1] *= amplitudes[path];
        }
    }

    /** Returns the noise power of the moment over that of the floor. */
    public double noise(long atNanos) {
        return sky.noise(End.FAR).noise(atNanos);
    }
}
