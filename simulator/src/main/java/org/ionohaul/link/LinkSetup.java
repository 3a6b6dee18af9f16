package org.ionohaul.link;

/**
 * What the two stations of a link have in common.
 *
 * @param parts what the link is made of
 * @param medium what carries it
 * @param timing how long the steps of its cycles last
 * @param demodulator what a receiver makes of a burst
 * @param trace who watches
 */
record LinkSetup(LinkParts parts, Medium medium, Timing timing, Demodulator demodulator, LinkTrace trace) {
    ModeSpec mode() {
        return parts.mode();
    }
}
