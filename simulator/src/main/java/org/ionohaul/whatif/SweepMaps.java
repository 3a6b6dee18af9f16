package org.ionohaul.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.ionohaul.analysis.CasePoint;
import org.ionohaul.analysis.Margin;
import org.ionohaul.analysis.ModePoint;
import org.ionohaul.analysis.Variation;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.Json;
import org.ionohaul.rendering.Palette;
import org.ionohaul.rendering.Table;
import org.ionohaul.scenario.Mode;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.KeySweep;

/** Two keys at a time: a map a measure, the first key's values down, the second's across, every cell labelled. */
final class SweepMaps {
    private static final int ROW_PIXELS = 38;
    private static final int FRAME_PIXELS = 84;
    private static final int SHADES = 9;
    private static final String NEVER_COLOUR = "#e1e4e8";

    private final Variation variation;
    private final VariationTables tables;
    private final int caseIndex;
    private final List<Mode> modes;

    SweepMaps(Variation variation, VariationTables tables, int caseIndex) {
        this.variation = variation;
        this.tables = tables;
        this.caseIndex = caseIndex;
        this.modes = variation.scenario().modes();
    }

    /**
     * What stands in a cell.
     *
     * @param colour its colour
     * @param label its lettering
     * @param ink colour of the lettering
     * @param says what it says when pointed at
     */
    private record Tile(String colour, String label, String ink, String says) {}

    List<Chart> charts(String id) {
        List<Chart> charts = new ArrayList<>();
        charts.add(best(id + "-best"));
        charts.add(measure(
                id + "-median",
                "Through on 5 of 10 trials, with the best mode",
                "Minutes and seconds after pressing send; darker is later.",
                ModePoint::medianSeconds,
                Cells::time));
        charts.add(measure(
                id + "-ninth",
                "Through on 9 of 10 trials, with the best mode",
                "Minutes and seconds after pressing send; darker is later.",
                ModePoint::ninthSeconds,
                Cells::time));
        List<String> heads = tables.deadlineHeads(caseIndex).toList();
        for (int i = 0; i < heads.size(); i++) {
            int deadline = i;
            charts.add(measure(
                    id + "-deadline-" + (i + 1),
                    "Through " + heads.get(i) + ", with the best mode",
                    "In % of trials; darker is more.",
                    it -> it.deadlines().get(deadline).chance(),
                    Cells::chance));
        }
        return charts;
    }

    private Chart best(String id) {
        String key = IntStream.range(0, modes.size())
                .mapToObj(i -> letter(i) + " " + modes.get(i).title())
                .collect(Collectors.joining(", "));
        return chart(
                id,
                "Which mode is best, and by how much",
                key + ". The number: on how many of 100 trials it is through before the next. Letters on grey: "
                        + PointWords.TOO_CLOSE + " between these.",
                points().stream().map(this::bestTile).toList(),
                tables.map("Which mode is best, and by how much", caseIndex, this::bestCell));
    }

    private Cell bestCell(CasePoint point) {
        return new Cell(PointWords.best(point, modes), tables.margin(point, caseIndex));
    }

    private Tile bestTile(CasePoint point) {
        String says = bestCell(point).line();
        return switch (point.standing()) {
            case NOTHING_ARRIVES -> new Tile(NEVER_COLOUR, "none", Palette.INK, says);
            case TOO_CLOSE_TO_CALL ->
                new Tile(
                        NEVER_COLOUR,
                        point.leaders().modes().stream().map(SweepMaps::letter).collect(Collectors.joining()),
                        Palette.INK,
                        says);
            case CLEAR ->
                new Tile(
                        Palette.tint(point.best()),
                        letter(point.best())
                                + point.margin().map(SweepMaps::share).orElse(""),
                        Palette.INK,
                        says);
        };
    }

    private static String share(Margin margin) {
        return " " + Math.round(100 * margin.bestBefore().value());
    }

    /** A letter a mode: its place in the scenario. */
    private static String letter(int mode) {
        return Character.toString('A' + mode % 26);
    }

