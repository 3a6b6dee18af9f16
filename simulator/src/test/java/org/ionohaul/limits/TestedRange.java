package org.ionohaul.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.function.DoubleFunction;
import java.util.function.LongFunction;
import java.util.function.Supplier;

/** Holds a record to the range of one of its components: both ends are taken, the next number beyond either is refused. */
public final class TestedRange {
    private TestedRange() {}

    /**
     * Checks the range of a number; "above 0" is from {@link Double#MIN_VALUE} on, "finite" up to {@link Double#MAX_VALUE},
     * and where there is no end it is infinite.
     *
     * @param component what the refusal must name
     * @param rule makes the record with a value of that component
     */
    public static void ofNumber(String component, double least, double most, DoubleFunction<?> rule) {
        assertNotNull(rule.apply(least));
        assertNotNull(rule.apply(most));
        refused(component, () -> rule.apply(Double.NaN));
        if (!Double.isInfinite(least)) {
            refused(component, () -> rule.apply(Math.nextDown(least)));
        }
        if (!Double.isInfinite(most)) {
            refused(component, () -> rule.apply(Math.nextUp(most)));
        }
    }

    /** Checks the range of a whole number; without end where it is {@link Long#MAX_VALUE} or {@link Integer#MAX_VALUE}. */
    public static void ofCount(String component, long least, long most, LongFunction<?> rule) {
        assertNotNull(rule.apply(least));
        assertNotNull(rule.apply(most));
        refused(component, () -> rule.apply(least - 1));
        if (most != Long.MAX_VALUE && most != Integer.MAX_VALUE) {
            refused(component, () -> rule.apply(most + 1));
        }
    }

    private static void refused(String component, Supplier<?> rule) {
        assertEquals(component, assertThrows(OutOfRange.class, rule::get).component());
    }
}
