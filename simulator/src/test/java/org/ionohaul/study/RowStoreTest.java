package org.ionohaul.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Rows in memory and, beyond it, in a file. */
final class RowStoreTest {
    /** Some 200 bytes a row and 100,000 rows: more than stays in memory. */
    private static final int TRIALS = 50_000;

    private final RowStore store = RowStore.of(TRIALS, RowStoreTest::rows);

    private static List<byte[]> rows(int trial) {
        return List.of(
                TrialRow.packed(trial, InventedStudy.delivered(100 + trial)),
                TrialRow.packed(trial, InventedStudy.gaveUp(100 + trial)));
    }

    @Test
    void rowsComeBackAsTheyWentIn() {
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
