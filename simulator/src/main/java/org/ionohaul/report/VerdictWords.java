package org.ionohaul.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ionohaul.analysis.ArrivalLead;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.CauseTime;
import org.ionohaul.analysis.Limit;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.SavedTime;
import org.ionohaul.analysis.Side;
import org.ionohaul.analysis.Verdict;
import org.ionohaul.analysis.Verdict.Reason;
import org.ionohaul.analysis.Verdict.Standing;
import org.ionohaul.rendering.CauseLegend;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.statistics.Estimate;

/** What decides a case, in plain words. */
final class VerdictWords {
    private VerdictWords() {}

    /** Returns one to three sentences: who beats whom and why, and how the mode fails that fails more. */
    static String sentences(CaseSummary summary) {
        Verdict verdict = summary.verdict();
        return switch (verdict.standing()) {
            case ALONE -> alone(summary.best(), verdict);
            case SURER, SOONER ->
                summary.leaders().isSole()
                        ? ahead(summary.best(), summary.next(), verdict)
                        : alike(summary) + arrival(summary.best(), summary.next(), verdict.moreArrives());
            case MIXED, OPEN -> alike(summary) + arrival(summary.best(), summary.next(), verdict.moreArrives());
        };
    }

    private static String alone(ModeSummary mode, Verdict verdict) {
        String opening = verdict.reason() == Reason.NOTHING_ARRIVES
                ? "No mode delivers everything within the time watched; most of "
                : "Most of ";
        CauseTime most = verdict.most().orElseThrow();
        return opening + mode.mode().title() + "'s time, " + TimeText.length(most.meanSeconds()) + " of "
                + TimeText.length(mode.meanElapsedSeconds()) + ", goes into "
                + CauseLegend.of(most.cause()).name() + "."
                + failure(mode);
    }

    private static String ahead(ModeSummary best, ModeSummary next, Verdict verdict) {
        String first = best.mode().title();
        String second = next.mode().title();
        String standing = verdict.standing() == Standing.SURER
                ? first + " beats " + second
                : "By " + (best.deadlines().isEmpty() ? "how surely they deliver " : "the deadlines ") + first + " and "
                        + second + " can't be told apart; " + first + " is usually through first,";
        if (verdict.reason() == Reason.MORE_ARRIVES) {
            return standing + " mostly because it gets through at all more often," + delivered(best, next)
                    + ofDeadlines(ArrivalLead.of(best, next), best.deadlines().size())
                    + failure(next) + later(second, verdict);
        }
        return verdict.saved().map(it -> saving(standing, it)).orElse(stop(standing))
                + arrival(best, next, verdict.moreArrives())
                + later(second, verdict);
    }

    /** What "mostly" is measured by. */
    private static String ofDeadlines(ArrivalLead lead, int deadlines) {
        return deadlines == 0
                ? ""
                : " That is " + points(lead.deliveredShare()) + " of 100 trials more; its lead in "
                        + (deadlines == 1
                                ? "keeping the deadline is "
                                : "deadlines kept is, in the mean over " + deadlines + ", ")
                        + points(lead.meanDeadlineShare()) + " of 100.";
    }

    private static String points(double share) {
        return String.format(Locale.ROOT, "%.0f", 100 * share);
    }

    /** Most of a lead is more than half of it; whichever it is, both numbers are told. */
    private static String saving(String standing, SavedTime saved) {
        String cause = CauseLegend.of(saved.cause().cause()).name();
        String less = TimeText.length(saved.cause().meanSeconds());
        String where = "mean of the " + SizeText.grouped(saved.trials()) + " trials on which both deliver";
        if (Math.round(saved.cause().meanSeconds()) == 0 || Math.round(saved.leadSeconds()) <= 0) {
            return stop(standing) + " Where both deliver, its sessions are no shorter.";
        }
        String lead = TimeText.length(saved.leadSeconds());
        if (!saved.isMostOfLead()) {
            return stop(standing) + " Its sessions are shorter by " + lead + " (" + where
                    + "), and no single thing makes most of that: the largest is " + less + " less on " + cause + ".";
        }
        return saved.partOfLead() > 1
                ? standing + " mostly because it spends " + less + " less a trial on " + cause
                        + "; as it spends more on other things, its sessions are shorter by " + lead + " (" + where
                        + ")."
                : standing + " mostly because it spends " + less + " less a trial on " + cause + ", "
                        + OddsText.percent(saved.partOfLead()) + " of the " + lead
                        + " by which its sessions are shorter (" + where + ").";
    }

    private static String stop(String standing) {
        return (standing.endsWith(",") ? standing.substring(0, standing.length() - 1) : standing) + ".";
    }

    private static String later(String next, Verdict verdict) {
        return verdict.usuallyFirst() == Side.SECOND ? " Yet " + next + " is usually the sooner." : "";
    }

    private static String alike(CaseSummary summary) {
        List<String> names = titles(summary, summary.leaders().modes());
        String what =
                summary.transfer().deadlinesSeconds().isEmpty() ? "in how often they deliver" : "by each deadline";
        return summary.verdict().standing() == Standing.MIXED
                ? mixed(summary, names)
                : LeaderWords.sentence(names, summary.leaders().alike().orElseThrow(), what);
    }

    private static String mixed(CaseSummary summary, List<String> names) {
        String third = names.size() == 2
                ? ""
                : " " + LeaderWords.and(names.subList(2, names.size())) + " can't be told apart from them.";
        return "Which of " + names.get(0) + " and " + names.get(1) + " is better depends on the deadline: "
                + kept(summary, names.get(0), Side.FIRST) + ", " + kept(summary, names.get(1), Side.SECOND) + "."
                + third;
    }

    private static String kept(CaseSummary summary, String name, Side side) {
        List<Side> sides = summary.verdict().deadlines();
        return name + " keeps "
                + LeaderWords.and(IntStream.range(0, sides.size())
                        .filter(i -> sides.get(i) == side)
                        .mapToObj(i -> TimeText.given(
                                summary.transfer().deadlinesSeconds().get(i)))
                        .toList())
                + " more often";
    }

    private static List<String> titles(CaseSummary summary, List<Integer> modes) {
        return modes.stream().map(it -> summary.modes().get(it).mode().title()).toList();
    }

    private static String arrival(ModeSummary best, ModeSummary next, Side more) {
        return switch (more) {
            case FIRST ->
                " " + best.mode().title() + " also delivers more often," + delivered(best, next) + failure(next);
            case SECOND ->
                " But " + next.mode().title() + " delivers more often," + delivered(next, best) + failure(best);
            case NEITHER -> "";
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
        String named = mode.failures().ranked().stream()
                .map(it -> way(it.limit()) + " (" + OddsText.percent(it.count().share()) + " of trials)")
                .collect(Collectors.joining(" or "));
        return named.isEmpty() ? "" : " When " + mode.mode().title() + " fails, it " + named + ".";
    }

    private static String way(Limit limit) {
        return switch (limit) {
            case NO_LINK -> "never gets a link";
            case LOST_LINKS -> "loses its link and gives up";
            case PATIENCE -> "is broken off by an operator out of patience";
            case HORIZON, DEADLINE -> "is still sending when watching ends";
            case WRONG -> "delivers wrong bytes that no check notices";
        };
    }
}
