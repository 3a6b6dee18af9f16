package org.ionohaul.channel;

import java.util.Arrays;
import java.util.function.LongFunction;
import org.apache.commons.rng.sampling.distribution.DiscreteSampler;
import org.apache.commons.rng.sampling.distribution.GeometricSampler;
import org.apache.commons.rng.sampling.distribution.PoissonSampler;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;

/**
 * Bursts of noise that strike one end in one trial: time is cut into slots; in each, independently, a number of bursts is
 * under way, and each adds the same power. Drawn in addressed blocks of slots.
 */
final class SlottedNoise {
    private static final int BLOCK_BITS = 12;
    private static final int BLOCK_SLOTS = 1 << BLOCK_BITS;
    private static final int KEPT_BLOCKS = 1024;

    /** Slots with at least one burst, in order, and how many each has. */
    private record Block(int[] struck, int[] bursts) {}

    private final double slotNanos;
    private final double power;
    private final BlockTable<Block> blocks;

    private SlottedNoise(double slotSeconds, double power, LongFunction<Block> block) {
        this.slotNanos = 1e9 * slotSeconds;
        this.power = power;
        this.blocks = new BlockTable<>(KEPT_BLOCKS, block);
    }

    /**
     * Returns the impulses of one end, drawn by the geometric gaps between them, so that rare ones cost little.
     *
     * @param element the end's part of the stream's address
     */
    static SlottedNoise impulses(ImpulsiveNoise noise, TrialStreams streams, int element) {
        double power = noise.probability() > 0 ? Decibels.toRatio(noise.riseDb()) - 1 : 0;
        return new SlottedNoise(noise.slotSeconds(), power, number -> {
            DiscreteSampler gap =
                    GeometricSampler.of(streams.openBlock(Purpose.IMPULSES, element, number), noise.probability());
            int[] struck = new int[BLOCK_SLOTS];
            int found = 0;
            for (long slot = gap.sample(); slot < BLOCK_SLOTS; slot += 1L + gap.sample()) {
                struck[found++] = (int) slot;
            }
            int[] once = new int[found];
            Arrays.fill(once, 1);
            return new Block(Arrays.copyOf(struck, found), once);
        });
    }

    /**
     * Returns the crashes of static at one end.
     *
     * @param element the end's part of the stream's address
     */
    static SlottedNoise crashes(AtmosphericNoise noise, TrialStreams streams, int element) {
        return new SlottedNoise(noise.crashSeconds(), noise.crashPower(), number -> {
            DiscreteSampler underWay =
                    PoissonSampler.of(streams.openBlock(Purpose.ATMOSPHERICS, element, number), noise.underWay());
            int[] struck = new int[BLOCK_SLOTS];
            int[] bursts = new int[BLOCK_SLOTS];
            int found = 0;
            for (int slot = 0; slot < BLOCK_SLOTS; slot++) {
                int now = underWay.sample();
                if (now > 0) {
                    struck[found] = slot;
                    bursts[found++] = now;
                }
            }
            return new Block(Arrays.copyOf(struck, found), Arrays.copyOf(bursts, found));
        });
    }

    /** Returns what the bursts of an instant add, over the noise floor. */
    double power(long atNanos) {
        if (power == 0) {
            return 0;
        }
        long slot = slot(atNanos);
        Block block = blocks.get(slot >> BLOCK_BITS);
        int place = Arrays.binarySearch(block.struck, (int) slot & (BLOCK_SLOTS - 1));
        return place < 0 ? 0 : power * block.bursts[place];
    }

    /**
     * Tells of all bursts in a stretch of time.
     *
     * @param toNanos its end, not included; later than its beginning
     * @param floor noise floor of the stretch, over the reference in which bursts are told
     */
    void tell(long fromNanos, long toNanos, double floor, NoiseBursts bursts) {
        if (power == 0) {
            return;
        }
        long last = slot(toNanos - 1);
        for (long number = slot(fromNanos) >> BLOCK_BITS; number <= last >> BLOCK_BITS; number++) {
            Block block = blocks.get(number);
            long first = number << BLOCK_BITS;
            int found = Arrays.binarySearch(block.struck, (int) Math.max(0, slot(fromNanos) - first));
            for (int i = found < 0 ? -found - 1 : found;
                    i < block.struck.length && first + block.struck[i] <= last;
                    i++) {
                double begin = (first + block.struck[i]) * slotNanos;
                double overlap = Math.min((double) toNanos, begin + slotNanos) - Math.max((double) fromNanos, begin);
                double share = Math.max(0, overlap) / (toNanos - fromNanos);
                bursts.add(floor * power * block.bursts[i], share, slotNanos / 1e9);
            }
        }
    }

    private long slot(long atNanos) {
        return (long) Math.floor(atNanos / slotNanos);
    }
}
