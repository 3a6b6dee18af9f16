package org.ionohaul.scenario;

/** Quantities with units as people write them in scenario files, for wherever else they are written. */
public final class Quantity {
    private Quantity() {}

    /**
     * Returns a time such as {@code 20 min}, in seconds.
     *
     * @throws IllegalArgumentException if the text is no time, with advice
     */
    public static double seconds(String text) {
        return read(Dimension.TIME, text);
    }

    /**
     * Returns a size such as {@code 64 kB}, in bytes.
     *
     * @throws IllegalArgumentException if the text is no size, with advice
     */
    public static long bytes(String text) {
        return Math.round(read(Dimension.SIZE, text));
    }

    /**
     * Returns a distance such as {@code 70 km}, in metres.
     *
     * @throws IllegalArgumentException if the text is no distance, with advice
     */
    public static double metres(String text) {
        return read(Dimension.DISTANCE, text);
    }

    private static double read(Dimension dimension, String text) {
        try {
            return dimension.read(text);
        } catch (WrongValue e) {
            throw new IllegalArgumentException(e.message() + "; " + e.remedy(), e);
        }
    }
}
