package org.ionohaul.scenario;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.channel.Schedule;

/**
 * A point of a schedule whose instant and level may be uncertain.
 *
 * @param at the moment as written
 * @param middleSeconds the middle of it, in seconds after pressing send
 * @param drawnAt where the moment's chance comes from
 * @param rise the level, in dB
 */
record DescribedPoint(Moment at, double middleSeconds, Input drawnAt, Input rise) {
    /** The least time between points: what is drawn into the wrong order becomes a step. */
    private static final double STEP_SECONDS = 1e-3;

    /** Returns the schedule of one trial. */
    static Schedule schedule(List<DescribedPoint> points, Draws draws) {
        List<Schedule.Point> drawn = new ArrayList<>();
        double soonest = Double.NEGATIVE_INFINITY;
        for (DescribedPoint point : points) {
            double atSeconds = Math.max(soonest, point.middleSeconds + point.at.offset(point.drawnAt.in(draws)));
            drawn.add(new Schedule.Point(atSeconds, point.rise.in(draws)));
            soonest = atSeconds + STEP_SECONDS;
        }
        return new Schedule(drawn);
    }
}
