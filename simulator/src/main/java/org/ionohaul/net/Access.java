package org.ionohaul.net;

/** Who may call when. */
public enum Access {
    /** Anybody who finds the channel clear. */
    FREE,
    /** Each station in times of its own, in turn. */
    ROSTER,
    /** The one whom the gateway names next: it knows, at no cost, who has what. */
    IN_TURN
}
