package org.ionohaul.channel;

/**
 * Level of the sky wave over one trial's clock: trend and slow variation, drop-outs and sporadic E.
 *
 * @param level trend and slow variation
 * @param dropOuts when it drops out
 * @param sporadicE when sporadic E carries it
 */
record SkyWaveLevel(Level level, SpellTimes dropOuts, SpellTimes sporadicE) {
    /** Returns the level at an instant, zero or later, as a ratio to the one stated. */
    double ratio(long atNanos) {
        return level.ratio(atNanos) * dropOuts.ratio(atNanos) * sporadicE.ratio(atNanos);
    }
}
