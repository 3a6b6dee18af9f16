package org.ionohaul.scenario;

import org.ionohaul.channel.End;

/** Which way files go. The near end dials in either case. */
public enum Direction {
    /** From the near end to the far end. */
    UPLOAD(End.NEAR),
    /** From the far end to the near end. */
    DOWNLOAD(End.FAR);

    private final End sender;

    Direction(End sender) {
        this.sender = sender;
    }

    /** Returns the end that holds the files. */
    public End sender() {
        return sender;
    }

    /** Returns the end that wants the files. */
    public End receiver() {
        return sender.other();
    }
}
