package org.ionohaul.whatif;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.analysis.CasePoint;
import org.ionohaul.analysis.Margin;
import org.ionohaul.analysis.Variation;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.Json;
import org.ionohaul.rendering.Palette;
import org.ionohaul.scenario.Mode;
import org.ionohaul.statistics.Estimate;

/** Which mode is best at each value of one key: a bar a value, as long as the share of trials on which it is first. */
final class BestStrip {
    private static final int ROW_PIXELS = 42;
    private static final int FRAME_PIXELS = 70;
    static final String OPEN_COLOUR = "#d0d7de";

    private final Variation variation;
    private final VariationTables tables;
    private final int caseIndex;
    private final List<Mode> modes;

    BestStrip(Variation variation, VariationTables tables, int caseIndex) {
        this.variation = variation;
        this.tables = tables;
        this.caseIndex = caseIndex;
        this.modes = variation.scenario().modes();
    }

    Chart chart(String id) {
        List<String> values =
                variation.points().stream().map(it -> it.values().get(0)).toList();
        List<Json> bars = new ArrayList<>();
        List<Json> whiskers = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            CasePoint point = variation.points().get(i).cases().get(caseIndex);
            bars.add(bar(point, tables.best(caseIndex).rows().get(i)));
            if (point.margin().isPresent() && point.standing() != CasePoint.Standing.NOTHING_ARRIVES) {
                whiskers.add(whisker(point.margin().get().bestBefore(), i));
            }
        }
        Json options = Json.of("""
                {"grid": {"left": 12, "right": 22, "top": 10, "bottom": 44, "containLabel": true}, "tooltip": {"trigger": "item"},
                 "xAxis": {"type": "value", "min": 0, "max": 100, "interval": 20, "name": "% of trials ahead of the next mode",
                  "nameGap": 26},
                 "yAxis": {"type": "category", "inverse": true, "data": ?, "axisTick": {"show": false},
                  "axisLabel": {"width": 110, "overflow": "truncate", "interval": 0, "color": ?}},
                 "series": [
                  {"type": "bar", "barWidth": 14, "data": ?},
                  {"type": "custom", "renderItem": "whisker", "silent": true, "color": ?, "z": 4, "data": ?}]}
                """, values, Palette.INK, bars, Palette.INK, whiskers);
        return new Chart(
                id,
                "Which mode is best, and by how much",
                "The bar says on how many trials the best mode is through before the next; the whisker, how far chance in"
                        + " the simulation leaves that open. Grey: " + PointWords.TOO_CLOSE + ".",
                "A bar a value of " + variation.sweeps().get(0).key() + ". The table has the numbers.",
                FRAME_PIXELS + ROW_PIXELS * values.size(),
                options,
                tables.best(caseIndex));
    }

    private Json bar(CasePoint point, List<Cell> row) {
        String label = PointWords.best(point, modes);
        return Json.of(
                """
                {"value": ?, "says": ?, "itemStyle": {"color": ?},
                 "label": {"show": true, "position": [2, -15], "formatter": ?, "color": ?, "fontWeight": "bold"}}
                """,
                point.standing() == CasePoint.Standing.NOTHING_ARRIVES
                        ? 0.0
                        : point.margin()
                                .map(Margin::bestBefore)
                                .map(it -> 100 * it.value())
                                .orElse(100.0),
                String.join(": ", row.stream().map(Cell::text).toList()),
                point.standing() == CasePoint.Standing.CLEAR ? Palette.tint(point.best()) : OPEN_COLOUR,
                label,
                Palette.INK);
    }

    private static Json whisker(Estimate share, int index) {
        return Json.of("?", List.of(100 * share.low(), 100 * share.value(), 100 * share.high(), (double) index));
    }
}
