package org.ionohaul.waveform;

import org.ionohaul.limits.OutOfRange;

/**
 * By what means a receiver keeps interference and impulses from what it detects and decodes: one receiver, for preambles
 * and data alike.
 *
 * @param excision what it does about narrow interferers
 * @param impulseDefence what it does about impulses
 * @param impulseLimitDb by how much a sample must exceed the mean power for that, in dB, from 0 to below 100
 */
public record FrontEnd(Excision excision, ImpulseDefence impulseDefence, double impulseLimitDb) {
    /** A receiver without any such means. */
    public static final FrontEnd PLAIN = new FrontEnd(Excision.NONE, ImpulseDefence.NONE, 10);

    /** Checks the limit. */
    public FrontEnd {
        OutOfRange.unless(
                impulseLimitDb >= 0 && impulseLimitDb < 100,
                "impulseLimitDb",
                "must be from 0 to below 100",
                impulseLimitDb);
    }
}
