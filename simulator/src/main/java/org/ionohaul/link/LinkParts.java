package org.ionohaul.link;

import org.ionohaul.channel.End;

/**
 * What a link between two stations is made of, but for the medium that carries it.
 *
 * @param mode what both work
 * @param near how fast the near station changes between sending and receiving
 * @param far how fast the far station does
 * @param chances where chance comes from
 */
public record LinkParts(ModeSpec mode, StationTimes near, StationTimes far, Chances chances) {
    /** Returns the times of the station at an end. */
    public StationTimes times(End end) {
        return end == End.NEAR ? near : far;
    }
}
