package org.ionohaul.limits;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.function.DoubleFunction;

/**
 * Values that are allowed.
 *
 * @param component name of the quantity
 * @param interval as mathematics writes it: [ and ] where the end belongs to it, ( and ) where it does not
 * @param make makes something of a value
 */
public record Limits(String component, String interval, DoubleFunction<?> make) {
    /** Asserts that values are refused, by their name, from exactly these limits on. */
    public void hold() {
        double from = Double.parseDouble(interval.substring(1, interval.indexOf(',')));
        double to = Double.parseDouble(interval.substring(interval.indexOf(',') + 1, interval.length() - 1));
        boolean withFrom = interval.startsWith("[");
        boolean withTo = interval.endsWith("]");
        accepted(withFrom ? from : Math.nextUp(from));
        accepted(withTo ? to : Math.nextDown(to));
        refused(withFrom ? Math.nextDown(from) : from);
        refused(withTo ? Math.nextUp(to) : to);
        refused(Double.NaN);
    }

    private void accepted(double value) {
        assertDoesNotThrow(() -> make.apply(value), () -> this + " allows " + value);
    }

    private void refused(double value) {
        OutOfRange refusal =
                assertThrows(OutOfRange.class, () -> make.apply(value), () -> this + " does not allow " + value);
        assertEquals(component, refusal.component());
    }

    @Override
    public String toString() {
        return component + " in " + interval;
    }
}
