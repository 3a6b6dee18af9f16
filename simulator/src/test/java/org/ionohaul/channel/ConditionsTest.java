package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What follows by hand from the numbers that describe a sky. */
final class ConditionsTest {
    private static final Interference OTHERS = new Interference(6, 300, 20, 30, 10, 3, 0.5);

    /** Half an hour of visits an hour; each has one over, and one more every 50 s of its 300. */
    @Test
    void othersAreCounted() {
        assertEquals(0.5, OTHERS.meanPresent(), 1e-12);
        assertEquals(42, OTHERS.oversPerHour(), 1e-12);
    }

    @Test
    void othersAreHeardMoreStrongly() {
        assertEquals(new Interference(6, 300, 20, 30, 17, 3, 0.5), OTHERS.raised(7));
    }

    /** A tenth of the time 20 dB up: a tenth of a hundred, and nine tenths. */
    @Test
    void spellsChangeTheMeanPower() {
        assertEquals(10.9, new Spells(45, 5, 20).meanRatio(), 1e-12);
        assertEquals(0.901, new Spells(45, 5, -20).meanRatio(), 1e-12);
        assertEquals(1, Spells.NONE.meanRatio());
    }

    @Test
    void aReceiverRecovers() {
        GainControl control = new GainControl(0.01, 0.2, 50);
        assertEquals(1, control.memorySeconds(), 1e-12);
        assertEquals(1, control.left(0));
        assertEquals(0.1, control.left(0.1), 1e-12);
        assertTrue(control.isLimited());
        assertFalse(GainControl.NONE.isLimited());
    }

    @ParameterizedTest
    @CsvSource({
        "-73, S9",
        "-72.6, S9",
        "-72.4, S9+1",
        "-63, S9+10",
        "-79, S8",
        "-121, S1",
        "-125, below S1",
        "-75.9, S9"
    })
    void aMeterShowsALevel(double dbm, String shown) {
        assertEquals(shown, MeterReading.nearest(dbm));
    }

    @Test
    void whatAMeterShowsIsReadBack() {
        assertEquals(Optional.of(-85.0), MeterReading.parse("s7").map(MeterReading::dbm));
        assertEquals(Optional.of(-53.0), MeterReading.parse("S9+20 dB").map(MeterReading::dbm));
        assertEquals(Optional.empty(), MeterReading.parse("S10"));
    }

    @Test
    void theOtherOfTwoEnds() {
        assertEquals(End.FAR, End.NEAR.other());
        assertEquals(End.NEAR, End.FAR.other());
    }

    @Test
    void presetsHaveTheirNamesInScenarios() {
        assertEquals("quiet-rural", NoiseEnvironment.QUIET_RURAL.key());
        assertEquals("busy-evening", Congestion.BUSY_EVENING.key());
        assertEquals("mid-latitude-near-muf", DayToDay.MID_LATITUDE_NEAR_MUF.key());
        assertEquals("mid-latitude-disturbed-nvis", FadingCondition.MID_LATITUDE_DISTURBED_NVIS.key());
        assertTrue(Stream.of(FadingCondition.values())
                .allMatch(it -> it == FadingCondition.FLAT || it.source().startsWith("ITU-R F.")));
    }
}
