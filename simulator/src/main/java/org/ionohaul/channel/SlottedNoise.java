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

    private final double slotNanos;
    private final double power;
    private final BlockTable<Struck> blocks;

    private SlottedNoise(double slotSeconds, double power, LongFunction<byte[]> block) {
        this.slotNanos = 1e9 * slotSeconds;
        this.power = power;
        this.blocks = new BlockTable<>(KEPT_BLOCKS, number -> Struck.of(block.apply(number)));
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
            byte[] bursts = new byte[BLOCK_SLOTS];
            for (long slot = gap.sample(); slot < BLOCK_SLOTS; slot += 1L + gap.sample()) {
                bursts[(int) slot] = 1;
            }
            return bursts;
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
            byte[] bursts = new byte[BLOCK_SLOTS];
            for (int slot = 0; slot < BLOCK_SLOTS; slot++) {
                bursts[slot] = (byte) underWay.sample();
            }
            return bursts;
        });
    }

    /** Returns what the bursts of an instant add, over the noise floor. */
    double power(long atNanos) {
        if (power == 0) {
            return 0;
        }
        long slot = slot(atNanos);
        return power * blocks.get(slot >> BLOCK_BITS).bursts(place(slot));
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
        for (long slot = slot(fromNanos); slot <= last; slot = (slot | BLOCK_SLOTS - 1) + 1) {
            Struck struck = blocks.get(slot >> BLOCK_BITS);
            long first = slot - place(slot);
            for (int i = struck.indexFrom(place(slot));
                    i < struck.places.length && first + struck.places[i] <= last;
                    i++) {
                double begin = (first + struck.places[i]) * slotNanos;
                double overlap = Math.min((double) toNanos, begin + slotNanos) - Math.max((double) fromNanos, begin);
                double share = Math.max(0, overlap) / (toNanos - fromNanos);
                bursts.add(floor * power * struck.bursts[i], share, slotNanos / 1e9);
            }
        }
    }

    private static int place(long slot) {
        return (int) slot & (BLOCK_SLOTS - 1);
    }

    private long slot(long atNanos) {
        return (long) Math.floor(atNanos / slotNanos);
    }

    /** The slots of a block that bursts strike, mostly few. */
    private static final class Struck {
        /** Their places in the block, rising. */
        private final short[] places;
        /** How many bursts are under way in each of them. */
        private final byte[] bursts;

        private Struck(short[] places, byte[] bursts) {
            this.places = places;
            this.bursts = bursts;
        }

        static Struck of(byte[] block) {
            short[] places = new short[block.length];
            byte[] bursts = new byte[block.length];
            int count = 0;
            for (int place = 0; place < block.length; place++) {
                if (block[place] > 0) {
                    places[count] = (short) place;
                    bursts[count] = block[place];
                    count++;
                }
            }
            return new Struck(Arrays.copyOf(places, count), Arrays.copyOf(bursts, count));
        }

        /** Returns the index of the first that is struck at a place or after it. */
        int indexFrom(int place) {
            int found = Arrays.binarySearch(places, (short) place);
            return found >= 0 ? found : -found - 1;
        }

        /** Returns how many bursts are under way at a place. */
        int bursts(int place) {
            int found = Arrays.binarySearch(places, (short) place);
            return found >= 0 ? bursts[found] : 0;
        }
    }
}
