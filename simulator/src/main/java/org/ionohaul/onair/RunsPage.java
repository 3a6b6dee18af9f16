package org.ionohaul.onair;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.rendering.Table;
import org.ionohaul.report.StudyWords;
import org.ionohaul.statistics.Estimate;

/** What runs on the air can tell, as a page of its own. */
public final class RunsPage {
    private static final int MOST_PLANS = 10;

    private final RunAnswer answer;
    private final RunsWords words;
    private final RunsTables tables;

    private RunsPage(RunAnswer answer) {
        this.answer = answer;
        this.words = new RunsWords(answer);
        this.tables = new RunsTables(answer);
    }

    /** Returns the page. */
    public static ChartPage of(RunAnswer answer) {
        return new RunsPage(answer).page();
    }

    private ChartPage page() {
        RunQuestion question = answer.findings().question();
        List<String> reading = new ArrayList<>(List.of(words.heading() + ".", words.basis()));
        reading.addAll(words.sentences());
        return new ChartPage(
                "runs.html",
                question.scenario().title() + ": what runs on the air can tell",
                String.join("\n", reading),
                Stream.of(
                                Stream.of(tables.tests(), tables.stops()),
                                IntStream.range(0, RunAnswer.POWERS.size())
                                        .mapToObj(it -> tables.plans(it, MOST_PLANS)),
                                Stream.of(tables.needed()))
                        .<Table>flatMap(it -> it)
                        .filter(it -> !it.isEmpty())
                        .toList(),
                Stream.of(Rule.values()).map(this::chart).toList(),
                RunsWords.READING + " " + RunsWords.RANGES + " " + StudyWords.CAUTION + " Made by ionohaul "
                        + answer.provenance().version() + " with seed "
                        + question.scenario().seed() + " and "
                        + answer.findings().trialsDone()
                        + " comparisons. The same version, files, seed and numbers give the same page, whatever the number of"
                        + " threads.");
    }

    private Chart chart(Rule rule) {
        String better = words.name(answer.findings().truth().leader());
        return new Chart(
                "naming-" + rule.name().toLowerCase(Locale.ROOT),
                "Naming " + better + " by " + words.rule(rule),
                "How often it is named, against the number of runs of each mode: a line an order. One test can't answer with"
                        + " few runs, whatever they are.",
                "Chance that " + better + " is named by number of runs and order; the table has the numbers.",
                curve(rule),
                tables.naming(rule));
    }

    private RunsCurve curve(Rule rule) {
        return new RunsCurve(
                RunQuestion.RUNS_EACH,
                Stream.of(RunOrder.values()).map(it -> line(rule, it)).toList());
    }

    private RunsCurve.Line line(Rule rule, RunOrder order) {
        List<Optional<Estimate>> chances = RunQuestion.RUNS_EACH.stream()
                .map(runs -> answer.findings()
                        .find(new Design(0, order, runs))
                        .map(it -> it.by(rule).naming(answer.findings().truth().leader())))
                .toList();
        return new RunsCurve.Line(
                words.order(order),
                percent(chances, Estimate::value),
                percent(chances, Estimate::low),
                percent(chances, Estimate::high),
                chances.stream()
                        .map(it ->
                                it.map(Cells::chance).map(cell -> cell.line()).orElse(""))
                        .toList());
    }

    /** What is open is written as null. */
    private static List<Double> percent(List<Optional<Estimate>> chances, Function<Estimate, Double> which) {
        return chances.stream()
                .map(it -> it.map(which).map(share -> 100 * share).orElse(Double.NaN))
                .toList();
    }
}
