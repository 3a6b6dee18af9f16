package org.ionohaul.rendering;

import java.util.Locale;
import org.ionohaul.statistics.Estimate;

/**
 * Words for chances: plain odds, which people read better than percentages of nothing in particular.
 *
 * <p>Never says "always" or "never": that none of so many trials failed does not mean that none can.
 */
public final class OddsText {
    private OddsText() {}

    /**
     * Returns a chance as odds, such as {@code 9 of 10} or {@code 97 of 100}, rounded to the nearest that are not sure.
     *
     * @param probability from 0 to 1
     */
    public static String odds(double probability) {
        long tenths = Math.round(10 * requireChance(probability));
        if (tenths >= 1 && tenths <= 9 && Math.abs(10 * probability - tenths) < 0.05) {
            return tenths + " of 10";
        }
        long hundredths = Math.round(100 * probability);
        if (hundredths == 0) {
            return "fewer than 1 of 100";
        }
        return hundredths == 100 ? "more than 99 of 100" : hundredths + " of 100";
    }

    /**
     * Returns how many trials a simulated share comes to, without claiming more than its interval carries: a few
     * trials, all of them good, are not "more than 99 of 100".
     *
     * @param share a share with its interval
     */
    public static String simulated(Estimate share) {
        if (share.value() == 1 && share.low() < 0.99) {
            return "all simulated";
        }
        return share.value() == 0 && share.high() > 0.01 ? "none of the simulated" : odds(share.value());
    }

    /**
     * Returns a chance as a percentage, such as {@code 83 %}, with {@code <1 %} and {@code >99 %} at the ends.
     *
     * @param probability from 0 to 1
     */
    public static String percent(double probability) {
        return percentNumber(probability) + " %";
    }

    /**
     * Returns a chance that errs on the safe side, such as {@code at least 83 %}: rounded down to whole percent.
     *
     * @param probability from 0 to 1
     */
    public static String atLeast(double probability) {
        // A bound of 0.29 is 28.999... hundredths.
        return "at least " + (int) Math.floor(100 * requireChance(probability) + 1e-9) + " %";
    }

    /**
     * Returns an interval of chances, such as {@code 80-85 %} or {@code 98 to >99 %}.
     *
     * @param low from 0 to 1
     * @param high from 0 to 1
     */
    public static String percentRange(double low, double high) {
        String from = percentNumber(low);
        String to = percentNumber(high);
        if (from.equals(to)) {
            return to + " %";
        }
        boolean areNumbers = (from + to).chars().allMatch(Character::isDigit);
        return from + (areNumbers ? "-" : " to ") + to + " %";
    }

    private static String percentNumber(double probability) {
        double percent = 100 * requireChance(probability);
        if (percent < 0.5) {
            return percent == 0 ? "0" : "<1";
        }
        if (percent >= 99.5) {
            return percent == 100 ? "100" : ">99";
        }
        return String.format(Locale.ROOT, "%.0f", percent);
    }

    private static double requireChance(double probability) {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("probability must be from 0 to 1: " + probability);
        }
        return probability;
    }
}
