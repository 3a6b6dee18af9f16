package org.ionohaul.report;

import org.ionohaul.analysis.Difference;
import org.ionohaul.analysis.Difference.Fifth;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.statistics.Estimate;

/** When two modes differ most, in plain words. */
final class DifferenceWords {
    private static final int HIGHEST = 4;
    private static final double LEAST_NAMED = 0.02;

    private final Scenario scenario;
    private final Direction direction;
    private final Difference difference;
    private final String first;
    private final String second;

    /**
     * Prepares the words.
     *
     * @param first what people call the one mode
     * @param second what people call the other
     */
    DifferenceWords(Scenario scenario, Direction direction, Difference difference, String first, String second) {
        this.scenario = scenario;
        this.direction = direction;
        this.difference = difference;
        this.first = first;
        this.second = second;
    }

    /**
     * Returns the sentence, such as {@code They differ most where the middle SNR at Flood desk over the first 12 minutes is
     * lowest (up to 6 dB): there Hare is first on 97 % of 40 (81-99 %), on the median one by 5 min 10 s (4m02s to 6m11s). They
     * differ least where it is highest (from 14 dB): there Hare is first on 61 % of 40 (40-78 %), on the median one by 20 s (2s to
     * 41s).} Lowest to highest are fifths of the trials. The time is told, as a sky that gets worse has other values over a whole trial.
     */
    String sentence() {
        return "They differ most where the " + measure() + " at " + station() + " over the first "
                + TimeText.plan(difference.watchedSeconds()) + " is " + place(difference.most()) + " ("
                + range(difference.most()) + "): there " + lead(difference.most())
                + ". They differ least where it is " + place(difference.least()) + " ("
                + range(difference.least()) + "): there " + lead(difference.least()) + ".";
    }

    private String station() {
        return scenario.station(difference.isAtReceiver() ? direction.receiver() : direction.sender())
                .name();
    }

    private String measure() {
        return switch (difference.measure()) {
            case MIDDLE_SINR_DB -> "middle SNR";
            case WORST_TENTH_SINR_DB -> "SNR in the worst tenth of the time";
            case OCCUPIED_SHARE -> "share of time with other stations";
        };
    }

    private static String place(Fifth fifth) {
        return switch (fifth.place()) {
            case 0 -> "lowest";
            case 1 -> "low";
            case 2 -> "middling";
            case 3 -> "high";
            default -> "highest";
        };
    }

    private String range(Fifth fifth) {
        String from = SkiesTables.value(difference.measure(), fifth.from());
        String to = SkiesTables.value(difference.measure(), fifth.to());
        if (from.equals(to)) {
            return from;
        }
        return switch (fifth.place()) {
            case 0 -> "up to " + to;
            case HIGHEST -> "from " + from;
            default -> from + " to " + to;
        };
    }

    /** Of the mode that is ahead there. */
    private String lead(Fifth fifth) {
        Estimate lead = fifth.medianLeadSeconds();
        boolean isFirstAhead = lead.value() >= 0;
        Estimate share = isFirstAhead ? fifth.firstBefore() : fifth.secondBefore();
        String by = Double.isInfinite(lead.value())
                ? "mostly as the only one to get through" + neither(fifth)
                : "on the median one by " + TimeText.length(Math.abs(lead.value())) + range(lead, isFirstAhead);
        return (isFirstAhead ? first : second) + " is first on "
                + (share.value() == 1 ? "all " : OddsText.percent(share.value()) + " of ") + fifth.trials() + " ("
                + OddsText.percentRange(share.low(), share.high()) + "), " + by;
    }

    private static String range(Estimate lead, boolean isFirstAhead) {
        return TimeText.inBrackets(isFirstAhead ? lead.low() : -lead.high(), isFirstAhead ? lead.high() : -lead.low());
    }

    private static String neither(Fifth fifth) {
        double share = fifth.unledShare();
        return share < LEAST_NAMED ? "" : ", and on " + OddsText.percent(share) + " neither does";
    }
}
