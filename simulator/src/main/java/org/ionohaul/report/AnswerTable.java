package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.AnswerGrid;
import org.ionohaul.analysis.CaseAnswer;
import org.ionohaul.analysis.DeadlineAnswer;
import org.ionohaul.analysis.SafeTime;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.StudyResult;

/**
 * The {@link AnswerGrid} in words.
 *
 * @param order the colours of its modes
 * @param blocks a block for each transfer
 */
public record AnswerTable(ModeOrder order, List<Block> blocks) {
    /** How to read it. */
    public static final String READING =
            "\"Plan for\": at least 9 of 10 trials are through by then. \"At least\" holds in 95"
                    + " of 100 such studies, as far as simulated chance goes, for each mode named.";

    /** More names than that are counted, if they are all there are. */
    private static final int MOST_NAMES = 3;

    /**
     * What is sent.
     *
     * @param what the transfer and its files
     * @param heads heads of the columns of answers
     * @param rows a row for each way
     */
    public record Block(String what, List<String> heads, List<Row> rows) {}

    /**
     * One way.
     *
     * @param number the case's number in the study, from 1
     * @param route which way
     * @param answers one a head
     */
    public record Row(int number, String route, List<Answer> answers) {}

    /**
     * What stands in one place.
     *
     * @param modes the modes that are named, best first; empty if none can be
     * @param figure how surely or how soon
     * @param safe the safe end of it; empty if the figure is safe itself
     */
    public record Answer(List<String> modes, String figure, String safe) {}

    /** Returns a place's modes by name or, if they are all of many, as one entry that counts them. */
    public List<String> shown(Answer answer) {
        int count = answer.modes().size();
        return count > MOST_NAMES && count == order.names().size()
                ? List.of("any of " + count + " modes")
                : answer.modes();
    }

    /** Returns what stands between a name and the next in a place: a comma, "or" before the last, nothing after it. */
    public String after(Answer answer, String name) {
        List<String> names = shown(answer);
        int left = names.size() - 1 - names.indexOf(name);
        return left == 0 ? "" : left == 1 ? " or" : ",";
    }

    /** Returns the page's style of a mode; empty if the name is no mode's. */
    public String style(String name) {
        String style = order.style(name);
        return style.isEmpty() ? "" : " " + style;
    }

    static AnswerTable of(StudyResult result, StudySummary summary) {
        return of(
                result,
                summary,
                new ModeOrder(
                        result.scenario().modes().stream().map(Mode::title).toList()));
    }

    static AnswerTable of(StudyResult result, StudySummary summary, ModeOrder order) {
        Scenario scenario = result.scenario();
        List<Block> blocks = new ArrayList<>();
        int number = 1;
        for (List<CaseAnswer> rows : AnswerGrid.of(summary).transfers()) {
            blocks.add(block(scenario, rows, number, result.trialsDone()));
            number += rows.size();
        }
        return new AnswerTable(order, blocks);
    }

    private static Block block(Scenario scenario, List<CaseAnswer> rows, int number, int trials) {
        CaseAnswer first = rows.get(0);
        return new Block(
                CaseWords.heading(first.transfer()),
                Stream.concat(Stream.of("plan for"), first.deadlines().stream().map(AnswerTable::head))
                        .toList(),
                IntStream.range(0, rows.size())
                        .mapToObj(i -> row(scenario, rows.get(i), number + i, trials))
                        .toList());
    }

    private static String head(DeadlineAnswer answer) {
        return Double.isInfinite(answer.deadlineSeconds())
                ? "through at all"
                : "within " + TimeText.given(answer.deadlineSeconds());
    }

    private static Row row(Scenario scenario, CaseAnswer row, int number, int trials) {
        return new Row(
                number,
                "to " + scenario.station(row.direction().receiver()).name(),
                Stream.concat(Stream.of(plan(row)), row.deadlines().stream().map(it -> answer(it, trials)))
                        .toList());
    }

    private static Answer plan(CaseAnswer row) {
        SafeTime plan = row.plan();
        if (plan.seconds().isEmpty()) {
            return new Answer(List.of(), "open: " + plan.fewestTrials() + " trials are needed", "");
        }
        double seconds = plan.seconds().getAsDouble();
        return Double.isInfinite(seconds)
                ? new Answer(List.of(), "no time is safe for 9 of 10", "")
                : new Answer(List.of(row.planned().title()), TimeText.plan(seconds), "");
    }

    private static Answer answer(DeadlineAnswer answer, int trials) {
        return answer.modes().isEmpty()
                ? new Answer(List.of(), "no mode, on none of " + SizeText.grouped(trials) + " trials", "")
                : new Answer(
                        answer.modes().stream().map(Mode::title).toList(),
                        OddsText.percent(answer.share()),
                        OddsText.atLeast(answer.safeShare()));
    }
}
