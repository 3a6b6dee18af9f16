package org.ionohaul.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Two scales and what is drawn on them.
 *
 * @param svg what it is drawn on
 * @param across the lying scale
 * @param up the upright scale
 */
public record Plot(Svg svg, Scale across, Scale up) {
    private static final double TICK = 5;
    private static final double GAP = 5;
    /** Room for the labels of an axis below a plot and for its name. */
    private static final double ROWS_BELOW = 2.5;

    /** Returns the left edge. */
    public double left() {
        return Math.min(across.from(), across.to());
    }

    /** Returns the right edge. */
    public double right() {
        return Math.max(across.from(), across.to());
    }

    /** Returns the upper edge. */
    public double top() {
        return Math.min(up.from(), up.to());
    }

    /** Returns the lower edge. */
    public double bottom() {
        return Math.max(up.from(), up.to());
    }

    /** Returns where a point lies, in pixels. */
    public Point at(Point point) {
        return new Point(across.at(point.x()), up.at(point.y()));
    }

    /** Returns how much room labels to the left of an axis need. */
    public static double roomLeft(Svg svg, List<Tick> ticks) {
        return ticks.stream()
                        .mapToDouble(it -> Lettering.width(it.label(), svg.smallSize()))
                        .max()
                        .orElse(0)
                + TICK
                + GAP;
    }

    /** Returns how much room an axis below a plot needs, with its name. */
    public static double roomBelow(Svg svg) {
        return ROWS_BELOW * svg.lineHeight() + TICK;
    }

    /** Draws the lying axis; labels that would run into the one before are left out, their marks stay. */
    public void axisBelow(List<Tick> ticks, String name) {
        double size = svg.smallSize();
        double taken = Double.NEGATIVE_INFINITY;
        svg.line("axis", left(), bottom(), right(), bottom());
        for (Tick tick : ticks) {
            double x = across.at(tick.value());
            svg.line("axis", x, bottom(), x, bottom() + TICK);
            double width = Lettering.width(tick.label(), size);
            double centre = svg.centre(x, width);
            if (centre - width / 2 > taken) {
                svg.smallTextAbout(Svg.FAINT, x, bottom() + TICK + svg.lineHeight() * 0.85, tick.label());
                taken = centre + width / 2 + GAP;
            }
        }
        svg.smallTextAbout(Svg.FAINT, (left() + right()) / 2, bottom() + TICK + svg.lineHeight() * 1.95, name);
    }

    /** Draws the upright axis at the left, with a rule across the plot at each mark. */
    public void axisLeft(List<Tick> ticks) {
        double size = svg.smallSize();
        double taken = Double.POSITIVE_INFINITY;
        for (Tick tick : ticks) {
            double y = up.at(tick.value());
            svg.line("rule", left(), y, right(), y);
            if (Math.abs(taken - y) >= size) {
                svg.text(Svg.FAINT, Svg.Anchor.END, left() - GAP, y + 0.35 * size, size, tick.label());
                taken = y;
            }
        }
    }

    /** Draws a line through points, at least one; parts beyond the right edge are cut off there. */
    public void line(String style, List<Point> points) {
        List<Point> seen = cutAtRight(points);
        if (!seen.isEmpty()) {
            svg.path(style, Path.through(seen.stream().map(this::at).toList()));
        }
    }

    /** Draws a surface between two edges of points, which may lie beyond the plot: it is cut off there. */
    public void surface(String style, List<Point> there, List<Point> back) {
        List<Point> reversed = new ArrayList<>(back);
        java.util.Collections.reverse(reversed);
        List<Point> outline = Stream.concat(there.stream(), reversed.stream())
                .map(it -> new Point(across.within(it.x()), up.within(it.y())))
                .toList();
        if (!outline.isEmpty()) {
            svg.path(style, Path.through(outline).close());
        }
    }

    /** Draws an upright line over the whole height, such as a deadline. */
    public void upright(String style, double value) {
        svg.line(style, across.at(value), top(), across.at(value), bottom());
    }

    private List<Point> cutAtRight(List<Point> points) {
        List<Point> seen = new ArrayList<>();
        for (Point point : points) {
            if (point.x() <= across.high()) {
                seen.add(point);
                continue;
            }
            if (!seen.isEmpty()) {
                Point last = seen.get(seen.size() - 1);
                double share = Double.isInfinite(point.x()) ? 0 : (across.high() - last.x()) / (point.x() - last.x());
                seen.add(new Point(across.high(), last.y() + share * (point.y() - last.y())));
            }
            break;
        }
        return seen;
    }
}
