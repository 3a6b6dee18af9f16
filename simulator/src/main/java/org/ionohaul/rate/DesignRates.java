package org.ionohaul.rate;

import java.util.List;

/**
 * What the makers of a mode know of its data rates and can build into a rate policy; nothing of it depends on the sky.
 *
 * @param cleanBytesPerSecond the payload that undisturbed cycles of each data rate bring, in bytes a second, data rate 1 first
 * @param curves the data rates' frame loss on a steady path
 */
public record DesignRates(List<Double> cleanBytesPerSecond, LossCurves curves) {
    /** Copies the list and checks that both tell of the same data rates. */
    public DesignRates {
        cleanBytesPerSecond = List.copyOf(cleanBytesPerSecond);
        if (cleanBytesPerSecond.size() != curves.dataRateCount()) {
            throw new IllegalArgumentException("clean rates of " + cleanBytesPerSecond.size()
                    + " data rates do not go with curves of " + curves.dataRateCount());
        }
    }

    /** Returns the number of data rates. */
    public int dataRateCount() {
        return cleanBytesPerSecond.size();
    }

    /** Returns the payload that undisturbed cycles of a data rate, counted from 1, bring, in bytes a second. */
    public double cleanBytesPerSecond(int dataRate) {
        return cleanBytesPerSecond.get(dataRate - 1);
    }
}
