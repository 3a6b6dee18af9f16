package org.ionohaul.waveform;

/**
 * Exponential and natural logarithm from small tables and short series, right to one part in 10^11, for the innermost loop of
 * a trial: {@link Math}'s are right to the last bit, and calls that the compiler can't see through.
 */
final class Exponentials {
    private static final int TABLE_BITS = 7;
    private static final int TABLE = 1 << TABLE_BITS;
    private static final double LN2 = Math.log(2);
    private static final double PER_STEP = TABLE / LN2;
    private static final double STEP = LN2 / TABLE;
    /** Beyond it, results are no longer numbers of full precision. */
    private static final double LARGEST = 700;
    /** Added and taken away again, it leaves a number rounded to the nearest whole one. */
    private static final double ROUNDS = 0x1.8p52;

    private static final int MANTISSA_BITS = 52;
    private static final long MANTISSA = (1L << MANTISSA_BITS) - 1;
    private static final long ONE = Double.doubleToRawLongBits(1.0);
    private static final double[] POWERS = new double[TABLE];
    private static final double[] INVERSES = new double[TABLE];
    private static final double[] LOGARITHMS = new double[TABLE];

    static {
        for (int i = 0; i < TABLE; i++) {
            POWERS[i] = Math.pow(2, (double) i / TABLE);
            double middle = 1 + (i + 0.5) / TABLE;
            INVERSES[i] = 1 / middle;
            LOGARITHMS[i] = Math.log(middle);
        }
    }

    private Exponentials() {}

    /** Returns e to a power, which counts as 700 or -700 beyond those. */
    static double exp(double power) {
        double within = power < -LARGEST ? -LARGEST : power > LARGEST ? LARGEST : power;
        double steps = within * PER_STEP + ROUNDS - ROUNDS;
        int whole = (int) steps;
        double rest = within - steps * STEP;
        double series = 1 + rest * (1 + rest * (0.5 + rest * (1.0 / 6 + rest * (1.0 / 24))));
        double scale = Double.longBitsToDouble(ONE + ((long) (whole >> TABLE_BITS) << MANTISSA_BITS));
        return scale * POWERS[whole & TABLE - 1] * series;
    }

    /** Returns the natural logarithm of a positive number of full precision. */
    static double log(double number) {
        long bits = Double.doubleToRawLongBits(number);
        long exponent = (bits - ONE) >> MANTISSA_BITS;
        double mantissa = Double.longBitsToDouble(ONE | (bits & MANTISSA));
        int cell = (int) ((bits & MANTISSA) >>> (MANTISSA_BITS - TABLE_BITS));
        double rest = mantissa * INVERSES[cell] - 1;
        double series = rest * (1 + rest * (-0.5 + rest * (1.0 / 3 + rest * (-0.25 + rest * 0.2))));
        return exponent * LN2 + (LOGARITHMS[cell] + series);
    }
}
