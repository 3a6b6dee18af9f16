package org.ionohaul.onair;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeText;

/** What is found of runs on the air, as tables. */
final class RunsTables {
    private static final Cell NONE = Cell.of("-");

    private final RunAnswer answer;
    private final RunFindings findings;
    private final RunQuestion question;
    private final RunsWords words;
    private final int better;

    RunsTables(RunAnswer answer) {
        this.answer = answer;
        this.findings = answer.findings();
        this.question = findings.question();
        this.words = new RunsWords(answer);
        this.better = findings.truth().leader();
    }

    /** By order and number of runs: how often a rule names the leader. */
    Table naming(Rule rule) {
        return new Table(
                "Chance that " + words.rule(rule) + " names " + words.name(better) + ", by runs of each mode",
                cells(Stream.concat(Stream.of("order"), RunQuestion.RUNS_EACH.stream().map(it -> it + " each"))),
                Stream.of(RunOrder.values())
                        .map(order -> Stream.concat(
                                        Stream.of(Cell.of(words.order(order))),
                                        RunQuestion.RUNS_EACH.stream()
                                                .map(runs -> findings.find(new Design(0, order, runs))
                                                        .map(it -> Cells.chance(it.by(rule).naming(better)))
                                                        .orElse(NONE)))
                                .toList())
                        .toList());
    }

    /** By order, for the most runs: right, wrong and false alarms of both tests. */
    Table tests() {
        return new Table(
                "With " + RunQuestion.MOST_RUNS_EACH + " runs of each mode: " + words.rule(Rule.PAIRED) + " and "
                        + words.rule(Rule.UNPAIRED),
                cells(Stream.of(
                        "order", "paired right", "wrong", "false alarms", "unpaired right", "wrong", "false alarms")),
                Stream.of(RunOrder.values())
                        .flatMap(order -> findings
                                .find(new Design(0, order, RunQuestion.MOST_RUNS_EACH))
                                .stream())
                        .map(it -> Stream.of(
                                        Stream.of(Cell.of(words.order(it.design().order()))),
                                        verdicts(it.by(Rule.PAIRED)),
                                        verdicts(it.by(Rule.UNPAIRED)))
                                .flatMap(cell -> cell)
                                .toList())
                        .toList());
    }

    private Stream<Cell> verdicts(RuleResult result) {
        return Stream.of(result.naming(better), result.namingOther(better), result.falseAlarm())
                .map(Cells::chance);
    }

    /** Stopping early; the last column is exact for rounds that are independent of each other. */
    Table stops() {
        return new Table(
                "Stopping early, within " + RunQuestion.MOST_RUNS_EACH + " rounds",
                cells(Stream.of("stop", "right", "wrong", "false alarms", "rounds, mean")),
                Stream.of(Stop.values())
                        .flatMap(stop -> Stream.concat(
                                findings.stops().stream()
                                        .filter(it -> it.stop() == stop && it.order() != RunOrder.TURNS_REVERSED)
                                        .map(this::row),
                                findings.stops().isEmpty() ? Stream.empty() : Stream.of(ifIndependent(stop))))
                        .toList());
    }

    private List<Cell> row(StopResult result) {
        return List.of(
                Cell.of(RunsWords.stop(result.stop(), result.mostRounds()) + ", " + words.order(result.order())),
                Cells.chance(result.naming(better)),
                Cells.chance(result.naming(1 - better)),
                Cells.chance(result.falseAlarm()),
                Cell.of(decimal(result.meanRounds())));
    }

    private List<Cell> ifIndependent(Stop stop) {
        double named = stop.within(RunQuestion.MOST_RUNS_EACH, question.errorRate())
                .chances(0.5)
                .named();
        return List.of(
                Cell.of(RunsWords.stop(stop, RunQuestion.MOST_RUNS_EACH) + ", were rounds independent"),
                NONE,
                NONE,
                new Cell(percent(named), "exact"),
                NONE);
    }

    /** The plans of a power, the first few. */
    Table plans(int power, int most) {
        return new Table(
                "Plans that name " + words.name(better) + " with a chance of "
                        + OddsText.odds(RunAnswer.POWERS.get(power)) + ", by time on the air",
                cells(Stream.of("plan", "runs each", "evenings", "longest", "on the air", "right", "false alarms")),
                answer.plans().get(power).stream().limit(most).map(this::row).toList());
    }

    private List<Cell> row(Plan plan) {
        return List.of(
                new Cell(words.sent(plan) + ", " + words.order(plan.order()), words.way(plan.way())),
                plan.way() == Plan.Way.STOPPING
                        ? new Cell(decimal(plan.meanRunsEach()), "at most " + plan.runsEach())
                        : Cell.of(Integer.toString(plan.runsEach())),
                Cell.of(Integer.toString(plan.evenings())),
                Cell.of(TimeText.clock(plan.eveningSeconds())),
                Cell.of(TimeText.clock(plan.airSeconds())),
                Cells.chance(plan.right()),
                plan.isWorkedOut() ? new Cell(percent(plan.falseAlarm().value()), "exact") : Cells.chance(plan.falseAlarm()));
    }

    /** For each pair of modes, how many rounds the paired test needs where each round has an evening of its own. */
    Table needed() {
        return new Table(
                "Rounds needed by the paired test, " + words.order(RunOrder.ROUND_AN_EVENING)
                        + " (with the range that follows from the chance of a round)",
                cells(Stream.of("modes", "better in a round", "for 8 of 10", "for 9 of 10")),
                IntStream.range(0, question.modes().size())
                        .boxed()
                        .flatMap(first -> IntStream.range(first + 1, question.modes().size())
                                .mapToObj(second -> needed(first, second)))
                        .toList());
    }

    private List<Cell> needed(int first, int second) {
        DesignResult result = findings.result(RunOrder.ROUND_AN_EVENING, RunQuestion.MOST_RUNS_EACH);
        int ahead = result.wins().get(first).get(second) >= result.wins().get(second).get(first) ? first : second;
        int behind = first + second - ahead;
        RoundsNeeded rounds = RoundsNeeded.of(result, ahead, behind, question.errorRate());
        return Stream.concat(
                        Stream.of(
                                Cell.of(words.name(ahead) + " before " + words.name(behind)),
                                Cells.chance(rounds.share())),
                        RunAnswer.POWERS.stream().map(rounds::cell))
                .toList();
    }

    private static String percent(double chance) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * chance);
    }

    private static String decimal(double number) {
        return String.format(Locale.ROOT, "%.1f", number);
    }

    private static List<Cell> cells(Stream<String> texts) {
        return texts.map(Cell::of).toList();
    }
}
