package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.SpreadSplit;
import org.ionohaul.analysis.SpreadSplit.InputShare;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.KeyName;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.statistics.Estimate;

/** What is said about luck and ignorance. */
final class SpreadWords {
    private SpreadWords() {}

    /** Returns the sentences on the best mode of a case; empty if every input is known. */
    static Optional<String> ofBest(Scenario scenario, CaseSummary summary, List<Optional<SpreadSplit>> spreads) {
        return spreads.get(summary.leaders().first())
                .map(it -> sentence(
                        scenario,
                        summary.best().mode().title(),
                        summary.transfer().deadlinesSeconds(),
                        it));
    }

    /**
     * Returns the sentences that split the spread of a mode's times, such as {@code Why trials differ with Hare: 70 %
     * (62-77 %) luck, 30 % (23-38 %) not knowing SNR at Weir Cottage. Measuring SNR at Weir Cottage is worth most: it would move the chance of 10
     * min by some 24 of 100 (20 to 27) either way.}
     *
     * @param scenario whose inputs they are
     * @param mode what people call the mode
     * @param deadlinesSeconds the deadlines of what was sent
     */
    static String sentence(Scenario scenario, String mode, List<Double> deadlinesSeconds, SpreadSplit split) {
        String unknown = split.named().stream()
                .map(it -> share(it.share()) + " not knowing " + name(scenario, it.key()))
                .collect(Collectors.joining(", "));
        return "Why trials differ with " + mode + ": " + share(split.rest()) + " " + rest(split) + ", "
                + (unknown.isEmpty() ? "hardly anything for not knowing inputs" : unknown) + ". "
                + advice(scenario, deadlinesSeconds, split);
    }

    /** With several unknown inputs, luck is not the name of what only combinations of them explain. */
    private static String rest(SpreadSplit split) {
        return split.mayCombine() ? "luck and combinations of what is not known" : "luck";
    }

    private static String advice(Scenario scenario, List<Double> deadlinesSeconds, SpreadSplit split) {
        return split.mostWorthMeasuring()
                .map(it -> advice(
                        deadlinesSeconds,
                        it,
                        name(scenario, it.key()),
                        split.worthMeasuring().stream()
                                .map(key -> name(scenario, key))
                                .toList()))
                .orElseGet(() -> nothing(split));
    }

    private static String advice(List<Double> deadlinesSeconds, InputShare most, String name, List<String> worth) {
        String opening = worth.size() == 1
                ? "Measuring " + name + " is worth most"
                : "Measuring " + LeaderWords.or(worth) + " is worth most, between which the trials do not tell";
        return deadlinesSeconds.isEmpty()
                ? opening + "."
                : opening + ": " + (worth.size() == 1 ? "it" : name) + " would move the chance of "
                        + swings(deadlinesSeconds, most) + " either way.";
    }

    /** That nothing was found is told with what may have been missed. */
    private static String nothing(SpreadSplit split) {
        if (split.mostSwing().isEmpty()) {
            return "Which measurement would sharpen this forecast most these trials do not tell.";
        }
        double most = split.mostSwing().getAsDouble();
        return most == 0
                ? "No measurement is seen to matter for a deadline: each is kept on all of these trials or on none."
                : "Which measurement would move the chance of a deadline most these trials do not tell: one moves it"
                        + " by at most " + Math.max(1, Math.round(100 * most)) + " of 100 either way.";
    }

    private static String swings(List<Double> deadlinesSeconds, InputShare input) {
        return LeaderWords.and(input.movedDeadlines().stream()
                .map(i -> TimeText.given(deadlinesSeconds.get(i)) + " by some "
                        + points(input.swings().get(i)))
                .toList());
    }

    private static String points(Estimate swing) {
        return Math.round(100 * swing.value()) + " of 100 (" + Math.round(100 * swing.low()) + " to "
                + Math.round(100 * swing.high()) + ")";
    }

    private static String share(Estimate share) {
        return OddsText.percent(share.value()) + " (" + OddsText.percentRange(share.low(), share.high()) + ")";
    }

    /**
     * Returns the split of each mode that has one, a column a mode; without rows if every input is known.
     *
     * @param scenario whose inputs they are
     * @param titles what people call the modes
     * @param spreads an entry a mode
     */
    static Table table(Scenario scenario, List<String> titles, List<Optional<SpreadSplit>> spreads) {
        List<Integer> split = IntStream.range(0, spreads.size())
                .filter(it -> spreads.get(it).isPresent())
                .boxed()
                .toList();
        List<SpreadSplit> splits = spreads.stream().flatMap(Optional::stream).toList();
        List<List<Cell>> rows = new ArrayList<>();
        if (!splits.isEmpty()) {
            rows.add(row(rest(splits.get(0)), splits.stream().map(it -> Cells.chance(it.rest()))));
            for (int i = 0; i < splits.get(0).inputs().size(); i++) {
                int input = i;
                rows.add(row(
                        "not knowing "
                                + name(scenario, splits.get(0).inputs().get(i).key()),
                        splits.stream().map(it -> share(it.inputs().get(input)))));
            }
        }
        return new Table(
                "Why trials differ: shares of the spread of completion times, by rank; in brackets what could be"
                        + " chance; in small print, ranges made to hold the true share in about 95 of 100 such studies",
                Stream.concat(
                                Stream.of(Cell.of("cause")),
                                split.stream().map(titles::get).map(Cell::of))
                        .toList(),
                rows);
    }

    private static Cell share(InputShare input) {
        Cell cell = Cells.chance(input.share());
        return input.isBeyondChance() ? cell : new Cell("(" + cell.text() + ")", cell.detail());
    }

    private static String name(Scenario scenario, String key) {
        return KeyName.of(scenario, key).words();
    }

    private static List<Cell> row(String cause, Stream<Cell> shares) {
        return Stream.concat(Stream.of(Cell.of(cause)), shares).toList();
    }
}
