package org.ionohaul.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ionohaul.analysis.SpreadSplit;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.Table;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.CaseTrials;

/** What is said about luck and ignorance. */
final class SpreadWords {
    private static final double LEAST_NAMED = 0.02;
    private static final int MOST_NAMED = 3;

    private SpreadWords() {}

    /**
     * Returns the sentence that splits the spread of a mode's times, such as {@code Why trials differ with Hare: 70 %
     * luck of fading, 30 % not knowing near.snr. Measuring near.snr would sharpen this forecast most.}
     *
     * @param mode what people call the mode
     */
    static String sentence(String mode, SpreadSplit split) {
        List<SpreadSplit.InputShare> largest = split.inputs().stream()
                .filter(it -> it.share() >= LEAST_NAMED && it.isBeyondChance())
                .sorted(Comparator.comparingDouble(SpreadSplit.InputShare::share)
                        .reversed())
                .limit(MOST_NAMED)
                .toList();
        String unknown = largest.isEmpty()
                ? "hardly anything for not knowing inputs"
                : largest.stream()
                        .map(it -> OddsText.percent(Math.min(1, it.share())) + " not knowing " + it.key())
                        .collect(Collectors.joining(", "));
        String advice = split.worthMeasuring()
                .map(key -> "Measuring " + key + " would sharpen this forecast most.")
                .orElse("No single measurement would sharpen this forecast.");
        return "Why trials differ with " + mode + ": " + OddsText.percent(split.luckShare()) + " luck of fading, "
                + unknown + ". " + advice;
    }

    /** Returns the split of each mode that has one, a column a mode; without rows if every input is known. */
    static Table table(Scenario scenario, CaseTrials trials) {
        List<SpreadSplit> splits = trials.modes().stream()
                .flatMap(mode -> SpreadSplit.of(scenario, mode).stream())
                .toList();
        List<List<Cell>> rows = new ArrayList<>();
        if (!splits.isEmpty()) {
            rows.add(row("luck of fading", splits.stream().map(it -> OddsText.percent(it.luckShare()))));
            for (int i = 0; i < splits.get(0).inputs().size(); i++) {
                int input = i;
                rows.add(row(
                        "not knowing " + splits.get(0).inputs().get(i).key(),
                        splits.stream().map(it -> share(it.inputs().get(input)))));
            }
        }
        List<Cell> heads = Stream.concat(
                        Stream.of(Cell.of("cause")),
                        trials.modes().stream().map(it -> Cell.of(it.mode().title())))
                .toList();
        return new Table(
                "Why trials differ: shares of the spread of completion times, by rank; in brackets what could be chance,"
                        + " which counts as luck",
                heads,
                rows);
    }

    private static String share(SpreadSplit.InputShare input) {
        String percent = OddsText.percent(Math.min(1, input.share()));
        return input.isBeyondChance() ? percent : "(" + percent + ")";
    }

    private static List<Cell> row(String cause, Stream<String> shares) {
        return Stream.concat(Stream.of(Cell.of(cause)), shares.map(Cell::of)).toList();
    }
}
