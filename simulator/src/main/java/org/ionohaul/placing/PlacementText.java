package org.ionohaul.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ionohaul.channel.End;
import org.ionohaul.fieldlog.LoggedOutcome;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.fieldlog.NotedTime;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;

/** A log beside the simulation, for a terminal. */
public final class PlacementText {
    private static final int WIDTH = 80;

    /** A range of ranks that is narrower is told as one number. */
    private static final double NARROW = 0.05;

    static final String READING =
            "Slower than 71 of 100: of 100 such runs simulated, 71 are quicker than yours. One run can lie anywhere, and"
                    + " where it lies proves nothing by itself. A range where rounding, or not knowing what came"
                    + " after, leaves the place open. The tests find fault with a right model in at most about 5 of 100 logs,"
                    + " as far as chance goes; with few runs, a wrong model mostly passes.";

    private final LogPlacement placement;

    /** Prepares the text. */
    public PlacementText(LogPlacement placement) {
        this.placement = placement;
    }

    /** Returns the lines. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        add(lines, placement.scenario().title(), "");
        add(lines, basis(), "");
        if (placement.isPartial()) {
            String asked = SizeText.grouped(placement.scenario().trials());
            add(lines, "PARTIAL: interrupted; " + asked + " trials a run were asked for.", "");
        }
        lines.add("");
        verdict().forEach(it -> add(lines, it, "  "));
        lines.add("");
        lines.addAll(new TextTable(table()).lines(WIDTH));
        lines.add("");
        add(lines, READING, "");
        return lines;
    }

    private static void add(List<String> lines, String text, String indent) {
        lines.addAll(TextWrap.lines(text, indent, WIDTH));
    }

    String basis() {
        int runs = placement.runs().size();
        return (runs == 1 ? "1 logged run" : runs + " logged runs") + ", each beside "
                + SizeText.grouped(placement.trials()) + " simulated as it was, seed "
                + placement.scenario().seed() + ".";
    }

    List<String> verdict() {
        ModelCheck check = placement.check();
        List<String> told = new ArrayList<>();
        if (placement.runs().size() < LogPlacement.FEW_RUNS) {
            told.add("With so few runs, hardly anything can be said of the model; each is told below.");
        }
        if (check.isTooHopeful()) {
            told.add("The model is too hopeful: the runs are slower than simulated, beyond chance "
                    + p(check.slownessP()) + ".");
        } else if (check.isTooGloomy()) {
            told.add("The model is too gloomy: the runs are quicker than simulated, beyond chance "
                    + p(check.slownessP()) + ".");
        } else {
            told.add("Too hopeful or too gloomy? The runs don't show either " + p(check.slownessP())
                    + ". That is no proof that the model is right.");
        }
        if (check.isTooSure()) {
            told.add(
                    "The model is too sure: the runs lie at the extremes of what it allows more often than they should "
                            + p(check.spreadP()) + ".");
        } else if (check.isTooUnsure()) {
            told.add("The model is less sure than it could be: the runs lie nearer to its middle than they should "
                    + p(check.spreadP()) + ".");
        } else {
            told.add("Too sure? The runs don't show it " + p(check.spreadP()) + ".");
        }
        placement.ends().forEach(it -> told.add(end(it)));
        return told;
    }

    private String end(EndCheck check) {
        String name = placement.scenario().station(check.end()).name();
        boolean isOne = check.readings() == 1;
        String count = isOne ? "1 reading" : check.readings() + " readings";
        String range = String.format(Locale.ROOT, "%.1f to %.1f dB", check.lowDb(), check.highDb());
        if (!check.isBeyondChance()) {
            return "At " + name + ", " + count + (isOne ? " does" : " do") + " not contradict the stated "
                    + word(check.what()) + " (read less stated: " + range + ").";
        }
        boolean isBelow = check.aboveStatedDb() < 0;
        String told = String.format(
                Locale.ROOT,
                "At %s, %s put%s the %s %.1f dB %s ",
                name,
                count,
                isOne ? "s" : "",
                word(check.what()),
                Math.abs(check.aboveStatedDb()),
                isBelow ? "below" : "above");
        return check.isBeyondStated()
                ? told + "what is stated (" + range + "): " + meaning(check.what(), isBelow)
                        + " than the scenario says."
                : told + "the middle of what is stated (" + range + "), which the scenario holds for possible: "
                        + meaning(check.what(), isBelow) + " than in its middle.";
    }

    private static String word(Gauge.What what) {
        return what == Gauge.What.SNR ? "SNR" : what.name().toLowerCase(Locale.ROOT);
    }

    private static String meaning(Gauge.What what, boolean isBelow) {
        return switch (what) {
            case SNR -> isBelow ? "more noise there, or a weaker signal," : "less noise there, or a stronger signal,";
            case SIGNAL -> isBelow ? "a weaker signal" : "a stronger signal";
            case NOISE -> isBelow ? "less noise there" : "more noise there";
        };
    }

    private static String p(double chance) {
        return chance < 0.001
                ? "(p below 0.001)"
                : String.format(Locale.ROOT, "(p = %s)", chance < 0.1 ? decimals(chance, 3) : decimals(chance, 2));
    }

    private static String decimals(double value, int count) {
        return String.format(Locale.ROOT, "%." + count + "f", value);
    }

    Table table() {
        List<List<Cell>> rows = placement.runs().stream().map(this::row).toList();
        return new Table(
                "Logged runs among simulated ones",
                List.of(
                        Cell.of("run"),
                        new Cell("logged", "timed"),
                        new Cell("slower than", "of simulated"),
                        new Cell("half through by", "1 to 9 of 10"),
                        Cell.of("deliver")),
                rows);
    }

    private List<Cell> row(PlacedRun placed) {
        LoggedRun run = placed.run();
        return List.of(
                new Cell(run.number() + " " + run.mode() + (placed.isReadUsed() ? " *" : ""), what(run)),
                logged(run),
                new Cell(rank(placed.rank()), ""),
                new Cell(
                        time(placed.middleSeconds()),
                        time(placed.tenthSeconds()) + " to " + time(placed.ninthSeconds())),
                Cell.of(OddsText.percent(placed.deliveredShare())));
    }

    private static String what(LoggedRun run) {
        return SizeText.size(run.sentBytes()) + " "
                + (run.direction().sender() == End.NEAR ? "up" : "down")
                + run.start().map(it -> " " + it).orElse("");
    }

    /** Returns which run it is, such as {@code Run 3, Brisk comb, 15 kB up 19:10}. */
    static String heading(PlacedRun placed) {
        LoggedRun run = placed.run();
        return "Run " + run.number() + (placed.isReadUsed() ? " *" : "") + ", " + run.mode() + ", " + what(run);
    }

