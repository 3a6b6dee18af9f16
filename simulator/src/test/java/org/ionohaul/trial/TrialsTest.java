package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Passband;
import org.ionohaul.channel.SinrMeter;
import org.ionohaul.channel.Sky;
import org.ionohaul.rate.RatePolicyRules;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.DataRateUse;
import org.ionohaul.session.Outcome;
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.SessionTrace;
import org.ionohaul.study.SizeTransfers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class TrialsTest {
    private static final Path RIVER_WATCH = Path.of("..", "scenarios", "river-watch.toml");

    @Test
    void aTrialDependsOnItsNumberAndNotOnWhatRanBefore() throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(RIVER_WATCH);
        Trials once = new Trials(scenario);
        List<String> forwards = new ArrayList<>();
        for (long trial = 0; trial < 5; trial++) {
            forwards.add(told(once.run(trial)));
        }
        Trials again = new Trials(scenario);
        List<String> backwards = new ArrayList<>();
        for (long trial = 4; trial >= 0; trial--) {
            backwards.add(told(again.run(trial)));
        }
        Collections.reverse(backwards);
        assertEquals(forwards, backwards);
        assertNotEquals(forwards.get(0), forwards.get(1));
    }

    @Test
    void aModesTrialIsTheSameWhateverOtherModesAreCompared() throws ScenarioProblems {
        Scenario all = ScenarioReader.read(RIVER_WATCH);
        Mode last = all.modes().get(all.modes().size() - 1);
        Scenario alone = ScenarioReader.read(RIVER_WATCH, Map.of("modes", "[\"" + last.name() + "\"]"));
        SessionResult among = new Trials(all).run(3).get(all.modes().size() - 1);
        assertEquals(told(List.of(among)), told(List.of(new Trials(alone).run(3).get(0))));
    }

    @Test
    void watchingATrialChangesNothing() throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(RIVER_WATCH);
        Trials trials = new Trials(scenario);
        var transfer = scenario.transfers().get(0);
        SessionResult watched = trials.run(
                transfer, transfer.directions().get(0), scenario.modes().get(1), 2, new SessionTrace() {});
        assertEquals(told(List.of(trials.run(2).get(1))), told(List.of(watched)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ax25-go-back-n",
                "ax25-selective-reject",
                "brisk-comb",
                "burst-high-rate",
                "burst-low-latency",
                "m625-arq",
                "patient-climber",
                "serial-tone-arq",
                "slow-whistle",
                "steady-wagon"
            })
    void sessionsWithFilesOfManySizesAreWhatEachIsAlone(String mode) throws ScenarioProblems {
        Scenario read = ScenarioReader.read(RIVER_WATCH, Map.of("modes", "[\"" + mode + "\"]"));
        Scenario scenario = SizeTransfers.in(read, 100_000, read.horizonSeconds());
        Trials trials = new Trials(scenario);
        for (long trial = 0; trial < 2; trial++) {
            Iterator<SessionResult> together = trials.run(trial).iterator();
            for (Transfer transfer : scenario.transfers()) {
                for (Direction direction : transfer.directions()) {
                    SessionResult alone =
                            trials.run(transfer, direction, scenario.modes().get(0), trial, SessionTrace.NONE);
                    assertEquals(told(List.of(alone)), told(List.of(together.next())), transfer.name());
                }
            }
        }
    }

    @Test
    void theSkyIsTheSameForAnyoneWhoAsks() throws ScenarioProblems {
        Trials trials = new Trials(ScenarioReader.read(RIVER_WATCH));
        Passband passband = new Passband(2000, 1);
        long atNanos = 300_000_000_000L;
        double late = new SinrMeter().mean(trials.skies().sky(7).reception(End.FAR, passband), atNanos, 0, 1);
        Sky sky = trials.skies().sky(7);
        SinrMeter meter = new SinrMeter();
        meter.listen(sky.reception(End.NEAR, passband), 0);
        assertEquals(late, meter.mean(sky.reception(End.FAR, passband), atNanos, 0, 1));
    }

    @Test
    void aStrongSteadyPathDeliversEverythingAndClosesWithEveryMode() throws ScenarioProblems {
        Map<String, String> strong = Map.of(
                "horizon", "3 h",
                "near.patience", "3 h",
                "near.snr", "60 dB",
                "far.snr", "60 dB",
                "sky.condition", "flat",
                "far.impulses.share", "0 %",
                "far.interference.1.visits", "0 /h");
        for (SessionResult result : new Trials(ScenarioReader.read(RIVER_WATCH, strong)).run(0)) {
            assertEquals(Outcome.CLOSED, result.outcome());
            assertEquals(0, result.linksLost());
        }
    }

    @Test
    void onlyALadderThatCanErrLosesAirtimeAtAWrongRate() throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(RIVER_WATCH);
        Mode climber = scenario.modes().get(1);
        Mode wagon = scenario.modes().get(3);
        assertEquals(0, wrongRateNanos(scenario, wagon), "one data rate is always the best there is");

        long lostNanos = wrongRateNanos(scenario, climber);
        long airtimeNanos = airtimeNanos(new Trials(scenario).run(4).get(1));
        assertTrue(lostNanos > 0 && lostNanos < airtimeNanos, lostNanos + " of " + airtimeNanos);

        Mode knowing = withRatePolicy(climber, new RatePolicyRules.Omniscient(1));
        assertEquals(0, wrongRateNanos(withOnly(scenario, knowing), knowing));
    }

    private static Mode withRatePolicy(Mode it, RatePolicyRules ratePolicy) {
        return new Mode(
                it.name(),
                it.title(),
                it.about(),
                it.emission(),
                it.dataRates(),
                it.acknowledgement(),
                it.call(),
                it.control(),
                it.arq(),
                ratePolicy,
                it.session(),
                it.processingSeconds());
    }

    private static Scenario withOnly(Scenario it, Mode mode) {
        return new Scenario(
                it.name(),
                it.title(),
                it.seed(),
                it.trials(),
                it.horizonSeconds(),
                it.distanceMetres(),
                it.transfers(),
                List.of(mode),
                it.near(),
                it.far(),
                it.sky());
    }

    private static long wrongRateNanos(Scenario scenario, Mode mode) {
        var transfer = scenario.transfers().get(0);
        return new Trials(scenario)
                .wrongRateNanos(transfer, transfer.directions().get(0), mode, 4);
    }

    private static long airtimeNanos(SessionResult result) {
        return result.dataRates().stream().mapToLong(DataRateUse::airtimeNanos).sum();
    }

    /** Everything that a result says, as text: the class of its curves knows no equality. */
    private static String told(List<SessionResult> results) {
        StringBuilder text = new StringBuilder();
        for (SessionResult it : results) {
            text.append(it.outcome()).append(it.endedNanos()).append(it.deliveredNanos());
            text.append(it.confirmedNanos()).append(it.closedNanos()).append(it.dataRates());
            for (int i = 0; i < it.progress().size(); i++) {
                text.append(' ')
                        .append(it.progress().atNanos(i))
                        .append(it.progress().heldBytes(i));
            }
        }
        return text.toString();
    }
}
