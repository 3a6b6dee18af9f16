package org.ionohaul.whatif;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.ionohaul.analysis.Alike;
import org.ionohaul.analysis.CasePoint;
import org.ionohaul.analysis.Margin;
import org.ionohaul.analysis.PairedEffect;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.report.LeaderWords;
import org.ionohaul.scenario.Mode;
import org.ionohaul.statistics.Estimate;

/** What is said about a point of a variation: which mode is best there and by how much, and what the change did. */
final class PointWords {
    /** How to read a change. */
    static final String CHANGE =
            "Change: of the time on the median trial, under the same sky, over trials on which the file gets through"
                    + " with at least one of the two values; below zero is sooner. In brackets if it could be chance."
                    + " \"Arrives\" and \"fails\": on most of those trials it gets through only after the change, or no"
                    + " longer. Each range by itself is made to hold the true value in about 95 of 100 such studies; changes are"
                    + " called such, here and in sentences, after correction for how many there are: of 100 such variations"
                    + " at most 5 tell one of a case that is none.";

    /** How to read which mode is best. */
    static final String BEST =
            "Best: the mode that keeps a deadline more often than each other one beyond chance or, where no deadline"
                    + " tells them apart, is through first more often. Modes that can't be told apart from it are named"
                    + " together, with the most by which they may differ. Corrected for the number of values: of 100 such"
                    + " variations at most 5 name a mode alone at any value of a case that is not the best there.";

    static final String TOO_CLOSE = "too close to call";
    static final String NONE = "none";

    private PointWords() {}

    /** Returns a time; in words if it is never. */
    static String time(Estimate seconds) {
        return Double.isInfinite(seconds.value()) ? "never" : TimeText.length(seconds.value());
    }

    /** Returns the change of a mode's time. */
    static String change(PairedEffect effect) {
        if (!effect.changesAnything()) {
            return "none";
        }
        String text = signed(effect.medianChangeSeconds().value());
        return effect.isBeyondChance() ? text : "(" + text + ")";
    }

    /** Returns the interval of a change of time; empty if there is no change. */
    static String changeRange(PairedEffect effect) {
        return effect.changesAnything() ? range(effect.medianChangeSeconds()) : "";
    }

    private static String range(Estimate change) {
        if (Double.isFinite(change.low()) && Double.isFinite(change.high())) {
            String low = signed(change.low());
            String high = signed(change.high());
            return low.equals(high) ? "" : low + " to " + high;
        }
        if (change.high() < 0 && Double.isFinite(change.high())) {
            return signed(change.high()) + " or more";
        }
        if (change.low() > 0 && Double.isFinite(change.low())) {
            return signed(change.low()) + " or more";
        }
        return change.low() == change.high() ? "" : "open";
    }

    /** Returns a change of time with its sign. */
    static String signed(double seconds) {
        if (Double.isInfinite(seconds)) {
            return seconds < 0 ? "arrives" : "fails";
        }
        return (Math.round(seconds) > 0 ? "+" : "") + TimeText.signed(seconds);
    }

    /** Returns a difference of chances in points of a hundred. */
    static Cell points(Estimate change) {
        String low = signedPoints(change.low());
        String high = signedPoints(change.high());
        return new Cell(signedPoints(change.value()), low.equals(high) ? "" : low + " to " + high);
    }

    static String signedPoints(double share) {
        long points = Math.round(100 * share);
        return points == 0 ? "0" : String.format(Locale.ROOT, "%+d", points);
    }

    /** Returns which mode is best: its title, those that can't be told apart, or none. */
    static String best(CasePoint point, List<Mode> modes) {
        return switch (point.choice()) {
            case NOTHING_ARRIVES -> NONE;
            case TOO_CLOSE_TO_CALL, CLEAR ->
                LeaderWords.or(point.leaders().modes().stream()
                        .map(it -> modes.get(it).title())
                        .toList());
        };
    }

    /** Returns the same as a sentence. */
    static String bestSentence(CasePoint point, List<Mode> modes) {
        return switch (point.choice()) {
            case NOTHING_ARRIVES -> "no mode gets anything through";
            case TOO_CLOSE_TO_CALL -> "best is " + best(point, modes) + ", which can't be told apart";
            case CLEAR -> best(point, modes) + " is best";
        };
    }

    /** Returns by how much it is ahead of the next, or how far those are alike that can't be told apart. */
    static String margin(CasePoint point, List<Mode> modes, List<Double> deadlinesSeconds) {
        if (point.choice() == CasePoint.Choice.NOTHING_ARRIVES) {
            return "nothing arrives";
        }
        return point.leaders()
                .alike()
                .map(it -> alike(it, !deadlinesSeconds.isEmpty()))
                .or(() -> point.margin().map(it -> lead(it, modes.get(it.next()).title(), deadlinesSeconds)))
                .orElse("the only mode");
    }

    private static String alike(Alike alike, boolean hasDeadlines) {
        String time = LeaderWords.time(alike);
        return LeaderWords.chance(alike)
                + (hasDeadlines ? " by each deadline" : " that get through")
                + (time.isEmpty() ? "" : ", " + time);
    }

    private static String lead(Margin margin, String next, List<Double> deadlinesSeconds) {
        if (margin.isUsuallyFirst()) {
            return "before " + next + " on "
                    + OddsText.percent(margin.bestBefore().value()) + " ("
                    + OddsText.percentRange(
                            margin.bestBefore().low(), margin.bestBefore().high()) + ")";
        }
        OptionalInt deadline = margin.tellingDeadline();
        return deadline.isEmpty()
                ? "gets through on " + ahead(margin.deliveredLead(), next)
                : "by " + TimeText.given(deadlinesSeconds.get(deadline.getAsInt())) + " on "
                        + ahead(margin.deadlineLeads().get(deadline.getAsInt()), next);
    }

    private static String ahead(Estimate lead, String next) {
        Cell points = points(lead);
        return points.text() + " % (" + points.detail() + ") against " + next;
    }
}
