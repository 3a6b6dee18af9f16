package org.ionohaul.link;

import org.ionohaul.channel.End;

/**
 * What a link between two stations is made of, but for the medium that carries it.
 *
 * @param mode what both work
 * @param near the near station's radio
 * @param far the far station's
 * @param chances where chance comes from
 */
public record LinkParts(ModeSpec mode, Radio near, Radio far, Chances chances) {
    /** Returns the radio of the station at an end. */
    public Radio radio(End end) {
        return end == End.NEAR ? near : far;
    }
}
