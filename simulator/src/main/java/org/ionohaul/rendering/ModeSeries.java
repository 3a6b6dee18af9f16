package org.ionohaul.rendering;

import java.util.List;

/**
 * Series that charts share, each told apart by colour, dash and a name at the end of its line.
 *
 * @param series number of the series, which gives colour and dash
 * @param panel the panel that it belongs to, from 0
 */
public record ModeSeries(int series, int panel) {
    /**
     * Returns a line.
     *
     * @param name its name
     * @param data its points
     * @param marks lines across the chart, see {@link TimeAxis#marks}
     */
    public Json line(String name, List<?> data, Json marks) {
        return Json.of("""
                {"type": "line", "xAxisIndex": ?, "yAxisIndex": ?, "name": ?, "color": ?, "symbol": "none",
                 "lineStyle": {"width": 2, "type": ?}, "labelLayout": {"moveOverlap": "shiftY"},
                 "endLabel": {"show": true, "formatter": "{a}", "width": 86, "overflow": "break", "color": "inherit",
                              "textBorderColor": "#fff", "textBorderWidth": 2}, "markLine": ?, "data": ?}
                """, panel, panel, name, Palette.colour(series), Palette.dashes(series), marks, data);
    }

    /**
     * Returns a series drawn as one of the shapes of {@code charts.js}.
     *
     * @param name the shape's name
     * @param data what it takes
     */
    public Json shape(String name, List<?> data) {
        return Json.of("""
                {"type": "custom", "renderItem": ?, "clip": true, "xAxisIndex": ?, "yAxisIndex": ?, "color": ?, "data": ?}
                """, name, panel, panel, Palette.colour(series), data);
    }

    /** Returns a point of a series with what is said of it. */
    public static Json datum(List<? extends Number> value, String says) {
        return Json.of("{\"value\": ?, \"says\": ?}", value, says);
    }
}
