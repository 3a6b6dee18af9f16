package org.ionohaul.onair;

import java.util.OptionalInt;
import org.ionohaul.rendering.Cell;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.PairedOdds;
import org.ionohaul.statistics.Proportion;

/**
 * How many independent rounds the paired test needs to tell two modes apart.
 *
 * @param share how often the one is better in a round that either wins
 * @param decided share of the rounds that either wins
 * @param errorRate accepted chance that either of two like modes is named
 */
record RoundsNeeded(Estimate share, double decided, double errorRate) {
    static RoundsNeeded of(DesignResult rounds, int ahead, int behind, double errorRate) {
        int wins = rounds.wins().get(ahead).get(behind);
        int losses = rounds.wins().get(behind).get(ahead);
        return new RoundsNeeded(
                wins + losses == 0
                        ? new Estimate(0.5, 0, 1)
                        : new Proportion(wins, wins + losses).wilson(Estimate.CONFIDENCE),
                rounds.odds(ahead, behind).decided(),
                errorRate);
    }

    /** Returns the number of rounds for a power, with its range. */
    Cell cell(double power) {
        String fewest = text(needed(share.high(), power));
        String most = text(needed(share.low(), power));
        return new Cell(text(needed(share.value(), power)), fewest.equals(most) ? fewest : fewest + " to " + most);
    }

    /** Returns the number of rounds if the one is better in such a share of those that either wins. */
    OptionalInt needed(double better, double power) {
        return better <= 0.5
                ? OptionalInt.empty()
                : new PairedOdds(decided * better, decided * (1 - better))
                        .pairsNeeded(errorRate, power, Plans.FEASIBLE_RUNS_EACH);
    }

    private static String text(OptionalInt rounds) {
        return rounds.isPresent() ? Integer.toString(rounds.getAsInt()) : "over " + Plans.FEASIBLE_RUNS_EACH;
    }
}
