package org.ionohaul.rendering;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Words for amounts of data: kB and MB are thousands and millions of bytes. */
public final class SizeText {
    private static final long KILO = 1000;
    private static final long MEGA = 1000 * KILO;

    private SizeText() {}

    /**
     * Returns a size with at most three figures, such as {@code 812 bytes}, {@code 64 kB} or {@code 1.25 MB}.
     *
     * @param bytes zero or more
     */
    public static String size(long bytes) {
        if (bytes < 0) {
            throw new IllegalArgumentException("bytes must not be negative: " + bytes);
        }
        if (bytes < KILO) {
            return bytes == 1 ? "1 byte" : bytes + " bytes";
        }
        return bytes < MEGA ? scaled(bytes, KILO) + " kB" : scaled(bytes, MEGA) + " MB";
    }

    /**
     * Returns a size with two figures, for one that is not known better.
     *
     * @param bytes 1 or more
     */
    public static String about(double bytes) {
        return size(new BigDecimal(bytes)
                .round(new MathContext(2))
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact());
    }

    /**
     * Returns a number with a comma between thousands, such as {@code 6,900}.
     *
     * @param number finite
     */
    public static String grouped(double number) {
        return String.format(Locale.ROOT, "%,.0f", number);
    }

    private static String scaled(long bytes, long unit) {
        double value = (double) bytes / unit;
        String text = String.format(Locale.ROOT, value < 10 ? "%.2f" : value < 100 ? "%.1f" : "%.0f", value);
        return text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
    }
}
