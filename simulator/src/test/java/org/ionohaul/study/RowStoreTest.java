package org.ionohaul.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows in memory and, beyond it, in a file. */
final class RowStoreTest {
    @TempDir
    private Path folder = Path.of("");

    /** Some 200 bytes a row and 100,000 rows: more than stays in memory. */
    private static final int TRIALS = 50_000;

    private static RowStore filled(RowStore store) {
        for (int trial = 0; trial < TRIALS; trial += 100) {
            store.append(IntStream.range(trial, trial + 100)
                    .mapToObj(RowStoreTest::rows)
                    .toList());
        }
        return store;
    }

    private static List<byte[]> rows(int trial) {
        return List.of(
                TrialRow.packed(trial, InventedStudy.delivered(100 + trial)),
                TrialRow.packed(trial, InventedStudy.gaveUp(100 + trial)));
    }

    @Test
    void rowsComeBackAsTheyWentIn() {
        assertAllAreThere(filled(RowStore.nameless()));
    }

    @Test
    void rowsInAJournalAreThereWhenItIsOpenedAgain() throws IOException {
        Path file = folder.resolve("study.journal");
        try (Journal journal = Journal.begin(file, "print")) {
            assertAllAreThere(filled(RowStore.in(journal, "study")));
            RowStore.in(journal, "sizes").append(List.of(rows(0)));
        }
        try (Journal journal = Journal.resume(file, "print").orElseThrow()) {
            assertAllAreThere(RowStore.in(journal, "study"));
            assertEquals(1, RowStore.in(journal, "sizes").trials());
            assertEquals(0, RowStore.in(journal, "another part").trials());
        }
    }

    private static void assertAllAreThere(RowStore store) {
        assertEquals(TRIALS, store.trials());
        List<TrialRow> delivered = store.column(0, TRIALS);
        List<TrialRow> gaveUp = store.column(1, TRIALS);
        long bytes = TRIALS * rows(0).stream().mapToLong(row -> row.length).sum();
        assertTrue(bytes > 18_000_000, () -> bytes + " bytes do not need the file");
        for (int trial = 0; trial < TRIALS; trial++) {
            assertArrayEquals(rows(trial).get(0), delivered.get(trial).packed());
            assertArrayEquals(rows(trial).get(1), gaveUp.get(trial).packed());
        }
    }

    @Test
    void aColumnEndsWhereItIsAskedToAndStaysAsItWas() {
        RowStore store = filled(RowStore.nameless());
        List<TrialRow> some = store.column(0, 7);
        store.append(List.of(rows(TRIALS)));
        assertEquals(7, some.size());
        assertEquals(
                IntStream.range(0, 7).mapToObj(i -> 100.0 + i).toList(),
                some.stream().map(TrialRow::deliveredSeconds).toList());
        assertThrows(IndexOutOfBoundsException.class, () -> some.get(7));
        assertEquals(TRIALS + 1, store.trials());
        assertEquals(TRIALS, store.column(1, TRIALS + 1).get(TRIALS).trial());
    }
}
