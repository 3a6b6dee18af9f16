package org.ionohaul.trial;

import java.util.Optional;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Sky;
import org.ionohaul.channel.SkyWatch;
import org.ionohaul.scenario.Levels;
import org.ionohaul.scenario.Scenario;

/**
 * One trial's sky, watched at both ends.
 *
 * @param scenario what the sky belongs to
 * @param trial the trial's number, from 0
 * @param lengthSeconds how long it is watched, from pressing send
 * @param near what a meter shows at the station that dials
 * @param far what a meter shows at the station that is called
 */
public record SkyView(Scenario scenario, long trial, double lengthSeconds, SkyWatch near, SkyWatch far) {
    private static final double NANOS_PER_SECOND = 1e9;

    /**
     * Watches a sky.
     *
     * @param sky that of the trial
     * @param lengthSeconds how long, positive
     */
    public static SkyView of(Scenario scenario, long trial, Sky sky, double lengthSeconds) {
        long lengthNanos = Math.round(NANOS_PER_SECOND * lengthSeconds);
        return new SkyView(
                scenario,
                trial,
                lengthSeconds,
                new SkyWatch(sky, End.NEAR, lengthNanos),
                new SkyWatch(sky, End.FAR, lengthNanos));
    }

    /** Returns what a meter shows at an end. */
    public SkyWatch at(End end) {
        return end == End.NEAR ? near : far;
    }

    /** Returns the levels at an end when send is pressed; empty if the scenario states just their ratio. */
    public Optional<Levels> levels(End end) {
        return new TrialSkies(scenario).levels(end, trial);
    }

    /** Returns nanoseconds since pressing send in seconds. */
    public static double seconds(long nanos) {
        return nanos / NANOS_PER_SECOND;
    }
}
