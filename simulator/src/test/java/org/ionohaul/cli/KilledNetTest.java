package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A net in a process of its own, killed outright (kill -9) among the trials of one value after the other, loses nothing. */
final class KilledNetTest {
    private static final String NAME = "bridge-valley-14-net-load";
    private static final int KILLS = 4;

    @TempDir
    private Path folder = Path.of("");

    /** Trials are kept a hundred at a time, or sooner: each life keeps a hundred or two of seven hundred. */
    @Test
    void aNetThatIsKilledGoesOnToTheSameBytes() throws IOException, InterruptedException {
        Path killed = folder.resolve("killed");
        Path journal = killed.resolve(NAME + ".journal");
        for (int kill = 0; kill < KILLS; kill++) {
            long held = journal.toFile().length();
            ProgramProcess process = start(killed, kill > 0);
            process.await(() -> journal.toFile().length() > Math.max(held, 1_000));
            process.kill();
            assertFalse(Files.exists(killed.resolve(NAME)), "results appear when they are complete");
        }
        start(killed, true).finish();
        Path whole = folder.resolve("whole");
        start(whole, false).finish();
        assertEquals(ProgramProcess.contents(whole), ProgramProcess.contents(killed));
    }

    private static ProgramProcess start(Path out, boolean isResumed) throws IOException {
        List<String> arguments = new ArrayList<>(List.of(
                "net",
                "../scenarios/nets/bridge-valley.toml",
                "--trials",
                "350",
                "--vary",
                "load=1 | 2",
                "--out",
                out.toString()));
        if (isResumed) {
            arguments.add("--resume");
        }
        return ProgramProcess.of(arguments);
    }
}
