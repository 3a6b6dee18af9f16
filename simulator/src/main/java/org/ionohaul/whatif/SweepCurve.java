package org.ionohaul.whatif;

import java.util.List;
import org.ionohaul.rendering.ChartRecord;

/**
 * How a measure runs over the values of one key: a line a mode, with the band of its uncertainty.
 *
 * @param axis the lying axis
 * @param height the upright axis
 * @param modes a line a mode; shorter than the axis when it was interrupted
 */
record SweepCurve(SweepAxis axis, Height height, List<Line> modes) implements ChartRecord {
    /**
     * The upright axis, from zero.
     *
     * @param name what it says; empty if it says nothing
     * @param isPercent whether it counts in %
     * @param top where it ends
     * @param step the distance of its marks
     */
    record Height(String name, boolean isPercent, double top, double step) {}

    /**
     * A line; what is not reached is open.
     *
     * @param mode what people call the mode
     * @param value the line, an entry a value of the key
     * @param low lower edge of its band, zero or above
     * @param high upper edge of its band
     * @param says the same in words
     */
    record Line(String mode, List<Double> value, List<Double> low, List<Double> high, List<String> says) {}
}
