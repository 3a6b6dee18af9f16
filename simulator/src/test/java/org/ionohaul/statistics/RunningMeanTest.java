package org.ionohaul.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A mean and what it is above. */
final class RunningMeanTest {
    /** 1 to 5: standard error sqrt(2.5 / 5), t(0.95, 4) = 2.1318 (a table value). */
    @Test
    void theBoundIsStudents() {
        RunningMean mean = new RunningMean();
        IntStream.rangeClosed(1, 5).forEach(mean::add);
        assertEquals(5, mean.count());
        assertEquals(3, mean.mean());
        assertEquals(3 - 2.1318 * Math.sqrt(0.5), mean.lowerBound(0.95), 1e-4);
    }
}
