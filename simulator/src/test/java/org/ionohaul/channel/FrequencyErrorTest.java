package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.ionohaul.limits.OutOfRange;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;

final class FrequencyErrorTest {
    private static final Passband CARRIER = new Passband(3000, 1);

    /** 30 Hz above and 10 below are 40 apart; the one climbs by 2 Hz a minute, the other falls by 1. */
    @Test
    void bothEndsHearHowFarTheStationsAreApart() {
        Sky sky = sky(new FrequencyError(30, 2), new FrequencyError(-10, -1));
        for (End end : End.values()) {
            assertEquals(40, sky.reception(end, CARRIER).frequencyErrorHz(0), 1e-9);
            assertEquals(70, sky.reception(end, CARRIER).frequencyErrorHz(600_000_000_000L), 1e-9);
        }
    }

    @Test
    void stationsThatAreOffAlikeHearEachOtherInTune() {
        Sky sky = sky(new FrequencyError(200, 5), new FrequencyError(200, 5));
        assertEquals(0, sky.reception(End.NEAR, CARRIER).frequencyErrorHz(77_000_000_000L), 1e-9);
    }

    @Test
    void valuesOutOfHandAreRefused() {
        assertThrows(OutOfRange.class, () -> new FrequencyError(10_001, 0));
        assertThrows(OutOfRange.class, () -> new FrequencyError(0, Double.NaN));
    }

    /** Whatever else a sky holds stays: a trial that begins later, or with another level at one end, is of the same sky. */
    @Test
    void aSkyThatBeginsLaterOrIsStrongerKeepsAllThatComesAndGoes() {
        SkyConditions sky = new SkyConditions(
                FadingCondition.FLAT.paths(),
                SlowVariation.NONE,
                Schedule.NONE,
                EndConditions.quiet(10),
                EndConditions.quiet(10),
                new Spells(300, 2, -30),
                new Spells(7200, 1200, 10),
                new FrequencyError(30, 2),
                new FrequencyError(0, -1),
                Optional.of(new GroundWave(0.001, -6)));
        SkyConditions later = sky.startingAfter(600);
        assertEquals(60, later.frequencyErrorHz(0), 1e-9);
        for (SkyConditions same : new SkyConditions[] {later, sky.withSnrAtStart(End.NEAR, 20)}) {
            assertEquals(sky.dropOuts(), same.dropOuts());
            assertEquals(sky.sporadicE(), same.sporadicE());
            assertEquals(sky.groundWave(), same.groundWave());
        }
        assertEquals(30, sky.withSnrAtStart(End.FAR, 20).frequencyErrorHz(0), 1e-9);
    }

    private static Sky sky(FrequencyError near, FrequencyError far) {
        return new Sky(
                new SkyConditions(
                        FadingCondition.FLAT.paths(),
                        SlowVariation.NONE,
                        Schedule.NONE,
                        EndConditions.quiet(10),
                        EndConditions.quiet(10),
                        Spells.NONE,
                        Spells.NONE,
                        near,
                        far,
                        Optional.empty()),
                new TrialStreams(1, 0));
    }
}
