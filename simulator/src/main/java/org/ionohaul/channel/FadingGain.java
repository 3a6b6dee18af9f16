package org.ionohaul.channel;

import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;

/**
 * Gain of a path that fades: a stationary complex Gaussian process with a Gaussian Doppler spectrum, made from addressed
 * blocks of white noise by {@link GaussianKernel}. A pure function of time that never repeats; the blocks used lately are
 * kept.
 */
final class FadingGain implements PathGain {
    private static final int BLOCK_BITS = 9;
    private static final int BLOCK_POINTS = 1 << BLOCK_BITS;
    /** Hours of a session, which several modes go through one after the other. */
    static final int MANY_BLOCKS = 512;

    private static final int POINTS_BEFORE = GaussianKernel.POINTS / 2 - 1;

    private final TrialStreams streams;
    private final int path;
    private final double pointsPerNano;
    private final BlockTable<double[]> blocks;
    private long blockNumber;
    private double[] noise;

    /**
     * Prepares the gain of one path.
     *
     * @param dopplerSpreadHz Doppler spread in Hz (2 sigma), positive
     * @param path the path's number, its part of the stream's address
     */
    FadingGain(double dopplerSpreadHz, TrialStreams streams, int path) {
        this(dopplerSpreadHz, streams, path, MANY_BLOCKS);
    }

    /**
     * Prepares the gain of one path.
     *
     * @param keptBlocks how many blocks of noise are kept, a power of two; each takes 8 kB
     */
    FadingGain(double dopplerSpreadHz, TrialStreams streams, int path, int keptBlocks) {
        this.streams = streams;
        this.path = path;
        this.blocks = new BlockTable<>(keptBlocks, this::block);
        this.pointsPerNano = 1e-9 / GaussianKernel.stepSeconds(dopplerSpreadHz);
        this.noise = blocks.get(blockNumber);
    }

    @Override
    public void at(long atNanos, double[] gains, int number) {
        double instant = atNanos * pointsPerNano;
        double point = Math.floor(instant);
        long first = (long) point - POINTS_BEFORE;
        if (first >> BLOCK_BITS != blockNumber) {
            blockNumber = first >> BLOCK_BITS;
            noise = blocks.get(blockNumber);
        }
        GaussianKernel.apply(noise, 2 * ((int) first & (BLOCK_POINTS - 1)), instant - point, gains, number);
    }

    /** Returns a block's noise, followed by the first points of the next block that its last instants need. */
    private double[] block(long number) {
        double[] block = new double[2 * (BLOCK_POINTS + GaussianKernel.POINTS - 1)];
        draw(block, 0, 2 * BLOCK_POINTS, number);
        draw(block, 2 * BLOCK_POINTS, block.length, number + 1);
        return block;
    }

    private void draw(double[] block, int from, int to, long number) {
        var normal = ZigguratSampler.NormalizedGaussian.of(streams.openBlock(Purpose.FADING, path, number));
        for (int i = from; i < to; i++) {
            block[i] = normal.sample() * Math.sqrt(0.5);
        }
    }
}
