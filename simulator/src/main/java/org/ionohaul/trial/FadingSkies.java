package org.ionohaul.trial;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.channel.End;
import org.ionohaul.channel.EndConditions;
import org.ionohaul.channel.Passband;
import org.ionohaul.channel.PropagationPath;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.Sky;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SlowVariation;
import org.ionohaul.random.TrialStreams;

/**
 * Many skies over one path at a mean SNR of 0 dB: nothing but fading and white noise. One set serves all waveforms that
 * are heard in the same passband. Belongs to one thread.
 */
public final class FadingSkies {
    private static final int MOST_BURSTS_EACH = 100;

    private final List<Reception> receptions;
    private final int burstsEach;

    /**
     * Prepares the skies.
     *
     * @param paths the propagation paths
     * @param passband in which the signals are heard
     * @param bursts how many bursts an average is taken over, rounded down to whole hundreds above a hundred; one is
     *     enough on a path that does not fade
     * @param seed seed of the fading
     */
    public FadingSkies(List<PropagationPath> paths, Passband passband, int bursts, long seed) {
        if (bursts < 1) {
            throw new IllegalArgumentException("bursts must be at least 1: " + bursts);
        }
        SkyConditions conditions = new SkyConditions(
                paths, SlowVariation.NONE, Schedule.NONE, EndConditions.quiet(0), EndConditions.quiet(0));
        this.burstsEach = Math.min(bursts, MOST_BURSTS_EACH);
        this.receptions = IntStream.range(0, bursts / burstsEach)
                .mapToObj(sky -> new Sky(conditions, new TrialStreams(seed, sky)).reception(End.FAR, passband))
                .toList();
    }

    List<Reception> receptions() {
        return receptions;
    }

    int burstsEach() {
        return burstsEach;
    }

    int bursts() {
        return receptions.size() * burstsEach;
    }
}