    /** Returns what was logged, on a line. */
    static String loggedWords(LoggedRun run) {
        return logged(run).line();
    }

    static String title(Scenario scenario, String mode) {
        return scenario.modes().stream()
                .filter(it -> it.name().equals(mode))
                .map(Mode::title)
                .findFirst()
                .orElse(mode);
    }

    /** Returns a sentence a run: where it lies. */
    List<String> runSentences() {
        return placement.runs().stream()
                .map(it -> heading(it) + ": " + loggedWords(it.run()) + ", slower than " + rank(it.rank()) + ".")
                .toList();
    }

    private static Cell logged(LoggedRun run) {
        String through = run.throughBytes().isPresent()
                ? SizeText.size(run.throughBytes().getAsLong()) + " through"
                : "";
        if (run.outcome() == LoggedOutcome.BROKEN_OFF) {
            return new Cell("off at " + clock(run.sessionTime().orElseThrow()), through);
        }
        if (run.outcome() == LoggedOutcome.GAVE_UP) {
            return new Cell("gave up", through);
        }
        if (run.deliveredAfter().isPresent()) {
            return new Cell(clock(run.deliveredAfter().get()), "delivered");
        }
        return run.sessionTime()
                .map(it -> run.outcome() == LoggedOutcome.DELIVERED
                        ? new Cell(clock(it), "session")
                        : new Cell("by " + clock(it), "not closed"))
                .orElse(Cell.of("delivered"));
    }

    private static String clock(NotedTime time) {
        return TimeText.length(time.seconds());
    }

    private static String time(double seconds) {
        return Double.isFinite(seconds) ? TimeText.length(seconds) : "never";
    }

    static String rank(RankSpan rank) {
        if (rank.high() - rank.low() <= NARROW) {
            return OddsText.odds(rank.middle());
        }
        return Math.round(100 * rank.low()) + " to " + Math.round(100 * rank.high()) + " of 100";
    }
}
