package org.ionohaul.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** Pieces of about equal cost. */
final class EqualCostPiecesTest {
    @RepeatedTest(50)
    @DisplayName(
            "no piece costs more than its share and the dearest row together; pieces follow the order of the table")
    void noPieceIsDear(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        int rows = 1 + random.nextInt(400);
        int most = 1 + random.nextInt(40);
        // A few rows cost a hundred times as much as the others; lines have gaps, since tables have remarks.
        double[] costs = random.doubles(rows).map(it -> it < 0.9 ? 1 + it : 100).toArray();
        int[] lines = IntStream.range(0, rows).map(i -> 2 + 3 * i).toArray();

        EqualCostPieces pieces = EqualCostPieces.of(lines, costs, most);

        double[] cost = new double[pieces.numPartitions()];
        int last = 0;
        for (int i = 0; i < rows; i++) {
            int piece = pieces.getPartition(lines[i]);
            assertTrue(piece == last || piece == last + 1, "row " + i + " of piece " + piece + " after " + last);
            cost[piece] += costs[i];
            last = piece;
        }
        assertEquals(pieces.numPartitions() - 1, last);
        assertTrue(pieces.numPartitions() <= most);
        double bound =
                Arrays.stream(costs).sum() / most + Arrays.stream(costs).max().orElseThrow();
        assertTrue(Arrays.stream(cost).max().orElseThrow() <= bound * (1 + 1e-9), Arrays.toString(cost));
    }

    @Test
    @DisplayName("dear rows get pieces to themselves, cheap ones share one")
    void dearRowsAreAlone() {
        EqualCostPieces pieces = EqualCostPieces.of(new int[] {2, 3, 4, 5, 6}, new double[] {10, 10, 1, 1, 8}, 3);
        assertEquals(0, pieces.getPartition(2));
        assertEquals(1, pieces.getPartition(3));
        assertEquals(2, pieces.getPartition(4));
        assertEquals(2, pieces.getPartition(6));
    }
}
