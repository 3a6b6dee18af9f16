package org.ionohaul.channel;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;

/** What disturbs reception at one end in one trial: the floor over the clock, impulses, other stations. */
final class NoiseAtEnd {
    private final Level floor;
    private final double between;
    private final SlottedNoise impulses;
    private final SlottedNoise crashes;
    private final Occupancy occupancy;

    NoiseAtEnd(End end, EndConditions conditions, TrialStreams streams) {
        int element = end == End.NEAR ? 0 : 1;
        this.floor = new Level(
                conditions.noiseRiseDb(),
                SlowVariation.NONE,
                streams.openBlock(Purpose.SLOW_VARIATION, 1 + element, 0));
        this.between = conditions.atmospherics().between();
        this.impulses = SlottedNoise.impulses(conditions.impulses(), streams, element);
        this.crashes = SlottedNoise.crashes(conditions.atmospherics(), streams, element);
        this.occupancy = new Occupancy(visits(conditions.interference(), streams, element));
    }

    /** Returns the noise power without other stations, relative to the floor when the trial begins. */
    double noise(long atNanos) {
        return floor(atNanos) * (between + impulses.power(atNanos) + crashes.power(atNanos));
    }

    /** Returns the noise between impulses and crashes, relative to the floor when the trial begins. */
    double between(long atNanos) {
        return floor(atNanos) * between;
    }

    /** Tells of the impulses and crashes in a stretch of time, not empty; powers as those of the noise. */
    void bursts(long fromNanos, long toNanos, NoiseBursts bursts) {
        double floor = floor(fromNanos + (toNanos - fromNanos) / 2);
        impulses.tell(fromNanos, toNanos, floor, bursts);
        crashes.tell(fromNanos, toNanos, floor, bursts);
    }

    /** Returns the mean noise power without impulses, relative to the floor when the trial begins. */
    double floor(long atNanos) {
        return floor.ratio(atNanos);
    }

    /** Returns all that disturbs reception in 3 kHz, relative to the floor when the trial begins. */
    double disturbance(long atNanos) {
        return noise(atNanos) + others(atNanos);
    }

    /** Returns the power of other stations together, relative to the floor when the trial begins. */
    double others(long atNanos) {
        return othersIn(occupancy.spanAt(atNanos));
    }

    /** Returns the same during a span of the occupancy. */
    double othersIn(int span) {
        double power = 0;
        for (Over over : occupancy.on(span)) {
            power += over.power();
        }
        return power;
    }

    Occupancy occupancy() {
        return occupancy;
    }

    private static List<Visits> visits(List<Interference> populations, TrialStreams streams, int end) {
        List<Visits> visits = new ArrayList<>();
        for (int i = 0; i < populations.size(); i++) {
            if (populations.get(i).visitsPerHour() > 0) {
                visits.add(new Visits(populations.get(i), streams.open(Purpose.INTERFERENCE, 2 * i + end)));
            }
        }
        return visits;
    }
}
