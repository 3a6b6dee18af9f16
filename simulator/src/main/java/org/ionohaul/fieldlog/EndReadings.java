package org.ionohaul.fieldlog;

import java.util.Optional;

/**
 * What was read at one end during a run.
 *
 * @param snr signal-to-noise ratio in 3 kHz
 * @param signal the other station's level
 * @param noise the noise without it, in 3 kHz; it doesn't fade, so it counts as averaged
 */
public record EndReadings(Optional<Reading> snr, Optional<Reading> signal, Optional<Reading> noise) {
    /** Nothing was read. */
    public static final EndReadings NONE = new EndReadings(Optional.empty(), Optional.empty(), Optional.empty());
}
