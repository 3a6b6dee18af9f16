package org.ionohaul.rendering;

import java.util.List;

/**
 * The lying axis of time that charts share, in minutes or seconds.
 *
 * @param scale its length and unit
 */
public record TimeAxis(TimeScale scale) {
    private static final int MOST_MARKS = 7;

    /**
     * Returns the axis as an option of a chart.
     *
     * @param grid the panel that it belongs to, from 0
     */
    public Json options(int grid) {
        List<Double> marks = scale.marksSeconds(MOST_MARKS);
        return Json.of(
                """
                {"gridIndex": ?, "type": "value", "min": 0, "max": ?, "interval": ?, "name": ?, "nameGap": 26,
                 "axisLine": {"onZero": false}, "axisLabel": {"showMaxLabel": ?}, "splitLine": {"show": false}}
                """,
                grid,
                at(scale.endSeconds()),
                at(marks.get(1)),
                scale.unit() + " after pressing send",
                marks.get(marks.size() - 1) > 0.999 * scale.endSeconds());
    }

    /** Returns an instant in the axis's unit. */
    public double at(double seconds) {
        return scale.isInMinutes() ? seconds / 60 : seconds;
    }

    /** Returns upright lines at the deadlines that lie on the axis. */
    public List<Json> deadlines(List<Double> deadlinesSeconds) {
        return deadlinesSeconds.stream()
                .filter(it -> it <= scale.endSeconds())
                .map(it -> Json.of("{\"name\": ?, \"xAxis\": ?}", TimeText.given(it), at(it)))
                .toList();
    }

    /** Returns lines across a chart as the option {@code markLine} of a series, drawn like deadlines if they say no more. */
    public static Json marks(List<Json> lines) {
        return Json.of("""
                {"silent": true, "symbol": "none", "lineStyle": {"color": ?, "type": [4, 3], "width": 1.2},
                 "label": {"formatter": "{b}", "color": ?}, "data": ?}
                """, Palette.ALERT, Palette.ALERT, lines);
    }
}
