package org.ionohaul.scenario;

import java.util.List;

/**
 * A scenario with what its reader noticed.
 *
 * @param scenario the scenario
 * @param sendClockSeconds time of day when the operator presses send, in seconds since midnight
 * @param distance where the length of the path stands
 * @param warnings what can be used as it stands, but is odd; in order of file and place
 */
public record Understood(Scenario scenario, double sendClockSeconds, Place distance, List<Warning> warnings) {
    /** Copies the warnings. */
    public Understood {
        warnings = List.copyOf(warnings);
    }
}
