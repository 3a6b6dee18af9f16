package org.ionohaul.onair;

import java.util.List;
import org.ionohaul.rendering.ChartRecord;

/**
 * The chance of a right verdict against the number of runs: a line an order.
 *
 * @param runs numbers of runs of each mode, rising
 * @param orders a line an order
 */
record RunsCurve(List<Integer> runs, List<Line> orders) implements ChartRecord {
    /**
     * A line; what was not tried is open.
     *
     * @param order the order in words or letters
     * @param percent the chance in %, an entry a number of runs
     * @param low lower end of its interval
     * @param high upper end of its interval
     * @param says the same in words
     */
    record Line(String order, List<Double> percent, List<Double> low, List<Double> high, List<String> says) {}
}
