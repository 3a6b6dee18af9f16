package org.ionohaul.study;

import java.io.IOException;

/** Thrown when the temporary folder has no room for a study's rows, or no right to write there. */
public final class NoRoomForTrials extends RuntimeException {
    private static final long serialVersionUID = 1;

    NoRoomForTrials(IOException cause) {
        super(
                "Cannot keep so many trials in " + System.getProperty("java.io.tmpdir") + ": " + cause.getMessage(),
                cause);
    }
}
