package org.ionohaul.study;

import java.util.List;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;

/**
 * What two scenarios must agree in for their studies to be compared trial by trial, whatever else differs.
 *
 * @param seed seed of all chance
 * @param trials how many trials
 * @param modes the modes' names
 * @param directions the directions of each transfer
 * @param deadlines how many deadlines each transfer has
 */
public record SameCases(
        long seed, int trials, List<String> modes, List<List<Direction>> directions, List<Integer> deadlines) {
    /** Returns what the scenario is like in this respect. */
    public static SameCases of(Scenario scenario) {
        return new SameCases(
                scenario.seed(),
                scenario.trials(),
                scenario.modes().stream().map(Mode::name).toList(),
                scenario.transfers().stream().map(Transfer::directions).toList(),
                scenario.transfers().stream()
                        .map(it -> it.deadlinesSeconds().size())
                        .toList());
    }
}
