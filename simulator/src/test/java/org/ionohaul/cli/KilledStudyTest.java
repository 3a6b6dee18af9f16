package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program in a process of its own, killed outright (kill -9) again and again and interrupted as by Ctrl-C, in each of its
 * passes: the study, files of other sizes, and the larger sizes about which modes change places. Nothing that it promises is
 * lost.
 */
final class KilledStudyTest {
    private static final int KILLS = 10;

    /** What the journal of this study comes to is more than fourteen times as much, so that the kills meet the first passes. */
    private static final long BYTES_A_LIFE = 280_000;

    /** A long entry lets two modes change places at sizes that are sent in the last pass alone. */
    private static final String LATE_START = "modes.patient-climber.session.introductions=80";

    private static final String NAME = "river-watch-41-modes.patient-climber.session.introductions-80";

    /** How the journal names the trials of a pass of sizes, the first of which is the smallest of it. */
    private static final Pattern LAST_PASS = Pattern.compile("sizes \\[(?!1000 )");

    @TempDir
    private Path folder = Path.of("");

    @Test
    void aStudyThatIsKilledInAllItsPassesGoesOnToTheSameBytes() throws IOException, InterruptedException {
        Path killed = folder.resolve("killed");
        Path journal = killed.resolve(NAME + ".journal");
        for (int kill = 0; kill < KILLS; kill++) {
            long target = size(journal) + BYTES_A_LIFE + 1117L * kill;
            ProgramProcess process = start(killed, kill > 0);
            process.await(() -> size(journal) >= target);
            process.kill();
            assertFalse(Files.exists(killed.resolve(NAME)), "results appear when they are complete");
        }
        ProgramProcess last = start(killed, true);
        LastPass lastPass = new LastPass(journal);
        last.await(lastPass::hasBegun);
        last.kill();
        long held = size(journal);
        ProgramProcess process = start(killed, true);
        process.await(() -> size(journal) > held);
        Process interrupted = process.process();
        // As Ctrl-C does, but for SIGINT being deaf below a shell's background job, and its children's too.
        interrupted.destroy();
        assertTrue(interrupted.waitFor(1, TimeUnit.MINUTES));
        assertEquals(ExitCode.PARTIAL, interrupted.exitValue());
        assertTrue(new LastPass(journal).hasBegun());
        assertTrue(Files.exists(killed.resolve(NAME + "-partial").resolve("summary.json")));
        assertFalse(Files.exists(killed.resolve(NAME)), "results appear when they are complete");
        start(killed, true).finish();
        Path whole = folder.resolve("whole");
        start(whole, false).finish();
        assertEquals(ProgramProcess.contents(whole), ProgramProcess.contents(killed));
    }

    private static long size(Path journal) {
        return journal.toFile().length();
    }

    private static ProgramProcess start(Path out, boolean isResumed) throws IOException {
        List<String> arguments = new ArrayList<>(List.of(
                "study",
                "../scenarios/river-watch.toml",
                "--trials",
                "500",
                "--size-trials",
                // Trials are kept 25 at a time, or sooner: one block until it is killed in the last pass, another until
                // it is interrupted there, and as many are left however fast the machine is.
                "80",
                "--set",
                LATE_START,
                "--out",
                out.toString()));
        if (isResumed) {
            arguments.add("--resume");
        }
        return ProgramProcess.of(arguments);
    }

    /** Looks into the journal only when it has grown, so that the study has the processors. */
    private static final class LastPass {
        private final Path journal;
        private long seenBytes;

        LastPass(Path journal) {
            this.journal = journal;
        }

        boolean hasBegun() {
            long bytes = size(journal);
            if (bytes == seenBytes) {
                return false;
            }
            seenBytes = bytes;
            try {
                return LAST_PASS
                        .matcher(Files.readString(journal, StandardCharsets.ISO_8859_1))
                        .find();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
