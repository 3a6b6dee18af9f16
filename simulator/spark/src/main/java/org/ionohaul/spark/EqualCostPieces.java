package org.ionohaul.spark;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.spark.Partitioner;

/**
 * Cuts a table into pieces of consecutive rows that cost about the same: none costs more than its share and one row together.
 * Keys are the rows' lines.
 */
final class EqualCostPieces extends Partitioner {
    private static final long serialVersionUID = 1;

    /** Of every piece but the first. */
    private final int[] firstLines;

    private EqualCostPieces(int[] firstLines) {
        this.firstLines = firstLines;
    }

    /**
     * Cuts.
     *
     * @param lines the rows' lines, ascending
     * @param costs what each row is predicted to cost, in any unit, at least one above zero
     * @param most how many pieces there may be, 1 or more; there are fewer if there are few rows, or some cost much
     */
    static EqualCostPieces of(int[] lines, double[] costs, int most) {
        double share = DoubleStream.of(costs).sum() / most;
        double[] middles = costs.clone();
        Arrays.parallelPrefix(middles, Double::sum);
        int[] pieces = IntStream.range(0, costs.length)
                .map(i -> (int) ((middles[i] - costs[i] / 2) / share))
                .toArray();
        return new EqualCostPieces(IntStream.range(1, lines.length)
                .filter(i -> pieces[i] > pieces[i - 1])
                .map(i -> lines[i])
                .toArray());
    }

    @Override
    public int numPartitions() {
        return firstLines.length + 1;
    }

    @Override
    public int getPartition(Object line) {
        int found = Arrays.binarySearch(firstLines, (Integer) line);
        return found >= 0 ? found + 1 : -found - 1;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof EqualCostPieces it && Arrays.equals(firstLines, it.firstLines);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(firstLines);
    }
}
