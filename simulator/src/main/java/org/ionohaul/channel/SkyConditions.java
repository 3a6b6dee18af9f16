package org.ionohaul.channel;

import java.util.List;
import java.util.Optional;

/**
 * Everything that is fixed about one trial's sky before its random processes run.
 *
 * @param paths the paths of the sky wave, at least one; powers are relative, their sum is normalised to 1
 * @param slowVariation slow variation of the median level, shared by both directions
 * @param trendDb change of the path's median level over the clock, in dB, shared by both directions
 * @param near what the near end receives
 * @param far what the far end receives
 * @param dropOuts times at which the sky wave drops out
 * @param sporadicE times at which sporadic E carries it
 * @param nearFrequency by how much the near station's frequency lies off, for sending and for receiving
 * @param farFrequency by how much that of the far station does
 * @param groundWave the wave along the ground, whose level comes on top of that of the sky wave; empty where none is heard
 */
public record SkyConditions(
        List<PropagationPath> paths,
        SlowVariation slowVariation,
        Schedule trendDb,
        EndConditions near,
        EndConditions far,
        Spells dropOuts,
        Spells sporadicE,
        FrequencyError nearFrequency,
        FrequencyError farFrequency,
        Optional<GroundWave> groundWave) {
    /** Copies the list and checks that there is a path. */
    public SkyConditions {
        paths = List.copyOf(paths);
        if (paths.isEmpty()) {
            throw new IllegalArgumentException("paths must not be empty");
        }
    }

    /** Makes a sky of a sky wave without spells, between stations on one frequency. */
    public SkyConditions(
            List<PropagationPath> paths,
            SlowVariation slowVariation,
            Schedule trendDb,
            EndConditions near,
            EndConditions far) {
        this(
                paths,
                slowVariation,
                trendDb,
                near,
                far,
                Spells.NONE,
                Spells.NONE,
                FrequencyError.NONE,
                FrequencyError.NONE,
                Optional.empty());
    }

    /** Returns by how much the frequencies of the stations differ at an instant, in Hz, whichever is the higher. */
    public double frequencyErrorHz(long atNanos) {
        return Math.abs(nearFrequency.hertzAt(atNanos) - farFrequency.hertzAt(atNanos));
    }

    /** Returns all paths as they arrive: the ground wave first, if there is one, then those of the sky wave. */
    public List<PropagationPath> arrivals() {
        return groundWave.map(it -> it.before(paths)).orElse(paths);
    }

    /** Returns what the given end receives. */
    public EndConditions at(End end) {
        return end == End.NEAR ? near : far;
    }

    /**
     * Returns these conditions for a trial that begins later.
     *
     * @param seconds by how much later, in seconds; may be negative
     */
    public SkyConditions startingAfter(double seconds) {
        return new SkyConditions(
                paths,
                slowVariation,
                trendDb.startingAfter(seconds),
                near.startingAfter(seconds),
                far.startingAfter(seconds),
                dropOuts,
                sporadicE,
                nearFrequency.startingAfter(seconds),
                farFrequency.startingAfter(seconds),
                groundWave);
    }

    /**
     * Returns these conditions with a stronger signal, at all times and in both directions.
     *
     * @param db how much more of the signal arrives, in dB; may be negative
     */
    public SkyConditions raisedBy(double db) {
        return withEnds(near.withSnr(near.snrDb() + db), far.withSnr(far.snrDb() + db));
    }

    /**
     * Returns the paths of these conditions, and the stations' frequencies, with a level that stays, the same at both ends, and
     * nothing but a Gaussian floor.
     *
     * @param snrDb median SNR in 3 kHz, in dB
     */
    public SkyConditions steadyAt(double snrDb) {
        return new SkyConditions(
                paths,
                SlowVariation.NONE,
                Schedule.NONE,
                EndConditions.quiet(snrDb),
                EndConditions.quiet(snrDb),
                Spells.NONE,
                Spells.NONE,
                nearFrequency,
                farFrequency,
                Optional.empty());
    }

    /**
     * Returns these conditions with another level at one end.
     *
     * @param end the end
     * @param snrDb median SNR there when the trial begins, trend and schedules counted, in dB
     */
    public SkyConditions withSnrAtStart(End end, double snrDb) {
        EndConditions other = at(end).withSnr(
                        snrDb - changeDb(end).levelDb(0) + at(end).noiseRiseDb().levelDb(0));
        return end == End.NEAR ? withEnds(other, far) : withEnds(near, other);
    }

    private SkyConditions withEnds(EndConditions otherNear, EndConditions otherFar) {
        return new SkyConditions(
                paths,
                slowVariation,
                trendDb,
                otherNear,
                otherFar,
                dropOuts,
                sporadicE,
                nearFrequency,
                farFrequency,
                groundWave);
    }

    /** Returns by how much the signal at an end lies above the one stated, over the clock, in dB: as measured there, or the trend. */
    public Schedule changeDb(End end) {
        return at(end).measured().map(MeasuredLevel::changeDb).orElse(trendDb);
    }

    /**
     * Returns the median SNR at an end when the trial begins, trend and schedules counted, in dB.
     *
     * @param end the end
     */
    public double snrAtStartDb(End end) {
        return at(end).snrDb()
                + changeDb(end).levelDb(0)
                - at(end).noiseRiseDb().levelDb(0);
    }

    /**
     * Returns the width (2 sigma) in Hz of the Doppler spectrum of all paths together, weighed by power: the variance within
     * the paths and that between them.
     */
    public double dopplerSpreadHz() {
        List<PropagationPath> arrivals = arrivals();
        double[] shares = PropagationPath.shares(arrivals);
        double shiftHz = 0;
        double square = 0;
        for (int i = 0; i < shares.length; i++) {
            PropagationPath path = arrivals.get(i);
            double halfSpreadHz = path.dopplerSpreadHz() / 2;
            shiftHz += shares[i] * path.dopplerShiftHz();
            square += shares[i] * (halfSpreadHz * halfSpreadHz + path.dopplerShiftHz() * path.dopplerShiftHz());
        }
        return 2 * Math.sqrt(Math.max(0, square - shiftHz * shiftHz));
    }

    /** Returns the widest Doppler spread of a single path (2 sigma), in Hz. */
    public double widestDopplerSpreadHz() {
        return paths.stream()
                .mapToDouble(PropagationPath::dopplerSpreadHz)
                .max()
                .orElseThrow();
    }
}
