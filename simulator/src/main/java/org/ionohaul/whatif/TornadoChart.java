package org.ionohaul.whatif;

import java.util.List;
import org.ionohaul.rendering.ChartRecord;

/**
 * What each key does at either end of its range: two lying bars a key, with their intervals.
 *
 * @param axis what the axis says
 * @param end how far it reaches either way of zero
 * @param bars the bars, the longest first
 */
record TornadoChart(String axis, double end, List<Bar> bars) implements ChartRecord {
    /**
     * A bar, in the axis's unit and within its ends.
     *
     * @param label key, value and change in words
     * @param isLast whether it is for the last of the key's values; else for the first
     * @param low lower end of the whisker
     * @param change length of the bar
     * @param high upper end of the whisker
     */
    record Bar(String label, boolean isLast, double low, double change, double high) {}
}
