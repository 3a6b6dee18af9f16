package org.ionohaul.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.ionohaul.channel.End;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.Understood;
import org.ionohaul.scenario.Warning;
import org.ionohaul.session.Outcome;
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.SessionTrace;
import org.ionohaul.trial.SteadyPath;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.Test;

/**
 * Direct printing leaves every 450 ms: a block of 210 ms, 45 ms until the other's receiver is ready for the control signal
 * (hang 10, relays 15, recovery 20), 70 ms of it, and 15 ms for one's own relays leave 110 ms for both ways. Light goes
 * 16,488.6 km in 55 ms.
 */
final class RhythmWarningsTest {
    private static final double JUST_NEAR_ENOUGH_KM = 16_488;
    private static final double JUST_TOO_FAR_KM = 16_489;

    private static Understood directPrinting(double kilometres) throws IOException, ScenarioProblems {
        return SteadyPath.read("m625-arq", 40, 60, kilometres);
    }

    @Test
    void aPathJustTooLongForTheRhythmIsWarnedOf() throws IOException, ScenarioProblems {
        assertEquals(List.of(), RhythmWarnings.of(directPrinting(JUST_NEAR_ENOUGH_KM)));
        List<Warning> warnings = RhythmWarnings.of(directPrinting(JUST_TOO_FAR_KM));
        assertEquals(1, warnings.size());
        assertEquals(
                "steady.toml:3:1: distance: 16,489 km is too far for mode m625-arq, whose overs leave every 450 ms:"
                        + " acknowledgements come too late for that\n"
                        + "    with these stations it works up to 16,488 km",
                warnings.get(0).text());
    }

    /**
     * What the warning says is what happens: on a path without losses each over is acknowledged in time, or none is. Another
     * 15 ms later acknowledgements meet the next over and none is heard: each block costs the 32 silences to a lost link.
     */
    @Test
    void theWarningHoldsInASession() throws IOException, ScenarioProblems {
        Silences near = new Silences();
        SessionResult kept = run(directPrinting(JUST_NEAR_ENOUGH_KM), near);
        assertEquals(Outcome.CLOSED, kept.outcome());
        assertEquals(0, near.count);
        assertEquals(20, kept.oversSent());
        Silences far = new Silences();
        SessionResult late = run(directPrinting(JUST_TOO_FAR_KM), far);
        assertEquals(Outcome.CLOSED, late.outcome());
        assertEquals(20, far.count);
        Silences farther = new Silences();
        SessionResult missed = run(directPrinting(JUST_TOO_FAR_KM + 15e-3 / 2 * 299_792.458), farther);
        assertEquals(20, missed.linksLost());
        assertEquals(20, missed.oversSent());
        assertEquals(20 * 32, farther.count);
    }

    @Test
    void stationsTooSlowForTheRhythmAtAnyDistanceAreWarnedOf() throws IOException, ScenarioProblems {
        Understood slow = SteadyPath.read("m625-arq", 40, 60, 0, "90 ms");
        assertTrue(RhythmWarnings.of(slow)
                .get(0)
                .text()
                .contains("distance: hang, relay and recovery of the stations are too long for mode m625-arq"));
        Silences silences = new Silences();
        SessionResult result = run(slow, silences);
        assertTrue(silences.count >= result.oversSent() / 2 - 1, silences.count + " of " + result.oversSent());
    }

    private static SessionResult run(Understood understood, SessionTrace trace) {
        var scenario = understood.scenario();
        return new Trials(scenario)
                .run(
                        scenario.transfers().get(0),
                        Direction.UPLOAD,
                        scenario.modes().get(0),
                        0,
                        trace);
    }

    private static final class Silences implements SessionTrace {
        private int count;

        @Override
        public void onSilence(End at, long atNanos) {
            count += at == End.NEAR ? 1 : 0;
        }
    }
}
