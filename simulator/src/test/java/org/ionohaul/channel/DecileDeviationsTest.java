package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.stream.IntStream;
import org.ionohaul.limits.OutOfRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class DecileDeviationsTest {
    /** Decile deviations from day to day of ITU-R P.842, from memory. */
    @ParameterizedTest
    @CsvSource({
        "MID_LATITUDE, 6, 8",
        "MID_LATITUDE_NEAR_MUF, 8, 12",
        "HIGH_LATITUDE, 9, 11",
        "HIGH_LATITUDE_NEAR_MUF, 11, 16"
    })
    void theDecilesComeOutAsTabulated(DayToDay preset, double upperDb, double lowerDb) {
        assertEquals(upperDb, preset.deviations().overMedianDb(0.9), 1e-9);
        assertEquals(-lowerDb, preset.deviations().overMedianDb(0.1), 1e-9);
        assertEquals(0, preset.deviations().overMedianDb(0.5), 1e-9);
    }

    /** Half a normal on each side: mean (u - l) / (1.2816 sqrt(2 pi)) and mean square (u^2 + l^2) / (2 x 1.2816^2). */
    @Test
    void eachHalfIsNormal() {
        DecileDeviations deviations = new DecileDeviations(6, 8);
        int steps = 200_000;
        double[] even = IntStream.range(0, steps)
                .mapToDouble(i -> deviations.overMedianDb((i + 0.5) / steps))
                .toArray();
        double z = 1.2815515655446004;
        double mean = IntStream.range(0, steps).mapToDouble(i -> even[i]).sum() / steps;
        double square =
                IntStream.range(0, steps).mapToDouble(i -> even[i] * even[i]).sum() / steps;
        assertEquals((6 - 8) / (z * Math.sqrt(2 * Math.PI)), mean, 1e-3);
        assertEquals((36 + 64) / (2 * z * z), square, 1e-2);
    }

    @Test
    void valuesOutOfRangeAreRefused() {
        assertThrows(OutOfRange.class, () -> new DecileDeviations(-1, 2));
        assertThrows(OutOfRange.class, () -> new DecileDeviations(1, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new DecileDeviations(1, 2).overMedianDb(1));
    }
}
