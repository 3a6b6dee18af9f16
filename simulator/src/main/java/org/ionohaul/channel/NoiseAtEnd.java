package org.ionohaul.channel;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;

/** What disturbs reception at one end in one trial: the floor over the clock, impulses, other stations. */
final class NoiseAtEnd {
    private final Level floor;
    private final Impulses impulses;
    private final Occupancy occupancy;

    NoiseAtEnd(End end, EndConditions conditions, TrialStreams streams) {
        int element = end == End.NEAR ? 0 : 1;
        this.floor = new Level(
                conditions.noiseRiseDb(),
                SlowVariation.NONE,
                streams.openBlock(Purpose.SLOW_VARIATION, 1 + element, 0));
        this.impulses = new Impulses(conditions.impulses(), streams, element);
        this.occupancy = new Occupancy(visits(conditions.interference(), streams, element));
    }

    /** Returns the noise power without other stations, relative to the floor when the trial begins. */
    double noise(long atNanos) {
        return floor(atNanos) * impulses.rise(atNanos);
    }

    /** Returns the noise floor without impulses, relative to the floor when the trial begins. */
    double floor(long atNanos) {
        return floor.ratio(atNanos);
    }

    /** Returns the length of an impulse in nanoseconds, {@code Long.MAX_VALUE} where there are none. */
    long steadyNanos() {
        return impulses.slotNanos();
    }

    /** Returns all that disturbs reception in 3 kHz, relative to the floor when the trial begins. */
    double disturbance(long atNanos) {
        return noise(atNanos) + others(atNanos);
    }

    /** Returns the power of other stations together, relative to the floor when the trial begins. */
    double others(long atNanos) {
        double power = 0;
        for (Over over : occupancy.on(occupancy.spanAt(atNanos))) {
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
