package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.ionohaul.channel.Schedule.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ScheduleTest {
    private static final Schedule DUSK =
            new Schedule(List.of(new Point(-60, 2), new Point(0, 4), new Point(600, -6), new Point(600.5, 6)));

    @ParameterizedTest
    @CsvSource({"-1000, 2", "-60, 2", "-30, 3", "0, 4", "300, -1", "600, -6", "600.25, 0", "600.5, 6", "9999, 6"})
    void levelsAreJoinedByStraightLinesAndHeldBeforeAndAfter(double atSeconds, double levelDb) {
        assertEquals(levelDb, DUSK.levelDb(atSeconds), 1e-12);
    }

    @Test
    void noPointsMeanNoChange() {
        assertEquals(0, Schedule.NONE.levelDb(1234));
    }

    @Test
    void timeThatGoesBackwardsOrStandsStillIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Schedule(List.of(new Point(1, 0), new Point(0, 0))));
        assertThrows(IllegalArgumentException.class, () -> new Schedule(List.of(new Point(1, 0), new Point(1, 3))));
        assertThrows(IllegalArgumentException.class, () -> new Point(Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> new Point(0, Double.POSITIVE_INFINITY));
    }
}
