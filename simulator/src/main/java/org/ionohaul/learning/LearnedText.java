package org.ionohaul.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.channel.End;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.KeyName;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.scenario.WrittenInput;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;

/** What was learned from a log, for a terminal. */
public final class LearnedText {
    private static final int WIDTH = 80;

    private static final String READING =
            "Inputs: the middle, and below it what 8 of 10 draws lie within. Width left: of the standard deviation"
                    + " before. Forecasts are for a day that is not in the log, in the same trials before and after; 9 of 10"
                    + " by: at least 9 of 10 trials keep that time, in 95 of 100 studies, if model and inputs hold.";

    private final LearnedLog learned;

    /** Prepares the text. */
    public LearnedText(LearnedLog learned) {
        this.learned = learned;
    }

    /** Returns the lines. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        add(lines, learned.scenario().title(), "");
        add(lines, basis(), "");
        lines.add("");
        verdict().forEach(it -> add(lines, it, "  "));
        if (learned.isFitted()) {
            lines.add("");
            lines.addAll(new TextTable(inputs()).lines(WIDTH));
            for (Transfer transfer : learned.scenario().transfers()) {
                for (Direction direction : transfer.directions()) {
                    lines.add("");
                    add(lines, title(transfer, direction), "");
                    lines.addAll(new TextTable(forecast(transfer, direction)).lines(WIDTH));
                }
            }
            lines.add("");
            add(lines, reading(), "");
        }
        return lines;
    }

    private static void add(List<String> lines, String text, String indent) {
        lines.addAll(TextWrap.lines(text, indent, WIDTH));
    }

    String basis() {
        int runs = learned.log().runs().size();
        return (runs == 1 ? "1 logged run" : runs + " logged runs") + " beside "
                + SizeText.grouped(learned.learned().sets()) + " simulated logs, seed "
                + learned.scenario().seed() + ".";
    }

    /** Returns how to read the numbers, and by which keys the file states the inputs. */
    String reading() {
        String keys = learned.inputs().stream()
                .map(InputChange::unknown)
                .filter(it -> !it.isGap())
                .map(Unknown::key)
                .distinct()
                .map(it -> KeyName.withKey(learned.scenario(), it))
                .collect(Collectors.joining(", "));
        return keys.isEmpty() ? READING : READING + " In the file: " + keys + ".";
    }

    List<String> verdict() {
        Learned found = learned.learned();
        String chance = OddsText.odds(found.chanceOfLess());
        if (!found.isExplained()) {
            return List.of(
                    "The model can't explain this log, whatever its uncertain inputs are: of the logs that it makes itself, "
                            + chance
                            + " are as unlikely under it. So nothing is fitted. Look for what the scenario leaves out"
                            + " (place says which runs stand out), for a slip in the log, or for inputs that are known less"
                            + " exactly than it says.");
        }
        String worth = String.format(
                Locale.ROOT, "%,d simulated logs are worth %,.0f", found.sets(), Math.floor(found.effectiveSets()));
        if (!found.isWellFounded()) {
            return List.of("Too little was simulated where the truth seems to lie: the " + worth + " there, and "
                    + Learned.FEWEST_EFFECTIVE + " are needed. So nothing is shown. Try --trials "
                    + 4 * learned.scenario().trials() + ".");
        }
        List<String> told = new ArrayList<>();
        told.add("The model can explain the log: of the logs that it makes itself, " + chance
                + " are as unlikely under it or less likely. The " + worth
                + " at what is believed now.");
        names(false).ifPresent(it -> told.add("The log tells of " + it + "."));
        names(true).ifPresent(it -> told.add("It says hardly anything of " + it + ": as unsure as before."));
        learned.entangled().forEach(it -> told.add(entangled(it)));
        long days =
                learned.log().runs().stream().map(Unknown.Day::of).distinct().count();
        if (days > 1
                && learned.inputs().stream().allMatch(it -> it.unknown().day().isEmpty())) {
            told.add("All " + days
                    + " days of the log are taken to have the same inputs; name those that change from day to day"
                    + " with --daily.");
        }
        return told;
    }

    private Optional<String> names(boolean isUntouched) {
        String names = learned.inputs().stream()
                .filter(it -> it.isUntouched() == isUntouched)
                .map(it -> name(it.unknown()))
                .collect(Collectors.joining(", "));
        return Optional.of(names).filter(it -> !it.isEmpty());
    }

