package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program in a process of its own, killed outright (kill -9) again and again: nothing that it promises is lost. */
final class KilledStudyTest {
    private static final int KILLS = 10;

    /** What the journal of this study comes to is some ten times as much, so that each kill meets another moment. */
    private static final long BYTES_A_LIFE = 75_000;

    private static final String NAME = "river-watch-41";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void aStudyThatIsKilledTenTimesGoesOnToTheSameBytes() throws IOException, InterruptedException {
        Path killed = folder.resolve("killed");
        Path journal = killed.resolve(NAME + ".journal");
        int kills = 0;
        while (kills < KILLS) {
            Process process = start(killed, kills > 0);
            long target = (Files.exists(journal) ? Files.size(journal) : 0) + BYTES_A_LIFE + 1117L * kills;
            while (process.isAlive() && !(Files.exists(journal) && Files.size(journal) >= target)) {
                Thread.sleep(1);
            }
            assertTrue(process.isAlive(), "the study was over before kill " + (kills + 1));
            process.destroyForcibly().waitFor();
            kills++;
            assertFalse(Files.exists(killed.resolve(NAME)), "results appear when they are complete");
        }
        finish(start(killed, true));
        Path whole = folder.resolve("whole");
        finish(start(whole, false));
        assertEquals(contents(whole), contents(killed));
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
                "15",
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
