package org.ionohaul.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ionohaul.analysis.CasePoint;
import org.ionohaul.analysis.Margin;
import org.ionohaul.analysis.ModePoint;
import org.ionohaul.analysis.Variation;
import org.ionohaul.analysis.VariationPoint;
import org.ionohaul.picture.CellMap;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.scenario.KeyName;
import org.ionohaul.scenario.Mode;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.KeySweep;

/** Two keys at a time: a map a measure, the first key's values down, the second's across, every cell labelled. */
final class SweepMaps {
    private final Variation variation;
    private final VariationTables tables;
    private final int caseIndex;
    private final List<Mode> modes;
    private final ModeOrder order;

    SweepMaps(Variation variation, VariationTables tables, int caseIndex) {
        this.variation = variation;
        this.tables = tables;
        this.caseIndex = caseIndex;
        this.modes = variation.scenario().modes();
        this.order = new ModeOrder(modes.stream().map(Mode::title).toList());
    }

    List<Chart> charts(String id) {
        List<Chart> charts = new ArrayList<>();
        charts.add(best(id + "-best"));
        charts.add(measure(
                id + "-median",
                "Through on 5 of 10 trials, with the best mode",
                "Minutes and seconds after pressing send; darker is later.",
                ModePoint::medianSeconds,
                Cells::time,
                CellMap.Shading::of));
        charts.add(measure(
                id + "-ninth",
                "Through on 9 of 10 trials, with the best mode",
                "Minutes and seconds after pressing send; darker is later.",
                ModePoint::ninthSeconds,
                Cells::time,
                CellMap.Shading::of));
        List<String> heads = tables.deadlineHeads(caseIndex).toList();
        for (int i = 0; i < heads.size(); i++) {
            int deadline = i;
            charts.add(measure(
                    id + "-deadline-" + (i + 1),
                    "Through " + heads.get(i) + ", with the best mode",
                    "In % of trials; darker is more.",
                    it -> it.deadlines().get(deadline).chance(),
                    Cells::chance,
                    it -> CellMap.Shading.SHARES));
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
                this::bestPlace,
                this::bestCell,
                CellMap.Shading::of);
    }

    private Cell bestCell(CasePoint point) {
        return new Cell(PointWords.best(point, modes), tables.margin(point, caseIndex));
    }

    private CellMap.Place bestPlace(CasePoint point, String says) {
        return switch (point.choice()) {
            case NOTHING_ARRIVES -> new CellMap.Place("none", says, OptionalInt.empty(), OptionalDouble.empty());
            case TOO_CLOSE_TO_CALL ->
                new CellMap.Place(
                        point.leaders().modes().stream().map(SweepMaps::letter).collect(Collectors.joining()),
                        says,
                        OptionalInt.empty(),
                        OptionalDouble.empty());
            case CLEAR ->
                new CellMap.Place(
                        letter(point.best())
                                + point.margin().map(SweepMaps::share).orElse(""),
                        says,
                        order.of(modes.get(point.best()).title()),
                        OptionalDouble.empty());
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
            Function<Estimate, Cell> cell,
            Function<List<CellMap.Place>, CellMap.Shading> shading) {
        Function<CasePoint, Estimate> best = it -> measure.apply(it.modes().get(it.best()));
        return chart(
                id,
                title,
                reading,
                (point, says) -> place(best.apply(point), cell.apply(best.apply(point)), says),
                it -> cell.apply(best.apply(it)),
                shading);
    }

    private static CellMap.Place place(Estimate found, Cell cell, String says) {
        return Double.isFinite(found.value())
                ? new CellMap.Place(
                        cell.text().replace(" %", ""), says, OptionalInt.empty(), OptionalDouble.of(found.value()))
                : new CellMap.Place("never", says, OptionalInt.empty(), OptionalDouble.empty());
    }

    private Chart chart(
            String id,
            String title,
            String reading,
            BiFunction<CasePoint, String, CellMap.Place> place,
            Function<CasePoint, Cell> cell,
            Function<List<CellMap.Place>, CellMap.Shading> shading) {
        CellMap.Side down = side(0);
        CellMap.Side across = side(1);
        List<CellMap.Place> places = variation.points().stream()
                .map(it -> place.apply(it.cases().get(caseIndex), says(it, cell)))
                .toList();
        return new Chart(
                id,
                title,
                reading,
                "A map with " + down.name() + " down and " + across.name() + " across, from "
                        + places.get(0).says().replace("\n", ": ") + ", to "
                        + places.get(places.size() - 1).says().replace("\n", ": ") + ".",
                new CellMap(down, across, places, shading.apply(places)),
                tables.map(title, caseIndex, cell));
    }

    private CellMap.Side side(int sweep) {
        KeySweep varied = variation.sweeps().get(sweep);
        return new CellMap.Side(KeyName.of(variation.scenario(), varied.key()).words(), varied.values());
    }

    private String says(VariationPoint point, Function<CasePoint, Cell> cell) {
        return String.join(", ", point.values()) + "\n"
                + cell.apply(point.cases().get(caseIndex)).line();
    }
}
