package org.ionohaul.channel;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ionohaul.limits.OutOfRange;

/**
 * What a signal-strength meter shows below 30 MHz: S1 to S9, and decibels over S9. IARU Region 1 Recommendation R.1: S9
 * is -73 dBm at the receiver's input, an S-unit is 6 dB.
 *
 * @param unit from 1 to 9
 * @param overDb decibels over S9, zero or more; zero below S9
 */
public record MeterReading(int unit, double overDb) {
    private static final double S9_DBM = -73;
    private static final double UNIT_DB = 6;
    private static final Pattern WRITTEN = Pattern.compile("[Ss]([1-9])|[Ss]9 ?\\+ ?(\\d{1,2})(?: ?dB)?");

    /** Checks that a meter can show it. */
    public MeterReading {
        OutOfRange.unless(unit >= 1 && unit <= 9, "unit", "must be from 1 to 9", unit);
        OutOfRange.unless(overDb >= 0 && overDb < 100, "overDb", "must be from 0 to 99", overDb);
        OutOfRange.unless(unit == 9 || overDb == 0, "overDb", "must be 0 below S9", overDb);
    }

    /**
     * Returns the reading written as {@code S7} or {@code S9+10}, with a small s as well; decibels may be named
     * ({@code S9+10 dB}); empty if no meter shows such a thing.
     */
    public static Optional<MeterReading> parse(String written) {
        Matcher parts = WRITTEN.matcher(written);
        if (!parts.matches()) {
            return Optional.empty();
        }
        return Optional.of(
                parts.group(1) == null
                        ? new MeterReading(9, Integer.parseInt(parts.group(2)))
                        : new MeterReading(Integer.parseInt(parts.group(1)), 0));
    }

    /** Returns what a meter nearest shows of a level in dBm: whole S-units up to S9, then decibels over it. */
    public static String nearest(double dbm) {
        if (dbm >= S9_DBM + 0.5) {
            return "S9+" + Math.round(dbm - S9_DBM);
        }
        long unit = Math.round(9 + (dbm - S9_DBM) / UNIT_DB);
        return unit < 1 ? "below S1" : "S" + Math.min(9, unit);
    }

    /** Returns the power at the receiver's input, in dBm. */
    public double dbm() {
        return S9_DBM + UNIT_DB * (unit - 9) + overDb;
    }
}
