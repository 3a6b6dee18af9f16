package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class MomentTest {
    private static final double SIX_IN_THE_EVENING = 18 * 3600;

    @ParameterizedTest
    @CsvSource({"18:05, 65100", "7:00, 25200", "00:00, 0", "23:59:30, 86370"})
    void timesOfDayAreSecondsSinceMidnight(String text, double seconds) throws WrongValue {
        assertEquals(seconds, Moment.clock().read(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"24:00", "18:60", "18.05", "18", "6 pm", "18:05:60"})
    void whatNoClockShowsIsRefused(String text) {
        assertThrows(WrongValue.class, () -> Moment.clock().read(text));
    }

    @ParameterizedTest
    @CsvSource({"18:20, 0, 1200", "17:50, 0, -600", "20 min, 0, 1200", "00:10, 21000, 22200", "23:50, 0, 21000"})
    void aMomentIsTheNearestOneToTheMomentBefore(String text, double earlierSeconds, double afterSendSeconds)
            throws WrongValue {
        assertEquals(
                afterSendSeconds, Moment.kind().read(text).middleAfterSend(SIX_IN_THE_EVENING, earlierSeconds), 1e-6);
    }

    @Test
    void aMomentMayBeUncertain() throws WrongValue {
        Moment moment = Moment.kind().read("18:20 ± 5 min");
        assertEquals(new Uncertain.Normal(18 * 3600 + 20 * 60, 300), moment.seconds());
        assertEquals(1200, moment.middleAfterSend(SIX_IN_THE_EVENING, 0), 1e-6);
        assertEquals(60, moment.offset(18 * 3600 + 21 * 60), 1e-6);
    }
}
