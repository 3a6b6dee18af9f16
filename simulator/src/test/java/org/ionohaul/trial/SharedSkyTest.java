package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.SessionResult;
import org.junit.jupiter.api.Test;

final class SharedSkyTest {
    private static final Path RIVER_WATCH = Path.of("../scenarios/river-watch.toml");
    private static final long MINUTE = 60_000_000_000L;

    private static String told(SessionResult it) {
        return it.outcome() + " " + it.ending() + " " + it.endedNanos() + it.deliveredNanos() + it.confirmedNanos()
                + it.closedNanos() + it.filesDeliveredNanos() + it.dataRates() + it.linksLost() + it.oversSent();
    }

    /** All four modes, both transfers, both ways. */
    @Test
    void aSessionBegunWithTheTrialIsThatOfTheStudyWhateverRanBefore() throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(RIVER_WATCH);
        Trials trials = new Trials(scenario);
        List<SessionResult> alone = trials.run(3);
        SharedSky sky = trials.sharedSky(3);
        int column = 0;
        for (Transfer transfer : scenario.transfers()) {
            for (Direction direction : transfer.directions()) {
                for (Mode mode : scenario.modes()) {
                    sky.run(mode, 1, transfer, direction, 20 * MINUTE);
                    assertEquals(told(alone.get(column++)), told(sky.run(mode, 0, transfer, direction, 0)));
                }
            }
        }
        assertEquals(16, column);
    }

    @Test
    void aRepeatHasChancesOfItsOwnAndALaterStartMeetsALaterSky() throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(RIVER_WATCH);
        Transfer photo = scenario.transfers().get(0);
        Mode mode = scenario.modes().get(0);
        SharedSky sky = new Trials(scenario).sharedSky(5);
        String first = told(sky.run(mode, 0, photo, Direction.UPLOAD, 0));
        assertNotEquals(first, told(sky.run(mode, 1, photo, Direction.UPLOAD, 0)));
        assertNotEquals(first, told(sky.run(mode, 0, photo, Direction.UPLOAD, MINUTE)));
    }

    /**
     * A steady sky that falls by 30 dB half an hour after the trial began, so that a session begun after it meets what a
     * scenario whose whole sky is 30 dB weaker meets: the same to the nanosecond, for the same repeat has the same chances.
     */
    @Test
    void aSessionMeetsTheTrendOfItsOwnHour() throws ScenarioProblems {
        Map<String, String> steady = new TreeMap<>(Map.of(
                "clock", "18:00",
                "near.snr", "40 dB",
                "far.snr", "40 dB",
                "sky.condition", "flat",
                "sky.slow-variation.deviation", "0 dB",
                "far.impulses.share", "0 %",
                "far.interference.1.visits", "0 /h"));
        steady.put("far.noise-schedule.2.rise", "0 dB");
        steady.put("sky.trend.1.at", "18:29");
        steady.put("sky.trend.2.at", "18:30");
        Map<String, String> weak = new TreeMap<>(steady);
        steady.put("sky.trend.2.rise", "-30 dB");
        weak.put("near.snr", "10 dB");
        weak.put("far.snr", "10 dB");
        weak.put("sky.trend.2.rise", "0 dB");
        Scenario falling = ScenarioReader.read(RIVER_WATCH, steady);
        Scenario fallen = ScenarioReader.read(RIVER_WATCH, weak);
        Transfer roster = falling.transfers().get(1);
        int differing = 0;
        for (int i = 0; i < falling.modes().size(); i++) {
            SharedSky sky = new Trials(falling).sharedSky(0);
            String early = told(sky.run(falling.modes().get(i), 0, roster, Direction.UPLOAD, 0));
            String late = told(sky.run(falling.modes().get(i), 0, roster, Direction.UPLOAD, 31 * MINUTE));
            assertEquals(
                    told(new Trials(fallen).sharedSky(0).run(fallen.modes().get(i), 0, roster, Direction.UPLOAD, 0)),
                    late);
            differing += early.equals(late) ? 0 : 1;
        }
        assertTrue(differing > 0, "no mode cares for 30 dB: the test sees nothing");
    }

    /** 3 Hz a minute are 93 Hz after 31 minutes: what a scenario meets whose stations are 93 Hz apart to begin with. */
    @Test
    void aSessionMeetsTheDriftOfItsOwnHour() throws ScenarioProblems {
        Map<String, String> flat = new TreeMap<>(Map.of(
                "sky.condition", "flat",
                "sky.slow-variation.deviation", "0 dB",
                "far.impulses.share", "0 %",
                "far.interference.1.visits", "0 /h",
                "far.noise-schedule.2.rise", "0 dB",
                "sky.trend.2.rise", "0 dB",
                "near.tuning.drift", "3 Hz/min"));
        flat.put("near.tuning.offset", "0 Hz");
        Scenario drifting = ScenarioReader.read(RIVER_WATCH, flat);
        flat.put("near.tuning.offset", "93 Hz");
        Scenario apart = ScenarioReader.read(RIVER_WATCH, flat);
        Transfer roster = drifting.transfers().get(1);
        int differing = 0;
        for (int i = 0; i < drifting.modes().size(); i++) {
            SharedSky sky = new Trials(drifting).sharedSky(0);
            String early = told(sky.run(drifting.modes().get(i), 0, roster, Direction.UPLOAD, 0));
            String late = told(sky.run(drifting.modes().get(i), 0, roster, Direction.UPLOAD, 31 * MINUTE));
            assertEquals(
                    told(new Trials(apart).sharedSky(0).run(apart.modes().get(i), 0, roster, Direction.UPLOAD, 0)),
                    late);
            differing += early.equals(late) ? 0 : 1;
        }
        assertTrue(differing > 0, "no mode cares for 93 Hz: the test sees nothing");
    }

    @Test
    void conditionsMayComeFromElsewhere() throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(Path.of("../scenarios/unknown-evening.toml"));
        Trials trials = new Trials(scenario);
        Transfer photo = scenario.transfers().get(0);
        Mode mode = scenario.modes().get(0);
        assertEquals(
                told(trials.sharedSky(2).run(mode, 0, photo, Direction.UPLOAD, 0)),
                told(trials.sharedSky(2, UncertainDraws.of(scenario.seed(), 2))
                        .run(mode, 0, photo, Direction.UPLOAD, 0)));
        List<Double> ended = IntStream.of(1, 4, 7)
                .mapToObj(it -> trials.sharedSky(2, UncertainDraws.of(scenario.seed(), it))
                                .run(mode, 0, photo, Direction.UPLOAD, 0)
                                .endedNanos()
                        / 1e9)
                .distinct()
                .toList();
        assertEquals(3, ended.size(), ended::toString);
    }
}
