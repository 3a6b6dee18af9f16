package org.ionohaul.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

final class WordBreaksTest {
    @Test
    void numbersKeepTheirUnitsAndTimesStayInOnePiece() {
        assertEquals(
                List.of(
                        "through",
                        "11 min 20 s",
                        "sooner",
                        "(2.8 kB",
                        "to",
                        "35 %),",
                        "at",
                        "-3 dB;",
                        "0.5 /h",
                        "of",
                        "1 h 5 min"),
                WordBreaks.parts("through 11 min 20 s sooner (2.8 kB to 35 %), at -3 dB; 0.5 /h of 1 h 5 min"));
    }

    @Test
    void whatIsNoUnitMayStandOnTheNextLine() {
        assertEquals(
                List.of("12", "minutes", "of", "100", "trials,", "level", "3", "steps", "min", "4 s"),
                WordBreaks.parts("12 minutes of 100 trials, level 3 steps min 4 s"));
    }

    @Test
    void pagesGetBlanksThatHold() {
        assertEquals("at least 98\u00a0% by 2\u00a0min\u00a030\u00a0s", WordBreaks.held("at least 98 % by 2 min 30 s"));
    }
}
