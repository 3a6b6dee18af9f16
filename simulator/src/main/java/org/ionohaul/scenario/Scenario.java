package org.ionohaul.scenario;

import java.util.List;
import org.ionohaul.channel.End;
import org.ionohaul.limits.OutOfRange;

/**
 * Everything that one study simulates, as read and checked from a scenario file and its mode files.
 *
 * @param name the file's name without its ending
 * @param title one line that says what it is about
 * @param seed seed of all chance
 * @param trials how many trials to run
 * @param horizonSeconds how long after pressing send a trial is watched, positive
 * @param distanceMetres length of the radio path, for its propagation time, zero or more
 * @param transfers what is sent, at least one
 * @param modes the modes compared, at least one
 * @param near the station that dials
 * @param far the station that is called
 * @param sky what lies between them
 */
public record Scenario(
        String name,
        String title,
        long seed,
        int trials,
        double horizonSeconds,
        double distanceMetres,
        List<Transfer> transfers,
        List<Mode> modes,
        StationDescription near,
        StationDescription far,
        SkyDescription sky) {
    static final double LIGHT_METRES_PER_SECOND = 299_792_458;

    /** What sorting a mode's times in memory allows. */
    private static final int MOST_TRIALS = 10_000_000;

    /** Copies the lists and checks every number. */
    public Scenario {
        OutOfRange.unless(trials >= 1 && trials <= MOST_TRIALS, "trials", "must be from 1 to 10 million", trials);
        OutOfRange.unless(
                horizonSeconds > 0 && horizonSeconds <= 86_400,
                "horizonSeconds",
                "must be above 0 and at most a day",
                horizonSeconds);
        OutOfRange.unless(
                distanceMetres >= 0 && distanceMetres <= 5e7,
                "distanceMetres",
                "must be from 0 to 50,000 km, once round the Earth and up and down",
                distanceMetres);
        transfers = List.copyOf(transfers);
        modes = List.copyOf(modes);
    }

    /** Returns the station at an end. */
    public StationDescription station(End end) {
        return end == End.NEAR ? near : far;
    }

    /** Returns whether every transfer accepts files with bytes that are wrong because no check noticed. */
    public boolean acceptsErrors() {
        return transfers.stream().allMatch(Transfer::acceptsErrors);
    }

    /** Returns how long a signal travels between the stations, in nanoseconds. */
    public long propagationNanos() {
        return Math.round(1e9 * distanceMetres / LIGHT_METRES_PER_SECOND);
    }

    /** Returns how far a signal travels in a time in nanoseconds, in metres. */
    public static double metresTravelled(long nanos) {
        return nanos / 1e9 * LIGHT_METRES_PER_SECOND;
    }

    /**
     * Returns this scenario with other transfers.
     *
     * @param otherTransfers what is sent instead, at least one
     * @param otherHorizonSeconds how long to watch, positive
     */
    public Scenario sending(List<Transfer> otherTransfers, double otherHorizonSeconds) {
        return new Scenario(
                name, title, seed, trials, otherHorizonSeconds, distanceMetres, otherTransfers, modes, near, far, sky);
    }

    /**
     * Returns this scenario with some of its modes.
     *
     * @param someModes at least one
     */
    public Scenario racing(List<Mode> someModes) {
        return new Scenario(
                name, title, seed, trials, horizonSeconds, distanceMetres, transfers, someModes, near, far, sky);
    }

    /**
     * Returns this scenario with a level that stays, the same at both ends, over its paths as each trial draws them, and nobody
     * else on the air.
     *
     * @param snrDb SNR of a full-power carrier in 3 kHz, in dB
     */
    public Scenario steadyAt(double snrDb) {
        return new Scenario(
                name,
                title,
                seed,
                trials,
                horizonSeconds,
                distanceMetres,
                transfers,
                modes,
                near,
                far,
                draws -> sky.conditions(draws).steadyAt(snrDb));
    }

    /**
     * Returns this scenario with another number of trials.
     *
     * @param otherTrials 1 or more
     */
    public Scenario tried(int otherTrials) {
        return new Scenario(
                name, title, seed, otherTrials, horizonSeconds, distanceMetres, transfers, modes, near, far, sky);
    }
}
