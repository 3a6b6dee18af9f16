package org.ionohaul.channel;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

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
    private static final Pattern WRITTEN = Pattern.compile("S(\\d{1,2})(?: ?\\+ ?(\\d{1,2})(?: ?dB)?)?");

    /** Checks that a meter can show it. */
    public MeterReading {
        if (unit < 1 || unit > 9) {
            throw new IllegalArgumentException("a meter shows S1 to S9, then S9+10 and so on: S" + unit);
        }
        if (!(overDb >= 0 && overDb < 100)) {
            throw new IllegalArgumentException("decibels over S9 must be from 0 to 99: " + overDb);
        }
        if (unit < 9 && overDb > 0) {
            throw new IllegalArgumentException("only S9 takes decibels over it: S" + unit + "+" + overDb);
        }
    }

    /**
     * Returns the reading written as {@code S7} or {@code S9+10}; decibels may be named ({@code S9+10 dB}).
     *
     * @throws IllegalArgumentException when no meter shows it, with what one can show
     */
    public static MeterReading parse(String written) {
        Matcher parts = WRITTEN.matcher(written);
        if (!parts.matches()) {
            throw new IllegalArgumentException("a meter reading is written S7 or S9+10: " + written);
        }
        String over = parts.group(2);
        return new MeterReading(Integer.parseInt(parts.group(1)), over == null ? 0 : Integer.parseInt(over));
    }

    /** Returns the power at the receiver's input, in dBm. */
    public double dbm() {
        return S9_DBM + UNIT_DB * (unit - 9) + overDb;
    }
}
