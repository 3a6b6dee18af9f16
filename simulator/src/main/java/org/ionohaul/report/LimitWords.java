package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.DeadlineChance;
import org.ionohaul.analysis.Limit;
import org.ionohaul.analysis.Limits;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.SizePromises;
import org.ionohaul.channel.End;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Scenario;

/** What keeps a file from being through by a deadline, in words. */
final class LimitWords {
    private final Scenario scenario;

    /** Prepares the words on the trials of a scenario: patience and horizon are told in its own numbers. */
    LimitWords(Scenario scenario) {
        this.scenario = scenario;
    }

    /** Returns what kept the late trials, such as {@code mostly the link was lost and redials used up}; empty if none. */
    String reason(Limits limits) {
        double part = limits.partOfLargest();
        String how = part == 1 ? "" : part > 0.5 ? "mostly " : "most often ";
        return limits.largest().map(it -> how + reason(it)).orElse("");
    }

    private String reason(Limit limit) {
        return switch (limit) {
            case DEADLINE -> "it was still being sent";
            case HORIZON -> "the horizon of " + TimeText.given(scenario.horizonSeconds()) + " ended it";
            case PATIENCE ->
                "the operator's " + TimeText.given(scenario.station(End.NEAR).patienceSeconds()) + " ran out";
            case LOST_LINKS -> "the link was lost and redials used up";
            case NO_LINK -> "no call was answered";
            case WRONG -> "wrong bytes came that no check noticed";
        };
    }

    /**
     * Returns the modes whose chance of a deadline something else decides than the deadline, a sentence a mode, such as
     * {@code Slow whistle, 0 % by 25 min: the operator's 45 min ran out.}
     */
    List<String> ofModes(CaseSummary summary) {
        return summary.modes().stream()
                .filter(mode -> mode.deadlines().stream().anyMatch(DeadlineChance::isLimitedOtherwise))
                .map(this::ofMode)
                .toList();
    }

    private String ofMode(ModeSummary mode) {
        return mode.mode().title() + ", "
                + String.join(
                        "; ",
                        mode.deadlines().stream()
                                .filter(DeadlineChance::isLimitedOtherwise)
                                .map(this::ofDeadline)
                                .toList())
                + ".";
    }

    private String ofDeadline(DeadlineChance deadline) {
        return OddsText.percent(deadline.chance().value()) + " by " + TimeText.given(deadline.deadlineSeconds()) + ": "
                + (deadline.count().hits() == 0 ? "" : "else ")
                + reason(deadline.limits());
    }

    /** Returns the sentence that follows a promise; empty where it is the deadline itself that stops a larger file. */
    String stops(Limits limits) {
        return limits.largest()
                .filter(it -> it != Limit.DEADLINE)
                .map(it -> " What stops a larger one is not the deadline: " + reason(limits) + ".")
                .orElse("");
    }

    /** Returns what stops larger files by each deadline, those alike together, so that rows alike are explained. */
    String byDeadline(SizePromises.OfMode mode) {
        List<String> runs = new ArrayList<>();
        List<SizePromises.ByDeadline> rows = mode.deadlines();
        for (int from = 0; from < rows.size(); ) {
            String reason = later(rows.get(from).asked().limits());
            int to = from;
            while (to + 1 < rows.size()
                    && later(rows.get(to + 1).asked().limits()).equals(reason)) {
                to++;
            }
            runs.add(within(rows, from, to) + ": " + (reason.isEmpty() ? "nothing does" : reason));
            from = to + 1;
        }
        return "What stops a larger file within " + String.join("; within ", runs) + ".";
    }

    private String later(Limits limits) {
        return reason(limits) + (limits.areAllForGood() ? ", so that a later deadline promises no more" : "");
    }

    private static String within(List<SizePromises.ByDeadline> rows, int from, int to) {
        String first = TimeText.given(rows.get(from).asked().deadlineSeconds());
        return from == to
                ? first
                : first + " to " + TimeText.given(rows.get(to).asked().deadlineSeconds());
    }
}
