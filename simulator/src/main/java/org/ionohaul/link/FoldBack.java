package org.ionohaul.link;

import org.ionohaul.limits.OutOfRange;

/**
 * How a small transmitter saves itself in long overs: keyed for too long, it lowers its power, and only receiving cools it.
 *
 * <p>Keyed time counts whatever is sent. A class B stage that is driven to a share a of its full amplitude turns 2 a / pi - a^2
 * / 2 of the supply's power, at a load that fits, into heat: 0.14 at full drive, 0.19 at half, so that a high crest factor does
 * not cool it (textbooks on power amplifiers; from memory).
 *
 * @param afterNanos how long a cool transmitter may be keyed at full power, positive
 * @param dropDb by how much its power is lower from then on, from 0 to 40 dB; 0 for a transmitter that never folds back
 * @param coolingNanos how long it must receive to be as cool as at first, zero or more; in proportion after a shorter over
 */
public record FoldBack(long afterNanos, double dropDb, long coolingNanos) {
    /** A transmitter that keeps its power up. */
    public static final FoldBack NEVER = new FoldBack(1, 0, 0);

    /** Checks every value. */
    public FoldBack {
        OutOfRange.unless(afterNanos > 0, "afterNanos", "must be above 0", afterNanos);
        OutOfRange.unless(dropDb >= 0 && dropDb <= 40, "dropDb", "must be from 0 to 40 dB", dropDb);
        OutOfRange.unless(coolingNanos >= 0, "coolingNanos", "must not be negative", coolingNanos);
    }
}
