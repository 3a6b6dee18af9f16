package org.ionohaul.picture;

import java.util.List;

/** The outline of a shape, in pixels; kept short by telling tenths of a pixel, each place from the one before. */
public final class Path {
    private final StringBuilder text = new StringBuilder();
    private long tenthsX;
    private long tenthsY;

    /** Returns a line through places, which must be at least one. */
    public static Path through(List<Point> points) {
        Path path = new Path().from(points.get(0));
        points.subList(1, points.size()).forEach(path::to);
        return path;
    }

    /** Begins a line. */
    public Path from(Point point) {
        tenthsX = Math.round(10 * point.x());
        tenthsY = Math.round(10 * point.y());
        text.append('M');
        append(tenthsX, false);
        append(tenthsY, true);
        return this;
    }

    /** Goes on straight to a place; one that is nearly there already is left out. */
    public Path to(Point point) {
        long x = Math.round(10 * point.x()) - tenthsX;
        long y = Math.round(10 * point.y()) - tenthsY;
        if (x == 0 && y == 0) {
            return this;
        }
        if (y == 0) {
            text.append('h');
            append(x, false);
        } else if (x == 0) {
            text.append('v');
            append(y, false);
        } else {
            text.append('l');
            append(x, false);
            append(y, true);
        }
        tenthsX += x;
        tenthsY += y;
        return this;
    }

    /** Goes on to the right and then up or down to a place. */
    public Path stepTo(Point point) {
        return to(new Point(point.x(), tenthsY / 10.0)).to(point);
    }

    /** Closes the shape. */
    public Path close() {
        text.append('z');
        return this;
    }

    private void append(long tenths, boolean isSecond) {
        if (isSecond && tenths >= 0) {
            text.append(' ');
        }
        text.append(Svg.number(tenths / 10.0));
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
