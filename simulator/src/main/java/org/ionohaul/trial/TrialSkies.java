package org.ionohaul.trial;

import java.util.Optional;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Sky;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.Draws;
import org.ionohaul.scenario.Levels;
import org.ionohaul.scenario.Scenario;

/**
 * The skies of all trials of a scenario, each made afresh from the trial's number. Who asks just for skies needs no mode:
 * preparing those takes longer than many draws.
 *
 * @param scenario what the skies belong to
 */
public record TrialSkies(Scenario scenario) {
    /** Returns the sky of a trial, zero or more; made anew at each call, for the caller's thread. */
    public Sky sky(long trial) {
        return sky(trial, new UncertainDraws(streams(trial)));
    }

    /** Returns the sky of a trial under uncertain inputs that are drawn elsewhere. */
    Sky sky(long trial, Draws draws) {
        return new Sky(scenario.sky().conditions(draws), streams(trial));
    }

    /** Returns what a trial's uncertain inputs come to, zero or more. */
    public SkyConditions conditions(long trial) {
        return scenario.sky().conditions(new UncertainDraws(streams(trial)));
    }

    /** Returns the levels at an end in a trial, zero or more; empty if the scenario states just their ratio. */
    public Optional<Levels> levels(End end, long trial) {
        return scenario.sky().levels(end, new UncertainDraws(streams(trial)));
    }

    /**
     * Returns what a trial's sky comes to.
     *
     * @param trial the trial's number, zero or more
     * @param lengthSeconds how long to watch from pressing send, positive
     */
    public TrialSky watched(long trial, double lengthSeconds) {
        return TrialSky.of(sky(trial), lengthSeconds);
    }

    TrialStreams streams(long trial) {
        return new TrialStreams(scenario.seed(), trial);
    }
}
