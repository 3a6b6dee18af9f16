package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.rendering.Json;
import org.ionohaul.rendering.Palette;

/** Lying bars, one a mode, each cut into parts that colour and pattern tell apart. */
final class StackedBars {
    private static final int ROW_PIXELS = 46;
    private static final int LEGEND_ROW_PIXELS = 27;
    /** A part this long, as a share of the bars' room, has room for a short label also on a phone. */
    private static final double LABELLED_SHARE = 0.115;

    private final List<Part> parts;
    private final List<Bar> bars;
    private final boolean isPatterned;

    /**
     * Prepares the chart.
     *
     * @param parts the parts
     * @param bars the bars
     * @param isPatterned whether a pattern and a legend tell the parts apart; else their labels and shades do
     */
    StackedBars(List<Part> parts, List<Bar> bars, boolean isPatterned) {
        this.parts = parts;
        this.bars = bars;
        this.isPatterned = isPatterned;
    }

    /**
     * What a part of a bar means.
     *
     * @param name in words
     * @param colour its colour
     * @param isDark whether text on it must be white
     */
    record Part(String name, String colour, boolean isDark) {}

    /**
     * One bar.
     *
     * @param name the mode
     * @param remark what to say below the name
     * @param amounts length of each part, as a share of the whole width, in the order of the parts
     * @param labels what each part's amount is in words
     */
    record Bar(String name, String remark, List<Double> amounts, List<String> labels) {}

    /** Returns the height that suits it, in pixels. */
    int heightPixels() {
        return barsPixels() + (isPatterned ? LEGEND_ROW_PIXELS * ((shown().size() + 1) / 2) : 0);
    }

    private int barsPixels() {
        return ROW_PIXELS * bars.size() + 8;
    }

    /** Returns the parts that occur. */
    private List<Integer> shown() {
        List<Integer> shown = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            int part = i;
            if (bars.stream().anyMatch(it -> amount(it, part) > 0)) {
                shown.add(i);
            }
        }
        return shown;
    }

    private static double amount(Bar bar, int part) {
        return part < bar.amounts().size() ? bar.amounts().get(part) : 0;
    }

    /** Returns what the charting library reads. */
    Json options() {
        return Json.of(
                """
                {"aria": {"enabled": true, "label": {"enabled": false}, "decal": {"show": ?}},
                 "grid": {"left": 100, "right": 4, "top": 4, "height": ?},
                 "tooltip": {"trigger": "item"},
                 "legend": {"show": ?, "top": ?, "left": 0, "itemWidth": 18, "selectedMode": false},
                 "xAxis": {"type": "value", "max": 1, "show": false},
                 "yAxis": {"type": "category", "inverse": true, "data": ?, "axisTick": {"show": false}, "axisLine": {"show": false},
                           "axisLabel": {"interval": 0, "width": 94, "overflow": "break", "lineHeight": 15}},
                 "series": ?}
                """,
                isPatterned,
                barsPixels() - 8,
                isPatterned,
                barsPixels(),
                bars.stream().map(it -> it.name() + "\n" + it.remark()).toList(),
                shown().stream().map(this::series).toList());
    }

    private Json series(int part) {
        return Json.of(
                """
                {"type": "bar", "stack": "whole", "name": ?, "color": ?, "barWidth": 26,
                 "itemStyle": {"borderColor": ?, "borderWidth": 0.5},
                 "label": {"color": ?, "textBorderColor": ?, "textBorderWidth": 2}, "data": ?}
                """,
                parts.get(part).name(),
                parts.get(part).colour(),
                Palette.PAPER,
                parts.get(part).isDark() ? Palette.PAPER : Palette.INK,
                parts.get(part).colour(),
                bars.stream().map(it -> datum(it, part)).toList());
    }

    private Json datum(Bar bar, int part) {
        double amount = amount(bar, part);
        String label = amount > 0 ? bar.labels().get(part) : "";
        return Json.of(
                "{\"value\": ?, \"label\": {\"show\": ?, \"formatter\": ?}, \"says\": ?}",
                amount,
                amount > LABELLED_SHARE * label.length() / 4,
                label,
                bar.name() + "\n" + parts.get(part).name() + ": " + label);
    }
}
