package org.ionohaul.channel;

/** One of the two stations of a link. */
public enum End {
    /** The station that dials: the user's own. */
    NEAR,
    /** The station that is called: the gateway. */
    FAR;

    /** Returns the station at the other end. */
    public End other() {
        return this == NEAR ? FAR : NEAR;
    }
}
