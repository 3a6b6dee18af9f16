package org.ionohaul.report;

import java.util.List;
import org.ionohaul.analysis.Alike;
import org.ionohaul.rendering.TimeText;

/** What is said of modes that can't be told apart: who they are, and by how much they may differ at most. */
public final class LeaderWords {
    /** Up to so many of 100 trials modes are called alike; beyond that it is trials that lack. */
    private static final int MOST_ALIKE = 10;

    private LeaderWords() {}

    /** Returns names in a row, such as {@code Hare, Snail and Tortoise}. */
    public static String and(List<String> names) {
        return joined(names, "and");
    }

    /** Returns names to choose from, such as {@code Hare, Snail or Tortoise}. */
    public static String or(List<String> names) {
        return joined(names, "or");
    }

    private static String joined(List<String> names, String last) {
        int end = names.size() - 1;
        return end == 0 ? names.get(0) : String.join(", ", names.subList(0, end)) + " " + last + " " + names.get(end);
    }

    /** Returns how far modes are alike in a chance, such as {@code alike within 3 of 100 trials}. */
    public static String chance(Alike alike) {
        return (isClose(alike) ? "alike within " : "open by up to ") + hundredths(alike) + " of 100 trials";
    }

    /** Returns how far modes are alike in their times, such as {@code , 0:12 on the median}; empty if that is open. */
    public static String time(Alike alike) {
        return Double.isFinite(alike.seconds())
                ? TimeText.lengthRoundedUp(Math.max(1, alike.seconds())) + " on the median"
                : "";
    }

    /**
     * Returns the sentence on modes that can't be told apart.
     *
     * @param names what people call them
     * @param what in what their chances are compared, such as {@code by each deadline}
     */
    static String sentence(List<String> names, Alike alike, String what) {
        String share = isClose(alike)
                ? " can't be told apart: " + what + " they are alike within " + hundredths(alike) + " of 100 trials"
                : " can't be told apart on so few trials: " + what + " they may differ by up to " + hundredths(alike)
                        + " of 100";
        String time = time(alike);
        return and(names) + share + (time.isEmpty() ? "" : ", and within " + time) + ".";
    }

    /** Returns the same of the chance of one deadline, as the second half of a sentence on the first of them. */
    static String others(List<String> names, Alike alike) {
        return and(names)
                + (isClose(alike)
                        ? (names.size() == 1 ? " is" : " are") + " alike within " + hundredths(alike) + " of 100"
                        : " may differ from that by up to " + hundredths(alike) + " of 100, on so few trials");
    }

    private static boolean isClose(Alike alike) {
        return hundredths(alike) <= MOST_ALIKE;
    }

    /** Rounded up, and never to nothing. */
    private static int hundredths(Alike alike) {
        return Math.max(1, (int) Math.ceil(100 * alike.share()));
    }
}
