package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.DeadlineChance;
import org.ionohaul.analysis.FilePromises;
import org.ionohaul.analysis.Leaders;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.SafeTime;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.statistics.Estimate;

/**
 * What may be promised of one file in one direction.
 *
 * @param promises what was worked out, of a file with one deadline at most
 * @param limits words on what keeps trials from a deadline
 */
record FilePromiseWords(FilePromises promises, LimitWords limits) {
    List<String> lines(int width) {
        List<String> lines = new ArrayList<>();
        for (double deadline : summary().transfer().deadlinesSeconds()) {
            lines.addAll(TextWrap.lines(chance(deadline), "  ", width));
            lines.add("");
            lines.addAll(new TextTable(chances(deadline)).lines(width));
            lines.add("");
        }
        lines.addAll(TextWrap.lines(plan(), "  ", width));
        lines.add("");
        lines.addAll(new TextTable(times()).lines(width));
        return lines;
    }

    /** Returns how surely it is through by the deadline, if there is one, and by when it may be promised. */
    List<String> sentences() {
        return Stream.concat(summary().transfer().deadlinesSeconds().stream().map(this::chance), Stream.of(plan()))
                .toList();
    }

    private CaseSummary summary() {
        return promises.summary();
    }

    private String title(int mode) {
        return summary().modes().get(mode).mode().title();
    }

    private String size() {
        return SizeText.size(summary().transfer().totalBytes());
    }

    private String chance(double deadline) {
        String within = size() + " within " + TimeText.given(deadline) + ": ";
        if (summary().modes().stream().allMatch(it -> chance(it).count().hits() == 0)) {
            return within + "on none of the simulated trials, with any mode.";
        }
        Leaders leaders = summary().deadlineLeaders().get(0);
        DeadlineChance first = chance(summary().modes().get(leaders.first()));
        Estimate share = first.chance();
        return within + "on "
                + OddsText.atLeast(first.safeShare(summary().modes().size())) + " of trials with "
                + title(leaders.first()) + " (" + OddsText.percent(share.value()) + " of those simulated; "
                + OddsText.percentRange(share.low(), share.high()) + ")."
                + alike(leaders);
    }

    private String alike(Leaders leaders) {
        return leaders.alike()
                .map(alike -> " "
                        + LeaderWords.sentence(
                                leaders.modes().stream().map(this::title).toList(), alike, "by then"))
                .orElse("");
    }

    private static DeadlineChance chance(ModeSummary mode) {
        return mode.deadlines().get(0);
    }

    private Table chances(double deadline) {
        List<List<Cell>> rows = summary().modes().stream()
                .map(mode -> List.of(
                        Cell.of(mode.mode().title()),
                        Cells.chance(chance(mode).chance()),
                        Cell.of(limits.reason(chance(mode).limits()))))
                .toList();
        return new Table(
                "Chance by mode, and what kept the other trials",
                List.of(Cell.of("mode"), Cell.of("by " + TimeText.given(deadline)), Cell.of("else")),
                rows);
    }

    private String plan() {
        SafeTime any = promises.asked().get(0);
        if (any.seconds().isEmpty()) {
            return "No deadline can be promised safely for " + size() + " on " + OddsText.odds(promises.confidence())
                    + " trials: so few were simulated; " + any.fewestTrials() + " are needed.";
        }
        return promises.soonest()
                .map(it -> "Promise " + size() + " within " + TimeText.plan(it.seconds()) + " with "
                        + title(it.mode()) + ": on at least " + OddsText.odds(promises.confidence())
                        + " trials it is through by then." + alike(it.leaders()))
                .orElse(size() + " can't be promised for " + OddsText.odds(promises.confidence())
                        + " trials within the time watched, with any mode.");
    }

    /** Returns the safe deadlines by mode and confidence. */
    Table times() {
        List<Cell> heads = Stream.concat(
                        Stream.of(Cell.of("mode")),
                        promises.confidences().stream().map(it -> Cell.of(OddsText.odds(it))))
                .toList();
        List<List<Cell>> rows = IntStream.range(0, summary().modes().size())
                .mapToObj(mode -> Stream.concat(
                                Stream.of(Cell.of(title(mode))),
                                promises.byConfidence().get(mode).stream().map(FilePromiseWords::time))
                        .toList())
                .toList();
        return new Table("Safe deadline by mode and confidence", heads, rows);
    }

    private static Cell time(SafeTime time) {
        if (time.seconds().isEmpty()) {
            return new Cell("?", time.fewestTrials() + " trials");
        }
        return Cell.of(
                Double.isInfinite(time.secondsOrNever()) ? "open" : TimeText.lengthRoundedUp(time.secondsOrNever()));
    }
}
