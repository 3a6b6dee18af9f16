package org.ionohaul.trace;

import java.util.List;

/**
 * Time running down a picture, each second equally long, but for folds, which are all equally long.
 *
 * @param folds in order of time
 * @param top where it begins, in pixels
 * @param perSecond pixels a second outside of folds
 */
record FoldedClock(List<Fold> folds, double top, double perSecond) {
    /** How long a fold is, in pixels. */
    static final double FOLD = 40;

    /** Copies the list. */
    FoldedClock {
        folds = List.copyOf(folds);
    }

    /** Returns the pixel of an instant. */
    double at(long nanos) {
        double y = top;
        long reached = 0;
        for (Fold fold : folds) {
            if (nanos <= fold.fromNanos()) {
                break;
            }
            y += (fold.fromNanos() - reached) * 1e-9 * perSecond;
            double share = Math.min(1, (double) (nanos - fold.fromNanos()) / (fold.untilNanos() - fold.fromNanos()));
            y += share * FOLD;
            reached = Math.min(nanos, fold.untilNanos());
        }
        return y + (nanos - reached) * 1e-9 * perSecond;
    }

    /** Returns whether an instant lies within a fold. */
    boolean isFolded(long nanos) {
        return folds.stream().anyMatch(it -> nanos > it.fromNanos() && nanos < it.untilNanos());
    }
}
