package org.ionohaul.nextrun;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ionohaul.channel.End;
import org.ionohaul.learning.Learned;
import org.ionohaul.placing.Gauge;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.statistics.Estimate;

/** Which run to make next, for a terminal. */
public final class NextText {
    private static final int WIDTH = 80;

    static final String READING =
            "Fewer wrong: by how much the chance of a wrong choice falls, in points of 100, and its 95 % range; a minute:"
                    + " for each minute on the air; *: no other is better per minute beyond chance. Other choice: how often another mode is chosen after it. Ranges hold the chance"
                    + " in simulating, not what the model leaves out. What is learned counts for a day that is not in the log.";

    private final NextRun next;
    private final NextQuestion question;
    private final Scenario scenario;

    /** Prepares the text. */
    public NextText(NextRun next) {
        this.next = next;
        this.question = next.question();
        this.scenario = question.understood().scenario();
    }

    /** Returns the lines. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        add(lines, scenario.title(), "");
        add(lines, basis(), "");
        lines.add("");
        if (!next.isFitted()) {
            add(lines, refusal(next.learned().orElseThrow()), "  ");
            return lines;
        }
        add(lines, asked(), "");
        now().forEach(it -> add(lines, it, "  "));
        advice().forEach(it -> add(lines, it, "  "));
        if (next.verdict() != NextRun.Verdict.SURE_ALREADY) {
            lines.add("");
            lines.addAll(new TextTable(table()).lines(WIDTH));
            lines.add("");
            add(lines, READING, "");
        }
        return lines;
    }

    private static void add(List<String> lines, String text, String indent) {
        lines.addAll(TextWrap.lines(text, indent, WIDTH));
    }

    String basis() {
        String log = question.log()
                .map(it -> it.runs().size() == 1
                        ? "After 1 logged run"
                        : "After " + it.runs().size() + " logged runs")
                .orElse("Before any run");
        return log + "; " + SizeText.grouped(question.sets()) + " draws of what is believed, seed " + scenario.seed()
                + ".";
    }

    private static String refusal(Learned learned) {
        return learned.isExplained()
                ? "Too little was simulated where the truth seems to lie, so nothing can be said of the next run. Try more"
                        + " --trials; learn says how many."
                : "The model can't explain this log, so it can't say which run to make next: learn and place say where to look.";
    }

    String asked() {
        return question.transfer().name() + ", from "
                + station(question.direction().sender()) + " to "
                + station(question.direction().receiver()) + ", within "
                + TimeText.given(question.deadlineSeconds()) + ": with which mode?";
    }

    private String station(End end) {
        return scenario.station(end).name();
    }

    List<String> now() {
        Valuation.Found found = next.found().orElseThrow();
        String chances = IntStream.range(0, scenario.modes().size())
                .mapToObj(mode -> scenario.modes().get(mode).title() + " on "
                        + OddsText.odds(found.chances().get(mode).value()))
                .collect(Collectors.joining(", "));
        return List.of("Now: " + next.choice().title() + ". It is a wrong choice with a chance of "
                + OddsText.odds(found.wrongNow().value()) + " ("
                + OddsText.percentRange(found.wrongNow().low(), found.wrongNow().high())
                + "): another mode keeps the deadline on at least "
                + Math.round(100 * question.worthIt()) + " more of 100 trials. Kept on average: " + chances
                + ".");
    }

    List<String> advice() {
        String limit = TimeText.given(question.limitSeconds());
        Worth most = next.mostInTime();
        return switch (next.verdict()) {
            case SURE_ALREADY ->
                List.of(
                        next.isHopeless()
                                ? "No mode keeps this deadline often enough for the choice to matter."
                                : "The choice is as good as sure: no run is needed for it.");
            case NOTHING_TELLS ->
                List.of("Nothing that you can run within " + limit
                        + " would change that: whatever it is, it lowers the chance of a wrong choice by less than 1 of"
                        + " 100. Leave the rest to luck, or to other grounds.");
            case OPEN ->
                List.of(
                        "Whether anything tells enough can't be told beyond chance in the simulation: more --trials would"
                                + " say.");
            case RUN -> {
                List<String> told = new ArrayList<>(List.of(recommended()));
                told.add("The most within " + limit + ": " + name(most.candidate()) + timesOf(most) + ", "
                        + points(most.fewerWrongInTime()) + " fewer wrong of 100.");
                yield told;
            }
        };
    }

    private String recommended() {
        List<Worth> best = next.best();
        Worth first = best.get(0);
        String told = "Most per minute on the air: " + name(first.candidate()) + ", "
                + TimeText.length(first.airSeconds()) + ": " + points(first.fewerWrong()) + " fewer wrong of 100.";
        return best.size() == 1
                ? told
                : told + " Can't be told apart from it: "
                        + best.subList(1, best.size()).stream()
                                .map(it -> name(it.candidate()))
                                .collect(Collectors.joining("; "))
                        + ".";
    }

    private static String timesOf(Worth worth) {
        return worth.times() == 1 ? "" : " " + worth.times() + " times";
    }

    /** Returns what each candidate is worth. */
    Table table() {
        return new Table(
                "What each candidate is worth",
                List.of(
                        Cell.of("next"),
                        new Cell("on the", "air"),
                        new Cell("fewer wrong", "of 100"),
                        new Cell("a minute", "of 100"),
                        new Cell("other", "choice"),
                        new Cell("fewer wrong", "in " + TimeText.given(question.limitSeconds()))),
                next.found().orElseThrow().worths().stream().map(this::row).toList());
    }

    private List<Cell> row(Worth worth) {
        return List.of(
                title(worth),
                Cell.of(TimeText.length(worth.airSeconds())),
                cell(worth.fewerWrong()),
                cell(worth.fewerWrongPerMinute()),
                Cell.of(OddsText.percent(worth.changedShare())),
                new Cell(
                        points(worth.fewerWrongInTime()) + (worth.times() == 1 ? "" : " (" + worth.times() + "x)"),
                        range(worth.fewerWrongInTime())));
    }

    private Cell title(Worth worth) {
        String mark = worth.mayBeBest() ? " *" : "";
        return worth.candidate() instanceof Candidate.Send send
                ? new Cell(send.mode().title() + mark, sent(send))
                : title((Candidate.Listen) worth.candidate(), mark);
    }

    private Cell title(Candidate.Listen listen, String mark) {
        return new Cell(word(listen) + ", read" + mark, "at " + station(listen.end()));
    }

    private static String word(Candidate.Listen listen) {
        return listen.what() == Gauge.What.SNR ? "SNR" : listen.what().name().toLowerCase(Locale.ROOT);
    }

    private static Cell cell(Estimate chance) {
        return new Cell(points(chance), range(chance));
    }

    static String points(Estimate chance) {
        return points(chance.value());
    }

    static String range(Estimate chance) {
        return points(chance.low()) + " to " + points(chance.high());
    }

    private static String points(double chance) {
        return String.format(Locale.ROOT, "%.1f", 100 * chance + 0.0).replaceAll("^-(0\\.0)$", "$1");
    }

    /** Returns what is done, in words. */
    String name(Candidate candidate) {
        if (candidate instanceof Candidate.Send send) {
            return send.mode().title() + ", " + sent(send);
        }
        Candidate.Listen listen = (Candidate.Listen) candidate;
        return "read the " + word(listen) + " at " + station(listen.end());
    }

    private static String sent(Candidate.Send send) {
        return SizeText.size(send.bytes())
                + (send.direction() == Direction.UPLOAD ? " up" : " down")
                + send.start().map(it -> " at " + it).orElse("");
    }
}
