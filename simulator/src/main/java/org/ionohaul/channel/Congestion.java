package org.ionohaul.channel;

import java.util.List;

/**
 * How crowded a frequency is, in plain words. No published source gives the lengths of overs and contacts or their
 * levels on the HF bands; every number is an assumption (common practice, no source) and is there to be changed.
 */
public enum Congestion implements Named {
    /** Now and then somebody calls nearby; now and then somebody tunes up. */
    QUIET_BAND,
    /** Ordinary trial traffic: conversations of ten minutes drift in, and narrow signals share the channel. */
    BUSY_EVENING,
    /** Everybody calls at once: stations that stay and call every few seconds, and passers-by without end. */
    CONTEST_WEEKEND;

    /** Returns the populations of other stations that one end hears: voices first, then narrow signals. */
    public List<Interference> populations() {
        return switch (this) {
            case QUIET_BAND ->
                List.of(new Interference(0.5, 300, 20, 20, 0, 8, 0.8), new Interference(2, 60, 10, 10, 0, 8, 0.1));
            case BUSY_EVENING ->
                List.of(new Interference(3, 600, 30, 30, 3, 10, 0.8), new Interference(6, 180, 10, 10, 6, 10, 0.1));
            case CONTEST_WEEKEND ->
                List.of(new Interference(3, 1200, 6, 6, 6, 10, 0.8), new Interference(40, 60, 4, 6, 6, 10, 0.15));
        };
    }
}
