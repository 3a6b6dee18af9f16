package org.ionohaul.onair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class RunOrderTest {
    private static String written(RunOrder order, int modes, int runsEach, long lot) {
        return order.evenings(modes, runsEach, Comparisons.lot(5, lot)).stream()
                .map(evening -> evening.stream().map(RunsWords::letter).collect(Collectors.joining()))
                .collect(Collectors.joining(" "));
    }

    @Test
    void ordersAreWhatTheirNamesSay() {
        assertEquals("AAABBB", written(RunOrder.IN_A_ROW, 2, 3, 0));
        assertEquals("ABABAB", written(RunOrder.TAKING_TURNS, 2, 3, 0));
        assertEquals("BABABA", written(RunOrder.TURNS_REVERSED, 2, 3, 0));
        assertEquals("ABBAAB", written(RunOrder.MIRRORED, 2, 3, 0));
        assertEquals("ABCCBA", written(RunOrder.MIRRORED, 3, 2, 0));
        assertEquals("A B A B", written(RunOrder.RUN_AN_EVENING, 2, 2, 0));
        assertTrue(List.of("AB AB", "AB BA", "BA AB", "BA BA").contains(written(RunOrder.ROUND_AN_EVENING, 2, 2, 0)));
    }

    @ParameterizedTest
    @EnumSource(RunOrder.class)
    void everyModeHasAsManyRuns(RunOrder order) {
        for (int modes = 2; modes <= 4; modes++) {
            String runs = written(order, modes, 7, 3).replace(" ", "");
            for (int mode = 0; mode < modes; mode++) {
                String letter = RunsWords.letter(mode);
                assertEquals(
                        7, runs.chars().filter(it -> it == letter.charAt(0)).count(), runs);
            }
        }
    }

    /** Of 1,000 first rounds half begin with either: within 4 standard errors of 15.8. */
    @Test
    void theLotIsFairAndLongerComparisonsBeginAsShorterOnes() {
        int first = 0;
        for (int lot = 0; lot < 1000; lot++) {
            String runs = written(RunOrder.BY_LOT, 2, 5, lot);
            assertTrue(runs.startsWith(written(RunOrder.BY_LOT, 2, 2, lot)));
            first += runs.startsWith("A") ? 1 : 0;
        }
        assertEquals(500, first, 64);
    }
}
