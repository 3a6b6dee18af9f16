package org.ionohaul.channel;

import java.util.List;
import org.ionohaul.limits.OutOfRange;

/**
 * A level that changes over the clock: points joined by straight lines, level before the first and after the last. Two
 * points at nearly the same instant make a step. No points: always 0 dB.
 *
 * @param points the points, in order of time
 */
public record Schedule(List<Point> points) {
    /** A level of 0 dB at all times. */
    public static final Schedule NONE = new Schedule(List.of());

    /**
     * A level at an instant.
     *
     * @param atSeconds when, in seconds since the trial began; may be negative (before it)
     * @param levelDb the level in dB
     */
    public record Point(double atSeconds, double levelDb) {
        /** Checks that both are finite. */
        public Point {
            OutOfRange.unless(Math.abs(atSeconds) < 1e7, "atSeconds", "must be within ten million", atSeconds);
            OutOfRange.unless(Math.abs(levelDb) < 1000, "levelDb", "must be within 1000", levelDb);
        }
    }

    /** Copies the points and checks their order. */
    public Schedule {
        points = List.copyOf(points);
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).atSeconds() > points.get(i - 1).atSeconds())) {
                throw new IllegalArgumentException("points must go forward in time: " + points);
            }
        }
    }

    /**
     * Returns the level at an instant, in dB.
     *
     * @param atSeconds the instant, in seconds since the trial began
     */
    public double levelDb(double atSeconds) {
        if (points.isEmpty()) {
            return 0;
        }
        int next = nextAfter(atSeconds);
        if (next == 0 || next == points.size()) {
            return points.get(Math.max(0, next - 1)).levelDb();
        }
        return between(points.get(next - 1), points.get(next), atSeconds);
    }

    /** Returns the number of the first point after an instant; that of points if there is none. */
    int nextAfter(double atSeconds) {
        int low = 0;
        int high = points.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (points.get(middle).atSeconds() <= atSeconds) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /**
     * Returns this schedule as somebody sees it who begins later.
     *
     * @param seconds by how much later, in seconds; may be negative
     */
    public Schedule startingAfter(double seconds) {
        return new Schedule(points.stream()
                .map(it -> new Point(it.atSeconds() - seconds, it.levelDb()))
                .toList());
    }

    private static double between(Point from, Point to, double atSeconds) {
        double share = (atSeconds - from.atSeconds()) / (to.atSeconds() - from.atSeconds());
        return from.levelDb() + share * (to.levelDb() - from.levelDb());
    }
}