    private String entangled(LearnedLog.Entangled pair) {
        return String.format(
                Locale.ROOT,
                "It does not tell %s and %s apart well: a higher one goes with a %s other (correlation %.2f).",
                name(pair.one()),
                name(pair.other()),
                pair.correlation() > 0 ? "higher" : "lower",
                pair.correlation());
    }

    private String name(Unknown unknown) {
        return (unknown.isGap()
                                ? KeyName.of(learned.scenario(), "modes." + unknown.key() + ".gap")
                                : KeyName.of(learned.scenario(), unknown.key()))
                        .words()
                + unknown.day()
                        .map(day -> day.date().map(it -> " on " + it).orElse(" on that day"))
                        .orElse("");
    }

    Table inputs() {
        return new Table(
                "Inputs before and after the log",
                List.of(Cell.of("input"), Cell.of("before"), Cell.of("after"), Cell.of("width left")),
                learned.inputs().stream().map(this::input).toList());
    }

    List<Cell> input(InputChange input) {
        boolean isList = !input.choices().isEmpty();
        return List.of(
                Cell.of(name(input.unknown())),
                isList ? Cell.of(shares(input, input.sharesBefore())) : range(input, 0.5, 0.1, 0.9),
                isList
                        ? Cell.of(shares(input, input.sharesNow()))
                        : range(input, input.quantile(0.5), input.quantile(0.1), input.quantile(0.9)),
                Cell.of(Math.round(100 * input.widthLeft()) + " %"));
    }

    private static String shares(InputChange input, List<Double> shares) {
        return IntStream.range(0, shares.size())
                .mapToObj(it -> input.choices().get(it) + " " + Math.round(100 * shares.get(it)) + " %")
                .collect(Collectors.joining(", "));
    }

    /** What is not written in plain quantities is told by how many of 100 draws were below before. */
    private static Cell range(InputChange input, double middle, double low, double high) {
        Optional<WrittenInput> written = input.written();
        return written.map(it -> new Cell(it.text(it.quantile(middle)), it.range(it.quantile(low), it.quantile(high))))
                .orElseGet(() -> new Cell(place(middle), Math.round(100 * low) + " to " + place(high)));
    }

    private static String place(double probability) {
        return Math.round(100 * probability) + " of 100 lower";
    }

    String title(Transfer transfer, Direction direction) {
        return transfer.name() + ", from " + station(direction.sender()) + " to " + station(direction.receiver()) + ":";
    }

    private String station(End end) {
        return learned.scenario().station(end).name();
    }

    Table forecast(Transfer transfer, Direction direction) {
        List<Cell> heads = new ArrayList<>(List.of(Cell.of("mode")));
        transfer.deadlinesSeconds().forEach(it -> heads.add(Cell.of("by " + TimeText.given(it))));
        heads.add(Cell.of("5 of 10 by"));
        heads.add(Cell.of("9 of 10 by"));
        return new Table(
                transfer.name(),
                heads,
                learned.forecasts().stream()
                        .filter(it -> it.transfer().equals(transfer) && it.direction() == direction)
                        .flatMap(it -> Stream.of(
                                row(it.mode().title() + ", before", it.before(), transfer),
                                row(it.mode().title() + ", after", it.after(), transfer)))
                        .toList());
    }

    private static List<Cell> row(String name, OrderedSample times, Transfer transfer) {
        List<Cell> row = new ArrayList<>(List.of(Cell.of(name)));
        for (double deadline : transfer.deadlinesSeconds()) {
            row.add(chance(times.atMost(deadline).wilson(Estimate.CONFIDENCE)));
        }
        row.add(median(times.quantile(0.5, Estimate.CONFIDENCE)));
        row.add(Cell.of(
                times.size() < Forecast.PROMISE.fewestTrials()
                        ? Forecast.PROMISE.fewestTrials() + " trials needed"
                        : time(Forecast.PROMISE.of(times))));
        return row;
    }

    private static Cell chance(Estimate share) {
        return new Cell(OddsText.percent(share.value()), OddsText.percentRange(share.low(), share.high()));
    }

    private static Cell median(Estimate seconds) {
        return new Cell(
                time(seconds.value()),
                Stream.of(seconds.low(), seconds.high()).map(LearnedText::time).collect(Collectors.joining(" to ")));
    }

    static String time(double seconds) {
        return Double.isInfinite(seconds) ? "never" : TimeText.length(Math.max(0, seconds));
    }
}
