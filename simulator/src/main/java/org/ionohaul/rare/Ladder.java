package org.ionohaul.rare;

import java.util.List;

/**
 * The scores at which trials are split, and into how many.
 *
 * @param levels rising, the last one infinite: that of what is rare
 * @param copies into how many a trial that reached the level before is split to reach each level, 1 or more; 1 for the first level
 */
public record Ladder(List<Double> levels, List<Integer> copies) {
    /** Copies the lists and checks them. */
    public Ladder {
        levels = List.copyOf(levels);
        copies = List.copyOf(copies);
        if (levels.isEmpty() || levels.size() != copies.size() || levels.get(levels.size() - 1) < Double.MAX_VALUE) {
            throw new IllegalArgumentException("no ladder to what is rare: " + levels + ", " + copies);
        }
    }

    /** Returns how much one trial on the last level counts, above 0, at most 1. */
    double weight() {
        return copies.stream().mapToDouble(it -> 1.0 / it).reduce(1, (a, b) -> a * b);
    }
}
