package org.ionohaul.study;

import java.util.function.IntPredicate;

/**
 * After how many trials a study looks whether its answers are exact enough: 400, then always a fifth more in whole
 * blocks of 50.
 *
 * <p>Each look is a chance to stop on a lucky streak. Few looks, and none before 400 trials, keep the intervals'
 * coverage close to what they say; the price is up to a fifth more trials than needed.
 */
final class SampleSizes {
    private static final int FIRST = 400;
    private static final int BLOCK = 50;

    private SampleSizes() {}

    /**
     * Returns the size at which sampling stops.
     *
     * @param isEnough asked at one size after the other whether so many trials are enough
     * @param most stops here in any case, 1 or more
     */
    static int stopAt(IntPredicate isEnough, int most) {
        int size = Math.min(FIRST, most);
        while (!isEnough.test(size) && size < most) {
            size = after(size, most);
        }
        return size;
    }

    private static int after(int size, int most) {
        // A fifth more, rounded up to whole blocks.
        long next = (size + size / 5L + BLOCK - 1) / BLOCK * BLOCK;
        return (int) Math.min(most, next);
    }
}
