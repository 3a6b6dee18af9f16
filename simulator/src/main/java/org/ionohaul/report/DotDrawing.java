package org.ionohaul.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.ionohaul.picture.LabelRows;
import org.ionohaul.picture.Path;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.rendering.TimePlots;

/**
 * How a {@link DotPlot} is drawn: dots in columns of equal width between two deadlines, so that no dot straddles one, stacked
 * as flatly as keeps every stack low enough.
 */
final class DotDrawing {
    private static final double COLUMN = 8;
    private static final int HIGHEST = 13;
    private static final double LAYER = 7;
    /** Room at the right for those that are later than shown, or never through. */
    private static final double APART = 92;

    private final DotPlot plot;
    private final ModeOrder order;
    private final Svg svg;
    private final Scale across;

    /** A stretch of the axis between deadlines, in so many columns. */
    private record Section(double from, double until, int columns) {
        double pitch() {
            return (until - from) / columns;
        }
    }

    /** Where a dot lies: its middle in pixels, how many are below it, and how far columns are apart there. */
    private record Dot(double x, int layer, double pitch) {}

    DotDrawing(DotPlot plot, int width) {
        this.plot = plot;
        this.order = new ModeOrder(plot.rows().stream().map(DotPlot.Row::mode).toList());
        this.svg = new Svg(width);
        this.across = plot.axis().scale(2, width - APART);
    }

    String svg() {
        LabelRows labels = TimePlots.labels(svg, plot.axis(), across.from(), across.to(), "");
        double top = labels.height();
        labels.draw(top);
        List<List<Dot>> heaps = heaps();
        double y = top;
        for (int i = 0; i < plot.rows().size(); i++) {
            y = draw(plot.rows().get(i), heaps.get(i), y);
        }
        new Plot(svg, across, Scale.linear(0, 1, y, top))
                .axisBelow(plot.axis().ticks(), plot.axis().name());
        return svg.finished(y + Plot.roomBelow(svg));
    }

    private double draw(DotPlot.Row row, List<Dot> dots, double top) {
        String style = order.style(row.mode());
        int apart = row.later() + row.never();
        int columns = (int) ((APART - 12) / COLUMN);
        int layers = Math.max(
                (apart + columns - 1) / columns,
                dots.stream().mapToInt(it -> it.layer + 1).max().orElse(1));
        double named = svg.paragraph(Svg.BOLD, 0, top, across.to(), row.mode());
        String beyond = Stream.of(
                        row.later() > 0 ? row.later() + " later" : "", row.never() > 0 ? row.never() + " never" : "")
                .filter(it -> !it.isEmpty())
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
        double end = svg.width() - APART + 12;
        named = Math.max(named, svg.paragraph(Svg.FAINT, end, top, APART - 12, beyond));
        double floor = named + 4 + LAYER * layers;
        for (int i = 0; i < dots.size(); i++) {
            Dot dot = dots.get(i);
            svg.circle(
                    "dot " + style,
                    dot.x,
                    floor - LAYER * (dot.layer + 0.5),
                    0.46 * Math.min(dot.pitch, LAYER),
                    row.mode() + ": through after " + row.clock().get(i));
        }
        for (int i = 0; i < apart; i++) {
            double x = end + COLUMN * (i % columns + 0.5);
            int layer = i / columns;
            double y = floor - LAYER * (layer + 0.5);
            if (i < row.later()) {
                svg.circle("ring " + style, x, y, 2.6, row.mode() + ": through later than shown");
            } else {
                svg.path("cross " + style, Svg.cross(new Path(), x, y, 2.6), row.mode() + ": never through");
            }
        }
        svg.line("rule", 0, floor + 1, svg.width(), floor + 1);
        // Not above: there the mode's name stands.
        TimePlots.deadlines(new Plot(svg, across, Scale.linear(0, 1, floor + 1, named)), plot.axis());
        return floor + 1;
    }

    private List<List<Dot>> heaps() {
        for (int together = 1; ; together++) {
            List<List<Dot>> heaps = new ArrayList<>();
            for (DotPlot.Row row : plot.rows()) {
                heaps.add(heap(row, together));
            }
            boolean isLow = heaps.stream().flatMap(List::stream).allMatch(it -> it.layer < HIGHEST);
            if (isLow || together * COLUMN >= svg.width()) {
                return heaps;
            }
        }
    }

    /** Stacks a row's dots, as many columns together as one stack of that width. */
    private List<Dot> heap(DotPlot.Row row, int together) {
        Map<String, Integer> counts = new HashMap<>();
        List<Section> sections = sections();
        List<Dot> dots = new ArrayList<>();
        for (double at : row.at()) {
            double x = across.at(at);
            int index = 0;
            while (index < sections.size() - 1 && x > sections.get(index).until) {
                index++;
            }
            Section section = sections.get(index);
            int column = Math.min(section.columns - 1, (int) ((x - section.from) / section.pitch()));
            int first = column - column % together;
            int width = Math.min(together, section.columns - first);
            int place = counts.merge(index + " " + first, 1, Integer::sum) - 1;
            dots.add(new Dot(
                    section.from + section.pitch() * (first + place % width + 0.5), place / width, section.pitch()));
        }
        return dots;
    }

    private List<Section> sections() {
        double[] edges = DoubleStream.concat(
                        DoubleStream.of(across.from(), across.to()),
                        plot.axis().deadlines().stream().mapToDouble(it -> across.at(it.at())))
                .sorted()
                .distinct()
                .toArray();
        List<Section> sections = new ArrayList<>();
        for (int i = 1; i < edges.length; i++) {
            sections.add(new Section(edges[i - 1], edges[i], Math.max(1, (int) ((edges[i] - edges[i - 1]) / COLUMN))));
        }
        return sections;
    }
}