    private Chart measure(
            String id,
            String title,
            String reading,
            Function<ModePoint, Estimate> measure,
            Function<Estimate, Cell> cell) {
        List<Estimate> found = points().stream()
                .map(it -> measure.apply(it.modes().get(it.best())))
                .toList();
        double low = finite(found).min().orElse(0);
        double high = finite(found).max().orElse(0);
        List<Tile> tiles = found.stream()
                .map(it -> Double.isFinite(it.value())
                        ? tile(high > low ? (it.value() - low) / (high - low) : 0, cell.apply(it))
                        : new Tile(
                                NEVER_COLOUR,
                                "never",
                                Palette.INK,
                                cell.apply(it).line()))
                .toList();
        return chart(
                id,
                title,
                reading,
                tiles,
                tables.map(
                        title,
                        caseIndex,
                        it -> cell.apply(measure.apply(it.modes().get(it.best())))));
    }

    private static DoubleStream finite(List<Estimate> found) {
        return found.stream().mapToDouble(Estimate::value).filter(Double::isFinite);
    }

    private static Tile tile(double share, Cell cell) {
        int shade = (int) Math.round(share * (SHADES - 1));
        String label = cell.text().replace(" %", "");
        return new Tile(
                Palette.rung(shade, SHADES),
                label,
                Palette.isDark(shade, SHADES) ? Palette.PAPER : Palette.INK,
                cell.line());
    }

    private List<CasePoint> points() {
        return variation.points().stream().map(it -> it.cases().get(caseIndex)).toList();
    }

    private Chart chart(String id, String title, String reading, List<Tile> tiles, Table table) {
        KeySweep down = variation.sweeps().get(0);
        KeySweep across = variation.sweeps().get(1);
        List<String> colours = tiles.stream().map(Tile::colour).distinct().toList();
        Json options = Json.of(
                """
                {"grid": {"left": 12, "right": 14, "top": 30, "bottom": 50, "containLabel": true},
                 "tooltip": {"trigger": "item"},
                 "visualMap": {"type": "piecewise", "show": false, "dimension": 2, "pieces": ?},
                 "xAxis": {"type": "category", "data": ?, "name": ?, "nameGap": 38, "axisTick": {"show": false},
                  "axisLabel": {"interval": 0, "width": 40, "overflow": "break", "fontSize": 11}},
                 "yAxis": {"type": "category", "inverse": true, "data": ?, "name": ?, "nameLocation": "start",
                  "nameTextStyle": {"align": "left"}, "axisTick": {"show": false},
                  "axisLabel": {"interval": 0, "width": 76, "overflow": "break", "fontSize": 11}},
                 "series": [{"type": "heatmap", "itemStyle": {"borderColor": ?, "borderWidth": 2},
                  "label": {"show": true, "fontSize": 11}, "labelLayout": {"hideOverlap": true}, "data": ?}]}
                """,
                IntStream.range(0, colours.size())
                        .mapToObj(i -> Json.of("{\"value\": ?, \"color\": ?}", i, colours.get(i)))
                        .toList(),
                across.values(),
                across.key(),
                down.values(),
                down.key(),
                Palette.PAPER,
                IntStream.range(0, tiles.size())
                        .mapToObj(i -> cell(tiles.get(i), i, colours))
                        .toList());
        return new Chart(
                id,
                title,
                reading,
                "A map with " + down.key() + " down and " + across.key() + " across. The table has the numbers.",
                FRAME_PIXELS + ROW_PIXELS * down.values().size(),
                options,
                table);
    }

    private Json cell(Tile tile, int index, List<String> colours) {
        int columns = variation.sweeps().get(1).values().size();
        return Json.of(
                "{\"value\": ?, \"says\": ?, \"label\": {\"formatter\": ?, \"color\": ?}}",
                List.of(index % columns, index / columns, colours.indexOf(tile.colour())),
                String.join(", ", variation.points().get(index).values()) + "\n" + tile.says(),
                tile.label(),
                tile.ink());
    }
}
