package org.ionohaul.channel;

import java.util.List;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;

/**
 * Everything that one trial's channel holds: the fading of every path, the ground wave, the slow variation, the trend and
 * the spells of the level, and at each end the noise, the impulses and the other stations.
 *
 * <p>A pure function of (conditions, streams, time): asked at any instant, in any order, by any number of modes, it
 * answers the same. Both directions share the path gains, the slow variation and the trend (reciprocity), but for what was
 * measured at an end; noise and interference belong to each end. What was drawn is kept, so an instance belongs to one thread. It schedules nothing.
 */
public final class Sky {
    /** Of many skies whose stations go forward in time together each needs to remember the last minutes only. */
    private static final int FEW_BLOCKS = 16;

    private final SkyConditions conditions;
    private final PathGain[] gains;
    private final SkyWaveLevel nearLevel;
    private final SkyWaveLevel farLevel;
    private final NoiseAtEnd near;
    private final NoiseAtEnd far;

    /** Prepares the sky of one trial. */
    public Sky(SkyConditions conditions, TrialStreams streams) {
        this(conditions, streams, streams, FadingGain.MANY_BLOCKS);
    }

    /**
     * Prepares one of several skies of a trial, all of which end at the same far station.
     *
     * @param streams chance of the path and of what disturbs its near end
     * @param farStreams chance of what disturbs the far end, the same for all
     */
    public Sky(SkyConditions conditions, TrialStreams streams, TrialStreams farStreams) {
        this(conditions, streams, farStreams, FEW_BLOCKS);
    }

    private Sky(SkyConditions conditions, TrialStreams streams, TrialStreams farStreams, int keptBlocks) {
        this.conditions = conditions;
        List<PropagationPath> paths = conditions.paths();
        int first = conditions.groundWave().isPresent() ? 1 : 0;
        this.gains = new PathGain[first + paths.size()];
        for (int i = 0; i < paths.size(); i++) {
            gains[first + i] = gain(paths.get(i), streams, i, keptBlocks);
        }
        if (first > 0) {
            gains[0] = new SteadyGain(streams.open(Purpose.GROUND_WAVE, 0));
        }
        SpellTimes dropOuts = new SpellTimes(conditions.dropOuts(), streams.openBlock(Purpose.SPELLS, 0, 0));
        SpellTimes sporadicE = new SpellTimes(conditions.sporadicE(), streams.openBlock(Purpose.SPELLS, 1, 0));
        Level stated = statedLevel(conditions, streams);
        this.nearLevel = new SkyWaveLevel(level(End.NEAR, conditions, stated, streams), dropOuts, sporadicE);
        this.farLevel = new SkyWaveLevel(level(End.FAR, conditions, stated, streams), dropOuts, sporadicE);
        this.near = new NoiseAtEnd(End.NEAR, conditions.near(), streams);
        this.far = new NoiseAtEnd(End.FAR, conditions.far(), farStreams);
    }

    /** Where an end's level was measured, both share a grid, so that they share the slow variation. */
    private static Level statedLevel(SkyConditions conditions, TrialStreams streams) {
        return new Level(Level.stated(
                conditions.trendDb(),
                conditions.slowVariation(),
                stepSeconds(conditions),
                streams.openBlock(Purpose.SLOW_VARIATION, 0, 0)));
    }

    private static double stepSeconds(SkyConditions conditions) {
        boolean isScheduled = !conditions.trendDb().points().isEmpty()
                || conditions.near().measured().isPresent()
                || conditions.far().measured().isPresent();
        return Level.stepSeconds(isScheduled, conditions.slowVariation());
    }

    private static Level level(End end, SkyConditions conditions, Level stated, TrialStreams streams) {
        double spellsDb = Decibels.ofRatio(
                conditions.dropOuts().meanRatio() * conditions.sporadicE().meanRatio());
        return conditions
                .at(end)
                .measured()
                .map(it -> new Level(
                        new MeasuredGrid(it, conditions.slowVariation(), stepSeconds(conditions), spellsDb, streams)))
                .orElse(stated);
    }

    /**
     * Returns how an end hears the other through a passband.
     *
     * @param receiver the end that listens
     */
    public Reception reception(End receiver, Passband passband) {
        return transferTo(receiver, passband.cutFor(conditions.arrivals()));
    }

    /** Returns the same as {@link #reception}, through the passband as it is cut; it also tells its power transfer. */
    SkyReception transferTo(End receiver, Passband passband) {
        EndConditions end = conditions.at(receiver);
        return new SkyReception(
                conditions, end.snrDb(), level(receiver), noise(receiver), end.gainControl(), gains, passband);
    }

    /** Returns the gain of the path with the given number. */
    static PathGain gain(PropagationPath path, TrialStreams streams, int number) {
        return gain(path, streams, number, FadingGain.MANY_BLOCKS);
    }

    private static PathGain gain(PropagationPath path, TrialStreams streams, int number, int keptBlocks) {
        PathGain gain = path.dopplerSpreadHz() > 0
                ? new FadingGain(path.dopplerSpreadHz(), streams, number, keptBlocks)
                : new SteadyGain(streams.open(Purpose.FADING, number));
        return path.dopplerShiftHz() == 0 ? gain : new ShiftedGain(gain, path.dopplerShiftHz());
    }

    /**
     * Returns whether a listener hears other stations on the frequency: whether their power together, in 3 kHz, exceeds
     * the noise floor of the moment.
     *
     * @param listener the end that listens
     * @param atNanos the instant, in nanoseconds since the trial began, zero or more
     * @param overFloorDb by how much it must exceed the floor, in dB
     */
    public boolean isOccupied(End listener, long atNanos, double overFloorDb) {
        NoiseAtEnd noise = noise(listener);
        return noise.others(atNanos) > noise.floor(atNanos) * Decibels.toRatio(overFloorDb);
    }

    /**
     * Returns whether a listener hears other stations on the frequency without a break.
     *
     * @param listener the end that listens
     * @param fromNanos since when, in nanoseconds since the trial began, zero or more
     * @param untilNanos until when, included, no earlier
     * @param overFloorDb by how much they must exceed the floor, in dB; looked at whenever one of them comes or goes
     */
    public boolean isOccupied(End listener, long fromNanos, long untilNanos, double overFloorDb) {
        Occupancy occupancy = noise(listener).occupancy();
        for (long atNanos = fromNanos; atNanos < untilNanos; atNanos = occupancy.endNanos(occupancy.spanAt(atNanos))) {
            if (!isOccupied(listener, atNanos, overFloorDb)) {
                return false;
            }
        }
        return isOccupied(listener, untilNanos, overFloorDb);
    }

    SkyConditions conditions() {
        return conditions;
    }

    /** Returns the gains of all paths as they arrive, the ground wave's first if there is one. */
    PathGain[] gains() {
        return gains;
    }

    NoiseAtEnd noise(End end) {
        return end == End.NEAR ? near : far;
    }

    /** Returns what trend or readings, slow variation, drop-outs and sporadic E do to the sky wave's level at an end. */
    SkyWaveLevel level(End end) {
        return end == End.NEAR ? nearLevel : farLevel;
    }
}
