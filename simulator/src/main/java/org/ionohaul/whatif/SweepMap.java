package org.ionohaul.whatif;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.ionohaul.picture.Lettering;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Shade;
import org.ionohaul.picture.Svg;

/**
 * Two keys at a time: the first key's values down, the second's across, every cell labelled.
 *
 * @param down the first key
 * @param across the second key
 * @param cells row by row; fewer than combinations when it was interrupted
 */
record SweepMap(Side down, Side across, List<Place> cells) implements Picture {
    private static final double CELL = 38;
    private static final double MOST_NAME = 90;

    /**
     * One of the keys.
     *
     * @param key its name
     * @param values its values
     */
    record Side(String key, List<String> values) {}

    /**
     * What stands in a cell.
     *
     * @param label its lettering
     * @param says what it says when pointed at
     * @param mode place among the colours of the mode that it is about, if it is about one
     * @param value how much it is, if it can be told
     */
    record Place(String label, String says, OptionalInt mode, OptionalDouble value) {}

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        double names = down.values().stream()
                .mapToDouble(it -> Lettering.width(it, svg.smallSize()))
                .max()
                .orElse(0);
        double left = Math.min(MOST_NAME, names) + svg.size() / 2;
        double top = svg.paragraph(Svg.FAINT, 0, 0, width, down.key()) + 4;
        double wide = (width - left) / across.values().size();
        double[] known = cells.stream()
                .flatMapToDouble(it -> it.value().stream())
                .sorted()
                .toArray();
        for (int i = 0; i < cells.size(); i++) {
            Place cell = cells.get(i);
            double x = left + wide * (i % across.values().size());
            int row = i / across.values().size();
            double y = top + CELL * row;
            String style = style(cell, known);
            svg.rectangle("part " + style, x, y, wide - 2, CELL - 2, cell.says());
            svg.textInside("on " + style, x, y, wide - 2, CELL - 2, cell.label());
        }
        for (int i = 0; i < down.values().size(); i++) {
            List<String> lines = Lettering.lines(down.values().get(i), svg.smallSize(), left - svg.size() / 2);
            double middle = top + CELL * (i + 0.5) - svg.lineHeight() * (lines.size() - 1) / 2.0;
            for (int line = 0; line < lines.size(); line++) {
                svg.text(
                        Svg.FAINT,
                        Svg.Anchor.START,
                        0,
                        middle + svg.lineHeight() * line + 0.35 * svg.smallSize(),
                        svg.smallSize(),
                        lines.get(line));
            }
        }
        double bottom = top + CELL * down.values().size();
        Plot plot = new Plot(
                svg,
                Scale.linear(-0.5, across.values().size() - 0.5, left, width - 2),
                Scale.linear(0, 1, bottom, top));
        plot.namesBelow(across.values(), across.key());
        return svg.finished(bottom + Plot.roomForNames(svg, across.values(), wide));
    }

    private static String style(Place cell, double[] known) {
        if (cell.mode().isPresent()) {
            return "tint m" + cell.mode().getAsInt() % 7;
        }
        if (cell.value().isEmpty()) {
            return "open";
        }
        double span = known[known.length - 1] - known[0];
        return Shade.style(span > 0 ? (cell.value().getAsDouble() - known[0]) / span : 0);
    }
}
