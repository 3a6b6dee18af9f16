package org.ionohaul.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * Where values lie in a picture.
 *
 * @param low value at {@code from}
 * @param high value at {@code to}, above {@code low}
 * @param from pixel of the low end
 * @param to pixel of the high end, below {@code from} on an axis that rises
 * @param isLogarithmic whether equal ratios are equally long; then values are positive
 */
public record Scale(double low, double high, double from, double to, boolean isLogarithmic) {
    private static final double[] ROUND = {1, 2, 5, 10};
    /** How far rounding may put the last mark beyond the end, in steps. */
    private static final double SLACK = 1e-6;

    /** Checks that the scale has a length. */
    public Scale {
        if (!(high > low) || (isLogarithmic && !(low > 0))) {
            throw new IllegalArgumentException("no scale from " + low + " to " + high);
        }
    }

    /** Returns a scale on which equal differences are equally long. */
    public static Scale linear(double low, double high, double from, double to) {
        return new Scale(low, high, from, to, false);
    }

    /** Returns a scale on which equal ratios are equally long. */
    public static Scale logarithmic(double low, double high, double from, double to) {
        return new Scale(low, high, from, to, true);
    }

    /** Returns the pixel of a value, which may lie beyond the ends. */
    public double at(double value) {
        double share = isLogarithmic ? Math.log(value / low) / Math.log(high / low) : (value - low) / (high - low);
        return from + share * (to - from);
    }

    /** Returns the pixel of a value, or that of the end beyond which it lies. */
    public double within(double value) {
        return at(clamped(value));
    }

    /** Returns a value, or that of the end beyond which it lies. */
    public double clamped(double value) {
        return Math.min(high, Math.max(low, value));
    }

    /** Returns whether a value lies on the scale. */
    public boolean holds(double value) {
        return value >= low && value <= high;
    }

    /** Returns marks at round values (1, 2 or 5 times a power of ten apart), at most so many, with their labels. */
    public List<Tick> ticks(int atMost, DoubleFunction<String> label) {
        return marks(roundStep((high - low) / Math.max(1, atMost - 1)), label);
    }

    /** Returns marks at whole multiples of a step, with their labels. */
    public List<Tick> marks(double step, DoubleFunction<String> label) {
        List<Tick> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(low / step - SLACK); i * step <= high + SLACK * step; i++) {
            ticks.add(new Tick(i * step, label.apply(i * step)));
        }
        return ticks;
    }

    /** Returns the least step of 1, 2 or 5 times a power of ten that is no less than asked for. */
    public static double roundStep(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double each : ROUND) {
            if (each * power >= least * (1 - SLACK)) {
                return each * power;
            }
        }
        return ROUND[ROUND.length - 1] * power;
    }

    /** Returns a number as an axis writes it: no more decimals than it has, at most three. */
    public static String number(double value) {
        double thousandths = Math.rint(value * 1000) / 1000;
        return thousandths == Math.rint(thousandths) ? Long.toString((long) thousandths) : Double.toString(thousandths);
    }
}
