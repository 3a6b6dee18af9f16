package org.ionohaul.channel;

import java.util.List;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;

/** A measured level on a grid of instants, with what slow variation is faster than the readings. */
final class MeasuredGrid implements Level.Grid {
    /** dB by which the mean power of a normal level in dB lies over its mean, a dB² of variance: ln 10 / 20. */
    private static final double MEAN_OVER_MIDDLE = Math.log(10) / 20;

    private final MeasuredLevel measured;
    private final List<Schedule.Point> points;
    private final double stepSeconds;
    private final double raiseDb;
    private final GaussMarkov slow;
    private final GaussMarkov.Means means;

    /**
     * Prepares the grid.
     *
     * @param spellsDb by how much drop-outs and the like change the mean power, in dB: the readings hold that
     */
    MeasuredGrid(
            MeasuredLevel measured,
            SlowVariation variation,
            double stepSeconds,
            double spellsDb,
            TrialStreams streams) {
        this.measured = measured;
        this.points = measured.changeDb().points();
        this.stepSeconds = stepSeconds;
        this.raiseDb = -spellsDb;
        this.slow = new GaussMarkov(variation, stepSeconds, streams.openBlock(Purpose.SLOW_VARIATION, 0, 0));
        this.means = new GaussMarkov.Means(slow, longestHalf(), streams.openBlock(Purpose.SLOW_VARIATION, 0, 1));
    }

    @Override
    public double stepSeconds() {
        return stepSeconds;
    }

    @Override
    public double levelDb(int point) {
        double atSeconds = point * stepSeconds;
        double level = measured.changeDb().levelDb(atSeconds) + raiseDb;
        int half = halfWindow(atSeconds);
        return half < 0
                ? level + means.at(point) - MEAN_OVER_MIDDLE * slow.variance()
                : level + means.at(point) - means.about(point, half) - MEAN_OVER_MIDDLE * slow.varianceAboutMean(half);
    }

    /** Returns how many points either way a mean is taken over; below 0 where nothing was measured. */
    private int halfWindow(double atSeconds) {
        int next = measured.changeDb().nextAfter(atSeconds);
        double half = half(Math.min(Math.max(next, 1), points.size() - 1));
        boolean isMeasured = atSeconds >= points.get(0).atSeconds() - half
                && atSeconds <= points.get(points.size() - 1).atSeconds() + half;
        return isMeasured ? halfPoints(half) : -1;
    }

    /** Returns half the time that is averaged over between a reading and the one before, in seconds. */
    private double half(int next) {
        double apart =
                next > 0 ? points.get(next).atSeconds() - points.get(next - 1).atSeconds() : 0;
        return Math.max(measured.averageSeconds(), apart) / 2;
    }

    /** A point stands for a step about it. */
    private int halfPoints(double halfSeconds) {
        return (int) Math.max(0, Math.rint(halfSeconds / stepSeconds - 0.5));
    }

    private int longestHalf() {
        double longest = measured.averageSeconds() / 2;
        for (int i = 1; i < points.size(); i++) {
            longest = Math.max(longest, half(i));
        }
        return halfPoints(longest);
    }
}
