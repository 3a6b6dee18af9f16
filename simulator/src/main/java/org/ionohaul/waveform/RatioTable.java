package org.ionohaul.waveform;

import java.util.function.DoubleUnaryOperator;

/**
 * A function of a power ratio that never falls, tabulated 128 times an octave (every 0.024 dB) from -42 to +51 dB and
 * read by straight lines.
 *
 * <p>The cells are cut by the leading bits of the ratio's floating-point form, so that a reading needs no logarithm:
 * this is the innermost loop of a trial.
 */
final class RatioTable {
    private static final int CELL_BITS = 7;
    private static final int SHIFT = 52 - CELL_BITS;
    private static final double CELLS_PER_MANTISSA = 0x1p-45;
    private static final long ONE_EXPONENT = 1023;
    private static final double LOWEST = 0x1p-14;
    private static final long FIRST_CELL = Double.doubleToRawLongBits(LOWEST) >>> SHIFT;
    private static final int CELLS = 31 << CELL_BITS;
    private static final double HIGHEST = ratio(CELLS);

    private final double atZero;
    private final double[] values;

    private RatioTable(double atZero, double[] values) {
        this.atZero = atZero;
        this.values = values;
    }

    /**
     * Tabulates a function that does not fall; where rounding makes it fall, the earlier value stands.
     *
     * @param atZero its value at ratio zero
     * @param function the function, asked for positive ratios
     */
    static RatioTable ofRising(double atZero, DoubleUnaryOperator function) {
        double[] values = sampled(function);
        double highest = atZero;
        for (int i = 0; i < values.length; i++) {
            highest = Math.max(highest, values[i]);
            values[i] = highest;
        }
        return new RatioTable(atZero, values);
    }

    /** Tabulates any function; such a table has no inverse. */
    static RatioTable of(double atZero, DoubleUnaryOperator function) {
        return new RatioTable(atZero, sampled(function));
    }

    private static double[] sampled(DoubleUnaryOperator function) {
        double[] values = new double[CELLS + 1];
        for (int i = 0; i < values.length; i++) {
            values[i] = function.applyAsDouble(ratio(i));
        }
        return values;
    }

    private static double ratio(long cell) {
        return Double.longBitsToDouble((FIRST_CELL + cell) << SHIFT);
    }

    /**
     * Returns the function's value at a linear ratio; beyond the table the last value, below zero on a straight line as between
     * zero and the table.
     */
    double at(double ratio) {
        if (!(ratio >= LOWEST)) {
            return atZero + (values[0] - atZero) * (ratio / LOWEST);
        }
        if (ratio >= HIGHEST) {
            return values[CELLS];
        }
        long bits = Double.doubleToRawLongBits(ratio);
        int cell = cell(ratio);
        double fraction = (bits & ((1L << SHIFT) - 1)) * CELLS_PER_MANTISSA;
        double low = values[cell];
        return low + fraction * (values[cell + 1] - low);
    }

    /** Returns the value at ratio zero: the lowest, if the function never falls. */
    double lowest() {
        return atZero;
    }

    /** Returns the value at the table's end: the highest, if the function never falls. */
    double highest() {
        return values[CELLS];
    }

    /** Returns how steeply the function rises at a ratio; beyond the table not at all. */
    double slope(double ratio) {
        if (!(ratio >= LOWEST)) {
            return (values[0] - atZero) / LOWEST;
        }
        return ratio >= HIGHEST ? 0 : cellSlope(cell(ratio));
    }

    /** Returns how much steeper the function gets at a ratio; outside the table not at all. */
    double bend(double ratio) {
        if (!(ratio >= LOWEST && ratio < HIGHEST)) {
            return 0;
        }
        int cell = Math.min(cell(ratio), CELLS - 2);
        return (cellSlope(cell + 1) - cellSlope(cell)) * cellsPerRatio(cell);
    }

    private double cellSlope(int cell) {
        return (values[cell + 1] - values[cell]) * cellsPerRatio(cell);
    }

    private static int cell(double ratio) {
        return (int) ((Double.doubleToRawLongBits(ratio) >>> SHIFT) - FIRST_CELL);
    }

    /** Returns one over the width of a cell: a power of two. */
    private static double cellsPerRatio(int cell) {
        long exponent = (FIRST_CELL + cell) >>> CELL_BITS;
        return Double.longBitsToDouble((2 * ONE_EXPONENT + CELL_BITS - exponent) << 52);
    }

    /** Returns the smallest ratio at which the function reaches a value: zero below its range, the table's end above. */
    double inverse(double value) {
        if (value <= values[0]) {
            return value <= atZero ? 0 : LOWEST * (value - atZero) / (values[0] - atZero);
        }
        if (value >= values[CELLS]) {
            return ratio(firstAtLeast(values[CELLS]));
        }
        int above = firstAtLeast(value);
        double low = values[above - 1];
        double start = ratio(above - 1);
        return start + (ratio(above) - start) * (value - low) / (values[above] - low);
    }

    private int firstAtLeast(double value) {
        int below = -1;
        int reached = CELLS;
        while (reached - below > 1) {
            int middle = (below + reached) >>> 1;
            if (values[middle] >= value) {
                reached = middle;
            } else {
                below = middle;
            }
        }
        return reached;
    }
}
