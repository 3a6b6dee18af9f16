package org.ionohaul.study;

import java.util.List;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Transfer;

/**
 * One transfer in one direction, tried with every mode under the same skies.
 *
 * @param transfer what was sent
 * @param direction which way
 * @param modes the modes' trials, in the scenario's order
 */
public record CaseTrials(Transfer transfer, Direction direction, List<ModeTrials> modes) {
    /** Copies the list. */
    public CaseTrials {
        modes = List.copyOf(modes);
    }

    /** Returns the first trials of it, as many as there are at least. */
    CaseTrials first(int trials) {
        return new CaseTrials(
                transfer,
                direction,
                modes.stream()
                        .map(it -> new ModeTrials(it.mode(), it.rows().subList(0, trials)))
                        .toList());
    }
}
