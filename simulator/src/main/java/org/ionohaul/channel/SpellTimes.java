package org.ionohaul.channel;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * When spells are on in one trial. Drawn in order of time and once, as far as anybody asked, so the order of asking changes
 * nothing. With exponential lengths what is left of the state at the beginning is exponential too, so the start is stationary.
 */
final class SpellTimes {
    private final Spells spells;
    private final ZigguratSampler.Exponential exponential;
    private final double ratio;
    private final boolean isOnAtFirst;
    private long[] changeNanos = new long[16];
    private int known;

    /**
     * Prepares the times.
     *
     * @param chance their own stream
     */
    SpellTimes(Spells spells, UniformRandomProvider chance) {
        this.spells = spells;
        this.ratio = Decibels.toRatio(spells.changeDb());
        this.isOnAtFirst = chance.nextDouble() < spells.share();
        this.exponential = ZigguratSampler.Exponential.of(chance);
        learn(0);
    }

    /** Returns by what factor the level is changed at an instant, zero or later. */
    double ratio(long atNanos) {
        return isOn(atNanos) ? ratio : 1;
    }

    /** Returns whether there is a spell at an instant, zero or later. */
    boolean isOn(long atNanos) {
        if (spells.changeDb() == 0) {
            return false;
        }
        while (changeNanos[known - 1] <= atNanos) {
            learn(changeNanos[known - 1]);
        }
        int found = Arrays.binarySearch(changeNanos, 0, known, atNanos);
        int changesBefore = found >= 0 ? found + 1 : -found - 1;
        return changesBefore % 2 == 0 == isOnAtFirst;
    }

    private void learn(long lastNanos) {
        if (known == changeNanos.length) {
            changeNanos = Arrays.copyOf(changeNanos, 2 * known);
        }
        boolean isOn = known % 2 == 0 == isOnAtFirst;
        double meanSeconds = isOn ? spells.lengthSeconds() : spells.betweenSeconds();
        changeNanos[known++] = lastNanos + 1 + Math.round(1e9 * meanSeconds * exponential.sample());
    }
}
