package org.ionohaul.report;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.CauseTime;
import org.ionohaul.analysis.Failures;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.Verdict;
import org.ionohaul.analysis.Verdict.Arrival;
import org.ionohaul.analysis.Verdict.Reason;
import org.ionohaul.analysis.Verdict.Standing;
import org.ionohaul.rendering.CauseLegend;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.Proportion;

/** What decides a case, in plain words. */
final class VerdictWords {
    private VerdictWords() {}

    /** Returns one to three sentences: who beats whom and why, and how the mode fails that fails more. */
    static String sentences(CaseSummary summary) {
        Verdict verdict = summary.verdict();
        return verdict.standing() == Standing.ALONE
                ? alone(summary.best(), verdict)
                : between(summary.best(), summary.modes().get(summary.ranking().get(1)), verdict);
    }

    private static String alone(ModeSummary mode, Verdict verdict) {
        String opening = verdict.reason() == Reason.NOTHING_ARRIVES
                ? "No mode delivers everything within the time watched; most of "
                : "Most of ";
        CauseTime most = verdict.cause().orElseThrow();
        return opening + mode.mode().title() + "'s time, " + TimeText.clock(most.meanSeconds()) + " of "
                + TimeText.clock(mode.meanElapsedSeconds()) + ", goes into "
                + CauseLegend.of(most.cause()).name() + "."
                + failure(mode);
    }

    private static String between(ModeSummary best, ModeSummary next, Verdict verdict) {
        String standing = standing(best, next, verdict.standing());
        if (verdict.reason() == Reason.MORE_ARRIVES) {
            return standing
                    + (verdict.isClear()
                            ? " because it delivers"
                            : "; " + best.mode().title() + " delivers")
                    + delivered(best, next)
                    + failure(next);
        }
        return standing + saving(verdict) + arrival(best, next, verdict.moreArrives());
    }

    private static String standing(ModeSummary best, ModeSummary next, Standing standing) {
        String first = best.mode().title();
        String second = next.mode().title();
        return switch (standing) {
            case AHEAD -> first + " beats " + second;
            case NEXT_IS_SOONER ->
                first + " and " + second + " are too close to call by "
                        + (best.deadlines().isEmpty() ? "how surely they deliver" : "the deadlines") + ", but "
                        + second + " is usually the sooner";
            case OPEN, ALONE -> first + " and " + second + " are too close to call";
        };
    }

    private static String saving(Verdict verdict) {
        return switch (verdict.standing()) {
            case AHEAD ->
                verdict.cause()
                        .filter(it -> Math.round(it.meanSeconds()) > 0)
                        .map(it -> " mostly because it spends " + TimeText.clock(it.meanSeconds()) + " less a trial on "
                                + CauseLegend.of(it.cause()).name() + ", where both deliver.")
                        .orElse("; no single thing that time goes into explains it.");
            case NEXT_IS_SOONER -> ".";
            case OPEN, ALONE -> ": other trials could put either first.";
        };
    }

    private static String arrival(ModeSummary best, ModeSummary next, Arrival more) {
        return switch (more) {
            case BEST ->
                " " + best.mode().title() + " also delivers more often," + delivered(best, next) + failure(next);
            case NEXT ->
                " But " + next.mode().title() + " delivers more often," + delivered(next, best) + failure(best);
            case ALIKE -> "";
        };
    }

    private static String delivered(ModeSummary more, ModeSummary less) {
        String high = percent(more.delivered());
        String low = percent(less.delivered());
        return high.equals(low)
                ? " on " + fine(more.delivered()) + " of trials against " + fine(less.delivered()) + "."
                : " on " + high + " of trials against " + low + ".";
    }

    private static String percent(Estimate share) {
        return OddsText.percent(share.value());
    }

    private static String fine(Estimate share) {
        return String.format(Locale.ROOT, "%.2f %%", 100 * share.value());
    }

    /** Returns how a mode fails, the most frequent way first; nothing if it never does. */
    private static String failure(ModeSummary mode) {
        Failures failures = mode.failures();
        Map<String, Proportion> ways = Map.of(
                "never gets a link", failures.neverLinked(),
                "loses its link and gives up", failures.linksLost(),
                "is broken off by an operator out of patience", failures.outOfPatience(),
                "is still sending when watching ends", failures.stillSending());
        List<String> named = ways.entrySet().stream()
                .filter(it -> it.getValue().hits() > 0)
                .sorted(Comparator.comparing((Map.Entry<String, Proportion> it) ->
                                -it.getValue().hits())
                        .thenComparing(Map.Entry::getKey))
                .map(it -> it.getKey() + " (" + OddsText.percent(it.getValue().share()) + " of trials)")
                .toList();
        return named.isEmpty()
                ? ""
                : " When " + mode.mode().title() + " fails, it "
                        + named.stream().collect(Collectors.joining(" or ")) + ".";
    }
}
