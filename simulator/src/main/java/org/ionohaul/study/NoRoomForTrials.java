package org.ionohaul.study;

import java.io.IOException;

/** Thrown when there is no room for a study's rows, or no right to write them. */
public final class NoRoomForTrials extends RuntimeException {
    private static final long serialVersionUID = 1;

    NoRoomForTrials(String place, IOException cause) {
        super("Cannot keep so many trials in " + place + ": " + cause.getMessage(), cause);
    }
}
