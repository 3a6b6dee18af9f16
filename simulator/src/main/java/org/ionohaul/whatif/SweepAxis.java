package org.ionohaul.whatif;

import java.util.List;
import org.ionohaul.rendering.Json;
import org.ionohaul.study.KeySweep;

/**
 * The axis of the values of a key: true to scale where they are numbers of one unit, else one step a value.
 *
 * @param sweep the key
 */
record SweepAxis(KeySweep sweep) {
    private static final int MOST_MARKS = 9;

    /** Returns the axis as an option of a chart. */
    Json options() {
        List<Double> numbers = sweep.numbers();
        if (numbers.isEmpty()) {
            return Json.of("""
                    {"type": "category", "data": ?, "name": ?, "nameGap": 40,
                     "axisLabel": {"interval": 0, "width": 64, "overflow": "break"}}
                    """, sweep.values(), sweep.key());
        }
        double low = numbers.stream().mapToDouble(it -> it).min().orElseThrow();
        double high = numbers.stream().mapToDouble(it -> it).max().orElseThrow();
        Json steps = isEven() && numbers.size() <= MOST_MARKS
                ? Json.of("?", (high - low) / (numbers.size() - 1))
                : new Json("null");
        String unit = sweep.first().replaceAll("[-+.\\d\\s]", "");
        return Json.of("""
                {"type": "value", "min": ?, "max": ?, "interval": ?, "name": ?, "nameGap": 26, "splitLine": {"show": false}}
                """, low, high, steps, sweep.key() + (unit.isEmpty() ? "" : ", " + unit));
    }

    private boolean isEven() {
        List<Double> numbers = sweep.numbers();
        double step = (numbers.get(numbers.size() - 1) - numbers.get(0)) / (numbers.size() - 1);
        for (int i = 1; i < numbers.size(); i++) {
            if (Math.abs(numbers.get(i) - numbers.get(i - 1) - step) > 0.01 * Math.abs(step)) {
                return false;
            }
        }
        return true;
    }

    /** Returns where a value lies. */
    double at(int index) {
        return sweep.numbers().isEmpty() ? index : sweep.numbers().get(index);
    }
}
