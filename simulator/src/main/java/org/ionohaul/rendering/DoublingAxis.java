package org.ionohaul.rendering;

import java.util.List;
import java.util.stream.DoubleStream;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Tick;

/**
 * An axis of time on which every doubling is equally long, for times that differ widely.
 *
 * @param lowSeconds where it begins, above 0
 * @param highSeconds where it ends
 */
public record DoublingAxis(double lowSeconds, double highSeconds) {
    private static final List<Double> MARKS = List.of(
            1.0, 2.0, 5.0, 15.0, 30.0, 60.0, 120.0, 240.0, 480.0, 900.0, 1800.0, 3600.0, 7200.0, 14_400.0, 28_800.0,
            57_600.0);

    /**
     * Returns the axis that holds all of some times with some room.
     *
     * @param seconds times; those that are not finite don't matter
     */
    public static DoublingAxis over(DoubleStream seconds) {
        double[] finite = seconds.filter(Double::isFinite)
                .map(it -> Math.max(1, it))
                .sorted()
                .toArray();
        return finite.length == 0
                ? new DoublingAxis(60, 3600)
                : new DoublingAxis(finite[0] / 1.2, finite[finite.length - 1] * 1.2);
    }

    /** Returns the scale between two pixels. */
    public Scale scale(double from, double to) {
        return Scale.logarithmic(lowSeconds, highSeconds, from, to);
    }

    /** Returns its marks. */
    public List<Tick> ticks() {
        return MARKS.stream()
                .filter(it -> it >= lowSeconds && it <= highSeconds)
                .map(it -> new Tick(it, TimeText.given(it)))
                .toList();
    }
}
