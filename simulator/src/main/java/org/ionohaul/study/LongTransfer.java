package org.ionohaul.study;

import java.util.List;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;

/**
 * The one long transfer a trial whose progress answers every smaller size at once.
 *
 * <p>Its receiver has held the first so many bytes by the time at which a file of that size would be through, as far as
 * a mode does not send a long queue in another way than a short one.
 */
public final class LongTransfer {
    /** Name of the transfer and of its file. */
    public static final String NAME = "long file";

    private LongTransfer() {}

    /**
     * Returns the scenario with one long file in place of what it sends, in every direction that occurs in it.
     *
     * @param scenario stations, sky, modes, seed and trials
     * @param bytes size of the file, 1 or more
     * @param horizonSeconds how long to watch, positive
     */
    public static Scenario in(Scenario scenario, long bytes, double horizonSeconds) {
        List<Direction> directions = scenario.transfers().stream()
                .flatMap(it -> it.directions().stream())
                .distinct()
                .sorted()
                .toList();
        Transfer transfer = new Transfer(NAME, List.of(new PayloadFile(NAME, bytes)), directions, List.of());
        return new Scenario(
                scenario.name(),
                scenario.title(),
                scenario.seed(),
                scenario.trials(),
                horizonSeconds,
                scenario.distanceMetres(),
                List.of(transfer),
                scenario.modes(),
                scenario.near(),
                scenario.far(),
                scenario.sky());
    }
}
