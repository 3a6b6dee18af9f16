package org.ionohaul.report;

import java.util.List;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.SavedTime;
import org.ionohaul.analysis.Verdict;
import org.ionohaul.rendering.CauseLegend;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Scenario;

/** The one sentence on each case that stands below the grid: who is ahead, and by what. */
final class AnswerWords {
    private AnswerWords() {}

    /** Returns the sentence on a case, which names it first. */
    static String sentence(Scenario scenario, CaseSummary summary) {
        return CaseWords.capital(summary.transfer().name()) + " to "
                + scenario.station(summary.direction().receiver()).name() + ": " + standing(summary);
    }

    private static String standing(CaseSummary summary) {
        Verdict verdict = summary.verdict();
        if (verdict.reason() == Verdict.Reason.NOTHING_ARRIVES) {
            return "no mode gets through on any of "
                    + SizeText.grouped(summary.best().trials()) + " trials.";
        }
        if (verdict.reason() == Verdict.Reason.ONLY_ONE_MODE) {
            return title(summary.best()) + " gets through on "
                    + OddsText.percent(summary.best().delivered().value()) + " of trials.";
        }
        if (!summary.leaders().isSole()) {
            return open(summary, verdict);
        }
        ModeSummary next = summary.modes().get(summary.ranking().get(1));
        return title(summary.best()) + lead(verdict, title(next)) + why(summary.best(), next, verdict);
    }

    private static String open(CaseSummary summary, Verdict verdict) {
        List<String> names = summary.leaders().modes().stream()
                .map(it -> title(summary.modes().get(it)))
                .toList();
        if (verdict.standing() == Verdict.Standing.MIXED) {
            return "which of " + LeaderWords.and(names) + " is best depends on the deadline.";
        }
        return LeaderWords.and(names) + " can't be told apart"
                + summary.leaders()
                        .alike()
                        .map(it -> ": " + LeaderWords.chance(it))
                        .orElse("")
                + ".";
    }

    private static String lead(Verdict verdict, String next) {
        return verdict.standing() == Verdict.Standing.SURER
                ? " is ahead of " + next
                : " is usually first, before " + next;
    }

    /** Whatever makes most of the lead, beyond chance; else just by how much. */
    private static String why(ModeSummary best, ModeSummary next, Verdict verdict) {
        if (verdict.reason() == Verdict.Reason.MORE_ARRIVES) {
            return ", mostly because it gets through at all more often: on "
                    + OddsText.percent(best.delivered().value()) + " of trials against "
                    + OddsText.percent(next.delivered().value()) + ".";
        }
        return verdict.saved()
                        .filter(it -> Math.round(it.leadSeconds()) > 0)
                        .map(AnswerWords::saved)
                        .orElse("")
                + ".";
    }

    private static String saved(SavedTime saved) {
        String shorter = ": where both get through, it needs " + TimeText.length(saved.leadSeconds()) + " less";
        return saved.isMostOfLead()
                ? shorter + ", mostly on "
                        + CauseLegend.of(saved.cause().cause()).name()
                : shorter;
    }

    private static String title(ModeSummary mode) {
        return mode.mode().title();
    }
}
