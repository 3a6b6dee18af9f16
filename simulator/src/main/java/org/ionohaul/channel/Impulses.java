package org.ionohaul.channel;

import java.util.BitSet;
import org.apache.commons.rng.sampling.distribution.DiscreteSampler;
import org.apache.commons.rng.sampling.distribution.GeometricSampler;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;

/**
 * When impulses strike one end in one trial: in each slot independently with the same probability. Drawn in addressed
 * blocks of slots by the geometric gaps between impulses, so that rare impulses cost little.
 */
final class Impulses {
    private static final int BLOCK_BITS = 12;
    private static final int BLOCK_SLOTS = 1 << BLOCK_BITS;
    private static final int KEPT_BLOCKS = 1024;

    private final ImpulsiveNoise noise;
    private final TrialStreams streams;
    private final int element;
    private final double slotsPerNano;
    private final double rise;
    private final BlockTable<BitSet> blocks = new BlockTable<>(KEPT_BLOCKS, this::block);

    /**
     * Prepares the impulses of one end.
     *
     * @param element the end's part of the stream's address
     */
    Impulses(ImpulsiveNoise noise, TrialStreams streams, int element) {
        this.noise = noise;
        this.streams = streams;
        this.element = element;
        this.slotsPerNano = 1e-9 / noise.slotSeconds();
        this.rise = Decibels.toRatio(noise.riseDb());
    }

    /** Returns by what factor an impulse raises the noise at an instant; 1 when there is none. */
    double rise(long atNanos) {
        return noise.probability() > 0 && strike(atNanos) ? rise : 1;
    }

    /** Returns the length of a slot in nanoseconds, {@code Long.MAX_VALUE} where no impulse ever strikes. */
    long slotNanos() {
        return noise.probability() > 0 ? Math.round(1e9 * noise.slotSeconds()) : Long.MAX_VALUE;
    }

    private boolean strike(long atNanos) {
        long slot = (long) Math.floor(atNanos * slotsPerNano);
        return blocks.get(slot >> BLOCK_BITS).get((int) slot & (BLOCK_SLOTS - 1));
    }

    private BitSet block(long number) {
        BitSet struck = new BitSet(BLOCK_SLOTS);
        DiscreteSampler gap =
                GeometricSampler.of(streams.openBlock(Purpose.IMPULSES, element, number), noise.probability());
        for (long slot = gap.sample(); slot < BLOCK_SLOTS; slot += 1L + gap.sample()) {
            struck.set((int) slot);
        }
        return struck;
    }
}
