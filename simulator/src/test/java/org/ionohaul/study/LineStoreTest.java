package org.ionohaul.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lines that outlive the program. */
final class LineStoreTest {
    private static final int PIECES = 1000;

    @TempDir
    private Path folder = Path.of("");

    private static List<String> lines(int piece) {
        return IntStream.rangeClosed(0, piece % 3)
                .mapToObj(i -> piece + "," + i + ",Größe")
                .toList();
    }

    private static List<String> all(LineStore store) throws IOException {
        List<String> all = new ArrayList<>();
        store.forEach(all::add);
        return all;
    }

    private static List<String> upTo(int pieces) {
        return IntStream.range(0, pieces)
                .mapToObj(LineStoreTest::lines)
                .flatMap(List::stream)
                .toList();
    }

    @Test
    @DisplayName("a run broken off in the midst of a piece goes on to the same lines, even with its last block torn")
    void goesOn() throws IOException {
        Path file = folder.resolve("journal");
        AtomicInteger begun = new AtomicInteger();
        int done;
        try (Journal journal = Journal.begin(file, "invented")) {
            LineStore store = LineStore.in(journal, "rows");
            TrialPool pool = new TrialPool(3, (ready, asked) -> {}, () -> begun.get() > 400);
            // As when a piece notices by itself that it is to stop: it comes to nothing, and others after it are done.
            pool.run(PIECES, i -> begun.incrementAndGet() == 350 ? List.of() : lines(i), store);
            done = store.trials();
            assertTrue(done > 250 && done < 350, () -> "done " + store.trials());
            assertEquals(upTo(done), all(store));
        }
        byte[] whole = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(whole, whole.length - 3));
        try (Journal journal = Journal.resume(file, "invented").orElseThrow()) {
            LineStore store = LineStore.in(journal, "rows");
            assertTrue(store.trials() < done && store.trials() >= done - 100, () -> "kept " + store.trials());
            AtomicInteger repeated = new AtomicInteger();
            int kept = store.trials();
            TrialPool.of(2)
                    .run(
                            PIECES,
                            i -> {
                                repeated.incrementAndGet();
                                return lines(i);
                            },
                            store);
            assertEquals(PIECES - kept, repeated.get());
            assertEquals(upTo(PIECES), all(store));
        }
    }

    @Test
    @DisplayName("sections of one journal don't mix")
    void sectionsAreApart() throws IOException {
        try (Journal journal = Journal.begin(folder.resolve("journal"), "invented")) {
            LineStore.in(journal, "a")
                    .append(Stream.of(1, 2).map(LineStoreTest::lines).toList());
            LineStore.in(journal, "b").append(List.of(lines(5)));
            assertEquals(2, LineStore.in(journal, "a").trials());
            assertEquals(lines(5), all(LineStore.in(journal, "b")));
        }
    }
}
