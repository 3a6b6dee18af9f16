package org.ionohaul.channel;

import org.ionohaul.limits.OutOfRange;

/**
 * Impulsive noise over the Gaussian floor, Bernoulli-Gauss: time is cut into slots; in each, independently, an impulse
 * raises the noise with a fixed probability. The impulses come on top of the floor: with probability p and a rise of g
 * (as a ratio) the mean noise power is 1 + p (g - 1) times the floor.
 *
 * <p>No source gives values for a given place; what people report from mains and fences is a hundredth to a tenth of the
 * slots, 10 to 30 dB, 1 to 20 ms (common practice, no source).
 *
 * @param probability share of slots with an impulse, from 0 (none) to 1
 * @param riseDb by how much an impulse raises the noise power of its slot, in dB, zero or more
 * @param slotSeconds length of a slot, 0.1 ms or more: a receiver 3 kHz wide rings for longer than that
 */
public record ImpulsiveNoise(double probability, double riseDb, double slotSeconds) {
    private static final double SHORTEST_SLOT_SECONDS = 1e-4;

    /** No impulses. */
    public static final ImpulsiveNoise NONE = new ImpulsiveNoise(0, 0, 1);

    /** Checks every value. */
    public ImpulsiveNoise {
        OutOfRange.unless(probability >= 0 && probability <= 1, "probability", "must be from 0 to 1", probability);
        OutOfRange.unless(riseDb >= 0 && riseDb < 100, "riseDb", "must be from 0 to 100", riseDb);
        OutOfRange.unless(
                slotSeconds >= SHORTEST_SLOT_SECONDS && slotSeconds < 1e4,
                "slotSeconds",
                "must be 0.1 ms or more",
                slotSeconds);
    }
}
