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
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
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
            Process process = start(killed, kill > 0);
            await(process, () -> size(journal) >= target);
            process.destroyForcibly().waitFor();
            assertFalse(Files.exists(killed.resolve(NAME)), "results appear when they are complete");
        }
        Process process = start(killed, true);
        await(process, () -> isInLastPass(journal));
        process.destroyForcibly().waitFor();
        long held = size(journal);
        Process interrupted = start(killed, true);
        await(interrupted, () -> size(journal) > held);
        // As Ctrl-C does, but for SIGINT being deaf below a shell's background job, and its children's too.
        interrupted.destroy();
        assertTrue(interrupted.waitFor(1, TimeUnit.MINUTES));
        assertEquals(ExitCode.PARTIAL, interrupted.exitValue());
        assertTrue(isInLastPass(journal));
        assertTrue(Files.exists(killed.resolve(NAME + "-partial").resolve("summary.json")));
        assertFalse(Files.exists(killed.resolve(NAME)), "results appear when they are complete");
        finish(start(killed, true));
        Path whole = folder.resolve("whole");
        finish(start(whole, false));
        assertEquals(contents(whole), contents(killed));
    }

    /** Waits until something holds of a process that is at work. */
    private static void await(Process process, BooleanSupplier holds) throws InterruptedException {
        while (process.isAlive() && !holds.getAsBoolean()) {
            Thread.sleep(1);
        }
        assertTrue(process.isAlive(), "the study was over before it came to that");
    }

    private static long size(Path journal) {
        return journal.toFile().length();
    }

    private static boolean isInLastPass(Path journal) {
        try {
            return Files.exists(journal)
                    && LAST_PASS
                            .matcher(Files.readString(journal, StandardCharsets.ISO_8859_1))
                            .find();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Process start(Path out, boolean isResumed) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx300m",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
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
            command.add("--resume");
        }
        return new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private static void finish(Process process) throws InterruptedException {
        assertTrue(process.waitFor(10, TimeUnit.MINUTES));
        assertEquals(ExitCode.DONE, process.exitValue());
    }

    /** Every file below a folder, so that nothing left behind goes unseen. */
    private static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(folder.relativize(file).toString(), Files.readString(file));
            }
        }
        return contents;
    }
}
