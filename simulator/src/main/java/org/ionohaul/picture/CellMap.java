package org.ionohaul.picture;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Two things at a time: the first one's values down, the second's across, every cell labelled where its label fits.
 *
 * @param down the first
 * @param across the second
 * @param cells row by row; fewer than combinations when it was interrupted
 * @param shading which values are palest and darkest
 */
public record CellMap(Side down, Side across, List<Place> cells, Shading shading) implements Picture {
    private static final double CELL = 38;
    private static final int MOST_IN_HALF = 12;
    private static final int WHOLE = 1040;
    private static final double MOST_NAME = 90;

    /**
     * What runs down or across.
     *
     * @param name what people call it
     * @param values its values
     */
    public record Side(String name, List<String> values) {}

    /**
     * What stands in a cell.
     *
     * @param label its lettering
     * @param says what it says when pointed at
     * @param mode place among the colours of the mode that it is about, if it is about one
     * @param value how much it is, if it can be told
     */
    public record Place(String label, String says, OptionalInt mode, OptionalDouble value) {}

    /**
     * From which value to which greys run.
     *
     * @param palest the value that is palest, as are those below it
     * @param darkest the value that is darkest, as are those above it; no less than the other
     */
    public record Shading(double palest, double darkest) {
        /** Shares: the same grey means the same share on every map. */
        public static final Shading SHARES = new Shading(0, 1);

        /** Returns the greys that tell the values of some cells apart best. */
        public static Shading of(List<Place> cells) {
            DoubleSummaryStatistics known =
                    cells.stream().flatMapToDouble(it -> it.value().stream()).summaryStatistics();
            return known.getCount() == 0 ? SHARES : new Shading(known.getMin(), known.getMax());
        }

        private String style(double value) {
            double span = darkest - palest;
            return Shade.style(span > 0 ? Math.max(0, Math.min(1, (value - palest) / span)) : 0);
        }
    }

    /** Copies the list. */
    public CellMap {
        cells = List.copyOf(cells);
    }

    /** Many columns need the whole page, or no label fits. */
    @Override
    public int wide() {
        return across.values().size() > MOST_IN_HALF ? WHOLE : Picture.super.wide();
    }

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        double names = down.values().stream()
                .mapToDouble(it -> Lettering.width(it, svg.smallSize()))
                .max()
                .orElse(0);
        double left = Math.min(MOST_NAME, names) + svg.size() / 2;
        double top = svg.paragraph(Svg.FAINT, 0, 0, width, down.name()) + 4;
        double wide = (width - left) / across.values().size();
        svg.tiles(
                wide - 2,
                CELL - 2,
                IntStream.range(0, cells.size())
                        .mapToObj(i -> tile(i, left, top, wide))
                        .toList());
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
        plot.namesBelow(across.values(), across.name());
        return svg.finished(bottom + Plot.roomForNames(svg, across.values(), wide));
    }

    private Svg.Tile tile(int index, double left, double top, double wide) {
        Place cell = cells.get(index);
        int row = index / across.values().size();
        int column = index % across.values().size();
        return new Svg.Tile(style(cell), new Point(left + wide * column, top + CELL * row), cell.says(), cell.label());
    }

    private String style(Place cell) {
        if (cell.mode().isPresent()) {
            return "tint m" + cell.mode().getAsInt() % 7;
        }
        if (cell.value().isEmpty()) {
            return "open";
        }
        return shading.style(cell.value().getAsDouble());
    }
}
