package org.ionohaul.rendering;

import java.util.List;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Tick;

/**
 * The axis of time of a picture, in minutes or seconds after pressing send.
 *
 * @param unit what it counts in
 * @param end where it ends, in that unit
 * @param step the distance of its marks
 * @param deadlines the deadlines that lie on it
 * @param beyond what people call those that lie beyond its end
 */
public record TimeAxis(String unit, double end, double step, List<Deadline> deadlines, List<String> beyond) {
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
                        .toList(),
                deadlinesSeconds.stream()
                        .filter(it -> it > scale.endSeconds())
                        .map(TimeText::given)
                        .toList());
    }

    /** Returns the scale between two pixels. */
    public Scale scale(double from, double to) {
        return Scale.linear(0, end, from, to);
    }

    /** Returns its marks. */
    public List<Tick> ticks() {
        return scale(0, 1).marks(step, Scale::number);
    }

    /** Returns its name. */
    public String name() {
        return unit + " after pressing send";
    }

    /** Returns what is to be told of deadlines that are not seen; empty if there is none. */
    public String beyondWords() {
        return beyond.isEmpty() ? "" : String.join(", ", beyond) + ": beyond the right edge";
    }
}
