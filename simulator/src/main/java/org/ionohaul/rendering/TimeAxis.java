package org.ionohaul.rendering;

import java.util.List;

/**
 * The axis of time of a picture, in minutes or seconds after pressing send.
 *
 * @param unit what it counts in
 * @param end where it ends, in that unit
 * @param step the distance of its marks
 * @param deadlines the deadlines that lie on it
 */
public record TimeAxis(String unit, double end, double step, List<Deadline> deadlines) {
    private static final int MOST_MARKS = 7;

    /**
     * A deadline on the axis.
     *
     * @param label what people call it
     * @param at where it lies, in the axis's unit
     */
    public record Deadline(String label, double at) {}

    /** Returns the axis of a scale, with those of the deadlines that lie on it. */
    public static TimeAxis of(TimeScale scale, List<Double> deadlinesSeconds) {
        return new TimeAxis(
                scale.unit(),
                scale.inUnit(scale.endSeconds()),
                scale.inUnit(scale.marksSeconds(MOST_MARKS).get(1)),
                deadlinesSeconds.stream()
                        .filter(it -> it <= scale.endSeconds())
                        .map(it -> new Deadline(TimeText.given(it), scale.inUnit(it)))
                        .toList());
    }
}
