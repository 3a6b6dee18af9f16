package org.ionohaul.onair;

import java.util.Comparator;
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
    private static final int MINUTE = 60;
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
                cells(Stream.concat(
                        Stream.of("order"), RunQuestion.RUNS_EACH.stream().map(it -> it + " each"))),
                Stream.of(RunOrder.values())
                        .map(order -> Stream.concat(
                                        Stream.of(Cell.of(words.order(order))),
                                        RunQuestion.RUNS_EACH.stream()
                                                .map(runs -> findings.find(new Design(0, order, runs))
                                                        .map(it -> Cells.chance(
                                                                it.by(rule).naming(better)))
                                                        .orElse(NONE)))
                                .toList())
                        .toList());
    }

    /** By order, for the most runs: right, wrong and false alarms of both tests. */
    Table tests() {
        return new Table(
                "Right, wrong, false alarms with " + RunQuestion.MOST_RUNS_EACH + " runs each: "
                        + words.rule(Rule.PAIRED) + " (paired), " + words.rule(Rule.UNPAIRED)
                        + " (unpaired); how long the longest sitting is",
                cells(Stream.of("order", "paired", "wrong", "false", "unpaired", "wrong", "false", "sitting")),
                Stream.of(RunOrder.values())
                        .flatMap(order -> findings.find(new Design(0, order, RunQuestion.MOST_RUNS_EACH)).stream())
                        .map(it -> Stream.of(
                                        Stream.of(
                                                Cell.of(words.order(it.design().order()))),
                                        verdicts(it.by(Rule.PAIRED)),
                                        verdicts(it.by(Rule.UNPAIRED)),
                                        Stream.of(Cell.of(TimeText.length(it.eveningSeconds()))))
                                .flatMap(cell -> cell)
                                .toList())
                        .toList());
    }

    private Stream<Cell> verdicts(RuleResult result) {
        return Stream.of(result.naming(better), result.namingOther(better), result.falseAlarm())
                .map(Cells::chance);
    }

    /** Stopping early; beside the false alarms what they would be if rounds were independent of each other, exactly. */
    Table stops() {
        return new Table(
                "Stopping early, within " + RunQuestion.MOST_RUNS_EACH
                        + " rounds; what false alarms would be if rounds were independent of each other",
                cells(Stream.of("stop", "order", "right", "wrong", "false", "independent", "rounds")),
                findings.stops().stream()
                        .sorted(Comparator.comparing(StopResult::stop))
                        .map(this::row)
                        .toList());
    }

    private List<Cell> row(StopResult result) {
        return List.of(
                Cell.of(RunsWords.stop(result.stop())),
                Cell.of(words.order(result.order())),
                Cells.chance(result.naming(better)),
                Cells.chance(result.naming(1 - better)),
                Cells.chance(result.falseAlarm()),
                Cell.of(percent(result.stop()
                        .within(result.mostRounds(), question.errorRate())
                        .chances(0.5)
                        .named())),
                Cell.of(decimal(result.meanRounds())));
    }

    /** The plans of a power, the first few. */
    Table plans(int power, int most) {
        return new Table(
                "Plans that name " + words.name(better) + " with a chance of at least "
                        + OddsText.odds(RunAnswer.POWERS.get(power)) + ", by time on the air",
                cells(Stream.of("plan", "runs each", "days", "air time", "right", "false")),
                answer.plans().get(power).stream().limit(most).map(this::row).toList());
    }

    private List<Cell> row(Plan plan) {
        return List.of(
                new Cell(words.sent(plan) + ", " + words.order(plan.order()), words.way(plan.way())),
                plan.way() == Plan.Way.STOPPING
                        ? new Cell(decimal(plan.meanRunsEach()), "at most " + plan.runsEach())
                        : Cell.of(Integer.toString(plan.runsEach())),
                new Cell(
                        Integer.toString(plan.evenings()),
                        "of " + TimeText.length(MINUTE * Math.ceil(plan.eveningSeconds() / MINUTE))),
                Cell.of(TimeText.length(plan.airSeconds())),
                Cells.chance(plan.right()),
                Cell.of(percent(plan.falseAlarm().value())));
    }

    /** For each pair of modes, how many rounds the paired test needs where no two rounds share an evening. */
    Table needed() {
        return new Table(
                "Rounds that the paired test needs to name the mode that wins more of them, with the range that follows from"
                        + " that of the share",
                cells(Stream.of("modes", "of rounds", "for 8 of 10", "for 9 of 10")),
                Stream.of(RunOrder.values())
                        .filter(RunOrder::isOverEvenings)
                        .flatMap(order -> pairs().map(pair -> needed(order, pair[0], pair[1])))
                        .toList());
    }

    private Stream<int[]> pairs() {
        int modes = question.modes().size();
        return IntStream.range(0, modes)
                .boxed()
                .flatMap(first -> IntStream.range(first + 1, modes).mapToObj(second -> new int[] {first, second}));
    }

    private List<Cell> needed(RunOrder order, int first, int second) {
        DesignResult result = findings.result(order, RunQuestion.MOST_RUNS_EACH);
        int ahead = result.wins().get(first).get(second)
                        >= result.wins().get(second).get(first)
                ? first
                : second;
        RoundsNeeded rounds = RoundsNeeded.of(result, ahead, first + second - ahead, question.errorRate());
        return Stream.concat(
                        Stream.of(
                                new Cell(
                                        words.name(ahead) + " / " + words.name(first + second - ahead),
                                        words.order(order)),
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
