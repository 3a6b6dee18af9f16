package org.ionohaul.scenario;

import org.ionohaul.limits.OutOfRange;

/**
 * One file to send.
 *
 * @param name what people call it
 * @param bytes size as it goes on the air, after any compression, 1 or more
 */
public record PayloadFile(String name, long bytes) {
    /** Far above the rounding of a product, such as 1400 x 0.55 = 770.0000000000001, and far below a byte. */
    private static final double ROUNDING_BYTES = 1e-9;

    /** Checks the size. */
    public PayloadFile {
        OutOfRange.unless(bytes >= 1, "size", "must be at least 1 B", bytes);
    }

    /**
     * Returns a file that is compressed before it goes on the air.
     *
     * @param size bytes before compression, 1 or more
     * @param compression what compression leaves of it, above 0; above 1 if it makes the file larger; a begun
     *     byte counts
     */
    static PayloadFile compressed(String name, long size, double compression) {
        OutOfRange.unless(
                compression > 0 && compression <= 2, "compression", "must be above 0 and at most 2", compression);
        return new PayloadFile(name, (long) Math.ceil(size * compression - ROUNDING_BYTES));
    }
}
