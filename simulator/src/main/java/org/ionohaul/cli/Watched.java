package org.ionohaul.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Help.Ansi;

/** A stream that a person may be watching. */
enum Watched {
    /** What a command answers. */
    OUTPUT(1),
    /** What it says besides. */
    ERROR(2);

    /** Where Linux says what the stream is connected to; Java 17 itself cannot tell. */
    private final Path descriptor;

    Watched(int descriptor) {
        this.descriptor = Path.of("/proc/self/fd/" + descriptor);
    }

    /** Returns whether it goes to a terminal. */
    boolean isTerminal() {
        try {
            String target = Files.readSymbolicLink(descriptor).toString();
            return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty") || target.equals("/dev/console");
        } catch (IOException | UnsupportedOperationException e) {
            return Ansi.AUTO.enabled();
        }
    }
}
