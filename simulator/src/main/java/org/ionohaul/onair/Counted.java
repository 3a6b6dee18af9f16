package org.ionohaul.onair;

import java.util.Arrays;
import java.util.List;

/** Counts how often each mode is named. */
final class Counted {
    private final int[] counts;

    Counted(int modes) {
        counts = new int[modes];
    }

    void add(int named) {
        if (named != Rule.NOBODY) {
            counts[named]++;
        }
    }

    List<Integer> counts() {
        return Arrays.stream(counts).boxed().toList();
    }
}
