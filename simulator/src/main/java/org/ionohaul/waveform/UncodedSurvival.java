package org.ionohaul.waveform;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * The logarithm of an uncoded bit's probability to survive, by Es/N0, tabulated for every modulation at first use and
 * then shared by all threads.
 *
 * <p>Bits survive independently of each other. With more than one bit a symbol, M-ary tones above all, one symbol error
 * spoils several bits at once and so counts more than once: the frame's survival comes out too low.
 */
final class UncodedSurvival {
    private static final Map<Modulation, RatioTable> TABLES = tables();

    private UncodedSurvival() {}

    /** Returns the table of a modulation: natural logarithm of one minus the bit error rate. */
    static RatioTable of(Modulation modulation) {
        RatioTable table = TABLES.get(modulation);
        if (table == null) {
            throw new IllegalArgumentException("no table for " + modulation);
        }
        return table;
    }

    private static Map<Modulation, RatioTable> tables() {
        Map<Modulation, RatioTable> tables = new EnumMap<>(Modulation.class);
        for (Modulation modulation : Modulation.values()) {
            tables.put(modulation, RatioTable.ofRising(survival(modulation, 0), esN0 -> survival(modulation, esN0)));
        }
        return Collections.unmodifiableMap(tables);
    }

    private static double survival(Modulation modulation, double esN0) {
        return Math.log1p(-BitErrorRate.of(modulation, esN0));
    }
}
