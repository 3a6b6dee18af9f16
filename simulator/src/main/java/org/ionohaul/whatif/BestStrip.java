package org.ionohaul.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.ionohaul.analysis.CasePoint;
import org.ionohaul.analysis.Margin;
import org.ionohaul.analysis.Variation;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.scenario.KeyName;
import org.ionohaul.scenario.Mode;
import org.ionohaul.statistics.Estimate;

/**
 * Which mode is best at each value of one key: a bar a value, as long as the share of trials on which it is first.
 *
 * @param bars the bars
 */
record BestStrip(List<Bar> bars) implements Picture {
    private static final double HEIGHT = 14;

    /**
     * A bar, in % of trials.
     *
     * @param value the key's value
     * @param label which mode is best there
     * @param says the same with its margin
     * @param mode place among the colours of the mode that it is about, if it is about one
     * @param ahead length of the bar
     * @param low lower end of its whisker, if it has one
     * @param high upper end of its whisker
     */
    record Bar(
            String value,
            String label,
            String says,
            OptionalInt mode,
            double ahead,
            OptionalDouble low,
            OptionalDouble high) {
        static Bar of(CasePoint point, OptionalInt mode, String label, List<Cell> row) {
            boolean isNothing = point.choice() == CasePoint.Choice.NOTHING_ARRIVES;
            Optional<Estimate> ahead = point.margin().filter(it -> !isNothing).map(Margin::bestBefore);
            return new Bar(
                    row.get(0).text(),
                    label,
                    String.join(": ", row.stream().map(Cell::text).toList()),
                    point.choice() == CasePoint.Choice.CLEAR ? mode : OptionalInt.empty(),
                    ahead.map(it -> 100 * it.value()).orElse(isNothing ? 0.0 : 100.0),
                    ahead.map(it -> OptionalDouble.of(100 * it.low())).orElse(OptionalDouble.empty()),
                    ahead.map(it -> OptionalDouble.of(100 * it.high())).orElse(OptionalDouble.empty()));
        }
    }

    static Chart chart(String id, Variation variation, VariationTables tables, int caseIndex) {
        List<Mode> modes = variation.scenario().modes();
        ModeOrder order = new ModeOrder(modes.stream().map(Mode::title).toList());
        List<Bar> bars = new ArrayList<>();
        for (int i = 0; i < variation.points().size(); i++) {
            CasePoint point = variation.points().get(i).cases().get(caseIndex);
            bars.add(Bar.of(
                    point,
                    order.of(modes.get(point.best()).title()),
                    PointWords.best(point, modes),
                    tables.best(caseIndex).rows().get(i)));
        }
        return new Chart(
                id,
                "Which mode is best, and by how much",
                "The bar says on how many trials the best mode is through before the next; the whisker, how far chance in"
                        + " the simulation leaves that open. Grey: " + PointWords.TOO_CLOSE + ".",
                "A bar a value of "
                        + KeyName.of(
                                        variation.scenario(),
                                        variation.sweeps().get(0).key())
                                .words() + ". "
                        + bars.stream().map(Bar::says).collect(Collectors.joining("; ")) + ".",
                new BestStrip(bars),
                tables.best(caseIndex));
    }

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        Scale across = Scale.linear(0, 100, 2, width - 2 * svg.size());
        double y = 0;
        for (Bar bar : bars) {
            y = svg.paragraph("", 0, y, width, bar.value() + ": " + bar.label()) + 2;
            String style = bar.mode().isPresent() ? "tint m" + bar.mode().getAsInt() % 7 : "open";
            svg.rectangle("part " + style, across.at(0), y, across.at(bar.ahead()) - across.at(0), HEIGHT, bar.says());
            if (bar.low().isPresent() && bar.high().isPresent()) {
                Plot.whisker(
                        svg,
                        "",
                        across,
                        bar.low().getAsDouble(),
                        bar.ahead(),
                        bar.high().getAsDouble(),
                        y + HEIGHT / 2);
            }
            y += HEIGHT + svg.size() / 2;
        }
        Plot plot = new Plot(svg, across, Scale.linear(0, 1, y, 0));
        plot.axisBelow(across.marks(20, Scale::number), "% of trials ahead of the next mode");
        return svg.finished(y + Plot.roomBelow(svg));
    }
}
