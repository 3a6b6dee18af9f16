package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.Leaders;
import org.ionohaul.analysis.Limit;
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
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.StudyResult;

/**
 * What may be promised of one file in one direction.
 *
 * @param summary what its trials come to, with one deadline at most
 * @param result the study it is of
 * @param confidence how sure the promise must be, above 0, below 1
 * @param confidences how sure, for the table
 */
record FilePromiseWords(CaseSummary summary, StudyResult result, double confidence, List<Double> confidences) {
    FilePromiseWords {
        confidences = List.copyOf(confidences);
    }

    List<String> lines(int width) {
        List<String> lines = new ArrayList<>();
        for (double deadline : summary.transfer().deadlinesSeconds()) {
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

    private String size() {
        return SizeText.size(summary.transfer().totalBytes());
    }

    private String chance(double deadline) {
        String within = size() + " within " + TimeText.given(deadline) + ": ";
        if (summary.modes().stream().allMatch(it -> share(it).value() == 0)) {
            return within + "on none of the simulated trials, with any mode.";
        }
        Leaders leaders = summary.deadlineLeaders().get(0);
        ModeSummary first = summary.modes().get(leaders.first());
        Estimate share = share(first);
        return within + "on at least " + OddsText.percent(share.low()) + " of trials with "
                + first.mode().title() + " (" + OddsText.percent(share.value()) + " of those simulated; "
                + OddsText.percentRange(share.low(), share.high()) + ")."
                + leaders.alike()
                        .map(alike -> " " + LeaderWords.sentence(names(leaders), alike, "by then"))
                        .orElse("");
    }

    private List<String> names(Leaders leaders) {
        return leaders.modes().stream()
                .map(it -> summary.modes().get(it).mode().title())
                .toList();
    }

    private static Estimate share(ModeSummary mode) {
        return mode.deadlines().get(0).chance();
    }

    private Table chances(double deadline) {
        List<List<Cell>> rows = IntStream.range(0, summary.modes().size())
                .mapToObj(mode -> List.of(
                        Cell.of(summary.modes().get(mode).mode().title()),
                        Cells.chance(share(summary.modes().get(mode))),
                        Cell.of(limit(mode, deadline).map(LimitWords::word).orElse(""))))
                .toList();
        return new Table(
                "Chance by mode, and what keeps most of the other trials",
                List.of(Cell.of("mode"), Cell.of("by " + TimeText.given(deadline)), Cell.of("else mostly")),
                rows);
    }

    private Optional<Limit> limit(int mode, double deadline) {
        return Limit.mostOften(trials().modes().get(mode).rows(), row -> row.deliveredSeconds(), deadline);
    }

    private CaseTrials trials() {
        return result.cases().stream()
                .filter(it -> it.direction() == summary.direction())
                .findFirst()
                .orElseThrow();
    }

    private SafeTime safe(int mode, double share) {
        return SafeTime.of(
                share,
                OrderedSample.of(trials().modes().get(mode).completionSeconds()),
                summary.modes().size());
    }

    private String plan() {
        List<SafeTime> times = IntStream.range(0, summary.modes().size())
                .mapToObj(mode -> safe(mode, confidence))
                .toList();
        if (times.get(0).seconds().isEmpty()) {
            return "No deadline can be promised safely for " + size() + " on " + OddsText.odds(confidence)
                    + " trials: so few were simulated; " + times.get(0).fewestTrials() + " are needed.";
        }
        int best = IntStream.range(0, times.size())
                .boxed()
                .min((a, b) -> Double.compare(seconds(times.get(a)), seconds(times.get(b))))
                .orElseThrow();
        return Double.isInfinite(seconds(times.get(best)))
                ? size() + " can't be promised for " + OddsText.odds(confidence)
                        + " trials within the time watched, with any mode."
                : "Promise " + size() + " within " + TimeText.plan(seconds(times.get(best))) + " with "
                        + summary.modes().get(best).mode().title() + ": on at least " + OddsText.odds(confidence)
                        + " trials it is through by then.";
    }

    private static double seconds(SafeTime time) {
        return time.seconds().orElse(Double.POSITIVE_INFINITY);
    }

    private Table times() {
        List<Cell> heads = Stream.concat(
                        Stream.of(Cell.of("mode")), confidences.stream().map(it -> Cell.of(OddsText.odds(it))))
                .toList();
        List<List<Cell>> rows = IntStream.range(0, summary.modes().size())
                .mapToObj(mode -> Stream.concat(
                                Stream.of(
                                        Cell.of(summary.modes().get(mode).mode().title())),
                                confidences.stream().map(it -> time(safe(mode, it))))
                        .toList())
                .toList();
        return new Table("Safe deadline by mode and confidence", heads, rows);
    }

    private static Cell time(SafeTime time) {
        if (time.seconds().isEmpty()) {
            return new Cell("?", time.fewestTrials() + " trials");
        }
        return Cell.of(Double.isInfinite(seconds(time)) ? "open" : TimeText.clock(Math.ceil(seconds(time))));
    }
}
