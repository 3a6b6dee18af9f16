package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A grid in a process of its own, killed outright (kill -9) among its rows, with the last record torn, and between its
 * rows and its results: no row that was kept is simulated again, and the results are those of a grid that nobody disturbed.
 */
final class KilledGridTest {
    private static final String NAME = "huts-3-levels";

    /** Rows are kept a hundred at a time, or sooner: each of three lives among them keeps a hundred or two. */
    private static final int ROWS = 500;

    private static final int KILLS = 3;

    /** How much is missing of the last record after the last of them, as if it had come while that was written. */
    private static final int TORN_BYTES = 7;

    /** Less than some rows, more than what stands before them in the journal. */
    private static final long MOST_BEFORE_ROWS = 1_000;

    private static final Pattern ROW = Pattern.compile(",message,upload,");

    private static final String SCENARIO = """
            title = "A message between two invented huts"
            seed = 3
            horizon = "2 min"
            distance = "90 km"
            modes = ["brisk-comb"]
            sky = { condition = "mid-latitude quiet" }

            [[transfer]]
            name = "message"
            files = [{ name = "message", size = "150 B" }]
            directions = ["upload"]
            deadlines = ["20 s"]

            [near]
            name = "Moss Hut"
            snr = "17 dB"
            patience = "1 min"
            station = { hang = "20 ms", relay = "14 ms", recovery = "30 ms" }

            [far]
            name = "Fern Hut"
            snr = "17 dB"
            station = { hang = "20 ms", relay = "14 ms", recovery = "30 ms" }
            """;

    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void writeFiles() throws IOException {
        Files.writeString(folder.resolve("huts.toml"), SCENARIO);
        Files.copy(
                Path.of("../scenarios/modes/brisk-comb.toml"),
                Files.createDirectory(folder.resolve("modes")).resolve("brisk-comb.toml"));
        Files.writeString(
                folder.resolve("levels.csv"),
                IntStream.range(0, ROWS)
                        .mapToObj(row -> "%d,%d,%d dB%n".formatted(row / 25, row % 25, row / 25))
                        .collect(Collectors.joining("", "label.down,label.across,far.snr\n", "")));
    }

    @Test
    void aGridThatIsKilledGoesOnToTheSameBytes() throws IOException, InterruptedException {
        Path killed = folder.resolve("killed");
        Path journal = killed.resolve(NAME + ".journal");
        byte[] kept = new byte[0];
        byte[] held = kept;
        for (int kill = 0; kill < KILLS; kill++) {
            kept = held;
            long more = Math.max(kept.length, MOST_BEFORE_ROWS);
            ProgramProcess process = start(killed, 1 + kill % 2, kill > 0);
            process.await(() -> journal.toFile().length() > more);
            process.kill();
            assertFalse(Files.exists(killed.resolve(NAME)), "results appear when they are complete");
            held = Files.readAllBytes(journal);
            assertBeginsWith(kept, held);
            int rows = rows(held);
            assertTrue(rows > rows(kept) && rows < ROWS, () -> rows + " rows were done when it was killed");
        }
        Files.write(journal, Arrays.copyOf(held, held.length - TORN_BYTES));

        ProgramProcess process = start(killed, 2, true);
        process.await(() -> rows(journal) == ROWS);
        process.kill();
        assertFalse(Files.exists(killed.resolve(NAME)), "it was killed between its last row and its results");
        assertBeginsWith(kept, Files.readAllBytes(journal));
        Path scratch = killed.resolve("." + NAME + ".writing-0");
        Files.createDirectories(scratch);
        Files.writeString(scratch.resolve("grid.csv"), "as if it had come while these were writ");

        start(killed, 1, true).finish();
        Path whole = folder.resolve("whole");
        start(whole, 2, false).finish();
        assertEquals(
                List.of(NAME + "/grid.csv", NAME + "/grid.html"),
                List.copyOf(ProgramProcess.contents(whole).keySet()));
        assertEquals(ProgramProcess.contents(whole), ProgramProcess.contents(killed));
    }

    private static int rows(byte[] journal) {
        return (int) ROW.matcher(new String(journal, StandardCharsets.UTF_8))
                .results()
                .count();
    }

    private static int rows(Path journal) {
        try {
            return rows(Files.readAllBytes(journal));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void assertBeginsWith(byte[] kept, byte[] journal) {
        assertArrayEquals(kept, Arrays.copyOf(journal, kept.length), "what was kept stands as it stood");
    }

    private ProgramProcess start(Path out, int threads, boolean isResumed) throws IOException {
        List<String> arguments = new ArrayList<>(List.of(
                "grid",
                folder.resolve("huts.toml").toString(),
                "--rows",
                folder.resolve("levels.csv").toString(),
                "--trials",
                "2",
                "--threads",
                Integer.toString(threads),
                "--out",
                out.toString()));
        if (isResumed) {
            arguments.add("--resume");
        }
        return ProgramProcess.of(arguments);
    }
}
