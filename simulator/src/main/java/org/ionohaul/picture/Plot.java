package org.ionohaul.picture;

import java.util.ArrayList;
import java.util.Collections;
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
        Collections.reverse(reversed);
        List<Point> outline = Stream.concat(there.stream(), reversed.stream())
                .map(it -> new Point(across.within(it.x()), up.within(it.y())))
                .toList();
        if (!outline.isEmpty()) {
            svg.path(style, Path.through(outline).close());
        }
    }

    /** Draws a line through points, parted where a point is open (infinite or no number). */
    public void parts(String style, List<Point> points) {
        for (List<Point> run : runs(points)) {
            line(style, run);
        }
    }

    /** Returns the runs of points that are not open. */
    public static List<List<Point>> runs(List<Point> points) {
        List<List<Point>> runs = new ArrayList<>();
        List<Point> run = new ArrayList<>();
        for (Point point : points) {
            if (Double.isFinite(point.y()) && Double.isFinite(point.x())) {
                run.add(point);
            } else if (!run.isEmpty()) {
                runs.add(run);
                run = new ArrayList<>();
            }
        }
        if (!run.isEmpty()) {
            runs.add(run);
        }
        return runs;
    }

    /** Draws a surface between two edges at the same places; it is parted where its lower edge is open, and open upwards where its upper one is. */
    public void ribbon(String style, List<Double> at, List<Double> low, List<Double> high) {
        List<Point> lower = new ArrayList<>();
        for (int i = 0; i < low.size(); i++) {
            lower.add(new Point(at.get(i), low.get(i) >= up.high() ? Double.NaN : low.get(i)));
        }
        int next = 0;
        for (List<Point> run : runs(lower)) {
            List<Point> upper = new ArrayList<>();
            for (Point point : run) {
                while (at.get(next) != point.x()) {
                    next++;
                }
                double value = high.get(next);
                upper.add(new Point(point.x(), Double.isNaN(value) ? up.high() : value));
            }
            if (run.size() > 1) {
                surface(style, run, upper);
            }
        }
    }

    /** Makes the whole height about each place say something when pointed at; places rise, beyond the plot they are left out. */
    public void columns(List<Double> at, List<String> says) {
        for (int i = 0; i < at.size(); i++) {
            if (across.holds(at.get(i))) {
                double from = i == 0 ? left() : (across.at(at.get(i - 1)) + across.at(at.get(i))) / 2;
                double to = i == at.size() - 1 ? right() : (across.at(at.get(i)) + across.at(at.get(i + 1))) / 2;
                double end = Math.min(right(), Math.max(from, to));
                svg.rectangle("column", from, top(), end - from, bottom() - top(), says.get(i));
            }
        }
    }

    /** Names what stands at whole numbers below the plot, each in lines as long as its place, and the axis below them. */
    public void namesBelow(List<String> names, String axis) {
        double size = svg.smallSize();
        double place = Math.abs(across.at(1) - across.at(0)) - GAP;
        svg.line("axis", left(), bottom(), right(), bottom());
        for (int i = 0; i < names.size(); i++) {
            List<String> lines = Lettering.lines(names.get(i), size, place);
            for (int line = 0; line < lines.size(); line++) {
                svg.smallTextAbout(
                        Svg.FAINT, across.at(i), bottom() + TICK + svg.lineHeight() * (line + 0.85), lines.get(line));
            }
        }
        svg.smallTextAbout(
                Svg.FAINT,
                (left() + right()) / 2,
                bottom() + TICK + svg.lineHeight() * (nameLines(svg, names, place) + 0.95),
                axis);
    }

    /** Returns how much room such names need. */
    public static double roomForNames(Svg svg, List<String> names, double place) {
        return (nameLines(svg, names, place - GAP) + 1.5) * svg.lineHeight() + TICK;
    }

    private static int nameLines(Svg svg, List<String> names, double place) {
        return names.stream()
                .mapToInt(it -> Lettering.lines(it, svg.smallSize(), place).size())
                .max()
                .orElse(0);
    }

    /** Draws a lying interval with its best guess; parts beyond the plot are left out. */
    public static void whisker(Svg svg, String style, Scale across, double low, double value, double high, double y) {
        double reach = svg.size() / 3;
        Path path = new Path();
        double from = across.within(low);
        double to = across.within(high);
        path.from(new Point(from, y - reach)).to(new Point(from, y + reach));
        path.from(new Point(from, y)).to(new Point(to, y));
        path.from(new Point(to, y - reach)).to(new Point(to, y + reach));
        svg.path("whisker " + style, path);
        svg.circle("best " + style, across.within(value), y, reach, "");
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
