package org.ionohaul.study;

import java.io.IOException;

/** Thrown when there is no room for a study's rows, or no right to write them. The message says what to do about it. */
public final class NoRoomForTrials extends RuntimeException {
    private static final long serialVersionUID = 1;

    NoRoomForTrials(Journal journal, IOException cause) {
        super(
                "Cannot keep so many trials in " + journal.place() + ": " + cause.getMessage() + "\n    "
                        + (journal.isKept()
                                ? "What was done before is kept: make room there and go on with --resume."
                                : "Make room there, name another folder with IONOHAUL_JAVA_OPTS=-Djava.io.tmpdir=FOLDER,"
                                        + " or ask for fewer trials.")
                        + " Earlier results are untouched.",
                cause);
    }
}
