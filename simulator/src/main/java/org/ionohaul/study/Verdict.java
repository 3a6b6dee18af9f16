package org.ionohaul.study;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.ionohaul.session.Cause;
import org.ionohaul.session.Outcome;
import org.ionohaul.statistics.Estimate;

/**
 * What decides a case, in one plain sentence: read off the time budgets and outcomes of the best mode and the next.
 *
 * @param reason what kind of thing decides
 * @param cause where the time goes that makes the difference, or most of the best mode's time
 * @param secondsSaved how much less of it the best mode needs a trial than the next one, in seconds; 0 without a next
 * @param isClear whether the best mode comes first more often than the next beyond chance, or keeps a deadline more often
 * @param sentence the plain sentence
 */
public record Verdict(Reason reason, Cause cause, double secondsSaved, boolean isClear, String sentence) {
    /** What kind of thing decides a case. */
    public enum Reason {
        /** No mode delivers anything. */
        NOTHING_ARRIVES,
        /** There is one mode only. */
        ONLY_ONE_MODE,
        /** The best mode delivers in more trials than the next, beyond chance. */
        MORE_ARRIVES,
        /** Both deliver about as often: the best mode needs less time for one thing. */
        LESS_TIME
    }

    /** Chance of a false alarm that is accepted when two modes are told apart. */
    private static final double SIGNIFICANCE = 0.05;

    /**
     * Returns the verdict on a case.
     *
     * @param ranked summaries of the modes, best first, at least one
     * @param comparisons the best against each other one, in the same order
     */
    static Verdict of(List<ModeSummary> ranked, List<Comparison> comparisons) {
        ModeSummary best = ranked.get(0);
        if (best.delivered().value() == 0) {
            return alone(Reason.NOTHING_ARRIVES, best, "No mode delivers everything within the time watched; most of ");
        }
        if (ranked.size() == 1) {
            return alone(Reason.ONLY_ONE_MODE, best, "Most of ");
        }
        return between(best, ranked.get(1), comparisons.get(0));
    }

    private static Verdict alone(Reason reason, ModeSummary mode, String opening) {
        CauseTime most = mode.causes().stream()
                .max(Comparator.comparingDouble(CauseTime::meanSeconds))
                .orElseThrow();
        String sentence = opening + mode.mode().title() + "'s time, " + duration(most.meanSeconds()) + " of "
                + duration(mode.meanElapsedSeconds()) + ", goes into " + words(most.cause()) + ".";
        return new Verdict(reason, most.cause(), 0, false, sentence);
    }

    private static Verdict between(ModeSummary best, ModeSummary next, Comparison pair) {
        CauseTime saved = mostSaved(best, next);
        boolean isClear = isClear(pair);
        String names = best.mode().title()
                + (isClear ? " beats " : " and ")
                + next.mode().title()
                + (isClear ? "" : " are too close to call");
        if (areApart(best.delivered(), next.delivered())) {
            String sentence = names + (isClear ? " because it delivers" : ", though the first delivers") + " in "
                    + percent(best.delivered()) + " of trials against " + percent(next.delivered()) + "; the other "
                    + failure(next) + ".";
            return new Verdict(Reason.MORE_ARRIVES, saved.cause(), saved.meanSeconds(), isClear, sentence);
        }
        String sentence = names + (isClear ? " mostly because it spends " : "; the first spends ")
                + duration(saved.meanSeconds()) + " less a trial on " + words(saved.cause()) + ".";
        return new Verdict(Reason.LESS_TIME, saved.cause(), saved.meanSeconds(), isClear, sentence);
    }

    /** How a mode fails most often when it fails. */
    private static String failure(ModeSummary mode) {
        double gaveUp = share(mode, Outcome.GAVE_UP);
        double running = share(mode, Outcome.RUNNING);
        return gaveUp >= running
                ? String.format(
                        Locale.ROOT,
                        "gives up in %.0f %%, after %.1f lost links a trial on average",
                        100 * gaveUp,
                        mode.meanLinksLost())
                : String.format(Locale.ROOT, "is still sending at the end in %.0f %%", 100 * running);
    }

    private static double share(ModeSummary mode, Outcome outcome) {
        return mode.outcomes().stream()
                .filter(it -> it.outcome() == outcome)
                .mapToDouble(it -> it.count().share())
                .sum();
    }

    private static CauseTime mostSaved(ModeSummary best, ModeSummary next) {
        CauseTime most = new CauseTime(Cause.DIALLING, Double.NEGATIVE_INFINITY);
        for (int i = 0; i < best.causes().size(); i++) {
            double saved =
                    next.causes().get(i).meanSeconds() - best.causes().get(i).meanSeconds();
            if (saved > most.meanSeconds()) {
                most = new CauseTime(best.causes().get(i).cause(), saved);
            }
        }
        return most;
    }

    private static boolean isClear(Comparison pair) {
        return (pair.firstBefore().hits() > pair.secondBefore().hits() && pair.signPValue() < SIGNIFICANCE)
                || pair.deadlines().stream()
                        .anyMatch(it -> it.first() > it.second() && it.exactPValue() < SIGNIFICANCE);
    }

    private static boolean areApart(Estimate higher, Estimate lower) {
        return higher.low() > lower.high();
    }

    private static String percent(Estimate share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share.value());
    }

    private static String duration(double seconds) {
        return Math.abs(seconds) < 60
                ? String.format(Locale.ROOT, "%.0f s", seconds)
                : String.format(Locale.ROOT, "%.1f min", seconds / 60);
    }

    private static String words(Cause cause) {
        return switch (cause) {
            case DIALLING -> "dialling";
            case INTRODUCTIONS -> "introductions";
            case PREAMBLES -> "preambles";
            case NEW_PAYLOAD -> "sending payload the first time";
            case REPEATED_PAYLOAD -> "repeating payload";
            case ACKNOWLEDGEMENTS -> "acknowledgements";
            case TURNAROUNDS -> "turnarounds";
            case SILENCE -> "waiting in silence";
            case REDIALLING -> "redialling after lost links";
            case HANGING_UP -> "hanging up";
        };
    }
}
