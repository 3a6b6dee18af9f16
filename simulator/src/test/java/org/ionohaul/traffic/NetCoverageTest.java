package org.ionohaul.traffic;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.net.Arrivals;
import org.ionohaul.net.MessageKind;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.trial.NetTrial;
import org.junit.jupiter.api.Test;

/**
 * How often the ranges that are told of a net hold the truth, whole studies repeated with made-up trials: each trial's messages take
 * exponential times about a mean that the trial draws, 2 or 10 minutes, so that messages of a trial share its luck; they are written
 * through an hour and a half, of which the first half hour does not count, and some are still waiting at the end.
 *
 * <p>Of 400 studies, ranges of 95 % may miss the truth in 20 give or take four standard errors of 4.4; they may be too wide by less
 * than that as well.
 */
final class NetCoverageTest {
    private static final int STUDIES = 400;
    private static final int TRIALS = 100;
    private static final int MESSAGES = 12;
    private static final double END_SECONDS = 5400;
    private static final double WARM_UP_SECONDS = 1800;
    private static final double DEADLINE_SECONDS = 600;
    private static final double MOST_MISSED = 20 + 4 * 4.4;
    private static final MessageKind KIND =
            new MessageKind("made up", false, 1, it -> 100, new Arrivals.Poisson(1), List.of(DEADLINE_SECONDS));

    @Test
    void rangesOfDeadlinesAndTimesHoldTheTruth() {
        double half = trueQuantile(0.5);
        double nineOfTen = trueQuantile(0.9);
        int deadlineMissed = 0;
        int halfMissed = 0;
        int nineMissed = 0;
        for (int study = 0; study < STUDIES; study++) {
            MessageTimes times = new MessageTimes(trials(study), WARM_UP_SECONDS, END_SECONDS);
            deadlineMissed += holds(times.within(DEADLINE_SECONDS).within(0, 1), share(DEADLINE_SECONDS), 0) ? 0 : 1;
            halfMissed += holds(times.quantile(0.5), half, 5) ? 0 : 1;
            nineMissed += holds(times.quantile(0.9), nineOfTen, 5) ? 0 : 1;
        }
        String counted = deadlineMissed + ", " + halfMissed + ", " + nineMissed;
        assertTrue(deadlineMissed <= MOST_MISSED && halfMissed <= MOST_MISSED && nineMissed <= MOST_MISSED, counted);
        assertTrue(deadlineMissed >= 3 && halfMissed + nineMissed >= 3, "too wide: " + counted);
    }

    /** Ends lie on a grid of some seconds. */
    private static boolean holds(Estimate range, double truth, double gridSeconds) {
        return range.low() - gridSeconds <= truth && truth <= range.high() + gridSeconds;
    }

    private static double share(double seconds) {
        return 1 - (Math.exp(-seconds / 120) + Math.exp(-seconds / 600)) / 2;
    }

    private static double trueQuantile(double share) {
        double low = 0;
        double high = END_SECONDS;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (share(middle) < share) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static List<List<NetTrial.Message>> trials(int study) {
        List<List<NetTrial.Message>> trials = new ArrayList<>();
        for (int trial = 0; trial < TRIALS; trial++) {
            UniformRandomProvider chance = new TrialStreams(77, trial).open(Purpose.MESSAGE_TIMES, study);
            double meanSeconds = chance.nextBoolean() ? 120 : 600;
            List<NetTrial.Message> messages = new ArrayList<>();
            for (int i = 0; i < MESSAGES; i++) {
                double written = chance.nextDouble() * END_SECONDS;
                double through = written - meanSeconds * Math.log1p(-chance.nextDouble());
                messages.add(new NetTrial.Message(
                        KIND,
                        1,
                        100,
                        Math.round(1e9 * written),
                        Math.round(1e9 * written),
                        through <= END_SECONDS ? Math.round(1e9 * through) : NetTrial.NEVER,
                        NetTrial.NEVER,
                        1));
            }
            trials.add(messages);
        }
        return trials;
    }

    /**
     * Two values of a key that are alike: one may be called best in 5 of 100 studies at most (two intervals of 95 % that must lie
     * clear of each other are stricter than that); of 150 in 7.5 give or take four standard errors of 2.7.
     */
    @Test
    void ofTwoAlikeNoneIsCalledBest() throws ScenarioProblems {
        NetScenario scenario = new ValleyNet(Map.of(), 1).scenario();
        MessageKind first = scenario.groups().get(0).kinds().get(0);
        int named = 0;
        for (int study = 0; study < 150; study++) {
            named += sentence(scenario, first, study, study + STUDIES).contains("is best") ? 1 : 0;
        }
        assertTrue(named <= 7.5 + 4 * 2.7, "named " + named);
    }

    @Test
    void theOneThatIsFarBetterIsCalledBest() throws ScenarioProblems {
        NetScenario scenario = new ValleyNet(Map.of(), 1).scenario();
        MessageKind first = scenario.groups().get(0).kinds().get(0);
        List<NetPoint> points = List.of(
                new NetPoint("slow", findings(scenario, first, 1, 3)),
                new NetPoint("fast", findings(scenario, first, 2, 1)));
        String sentence = new Ranking(points).sentences().get(0);
        assertTrue(sentence.startsWith("first report in 15 min: fast is best, "), sentence);
        assertTrue(sentence.contains("; then slow "), sentence);
    }

    private static String sentence(NetScenario scenario, MessageKind kind, int one, int other) {
        return new Ranking(List.of(
                        new NetPoint("one", findings(scenario, kind, one, 1)),
                        new NetPoint("other", findings(scenario, kind, other, 1))))
                .sentences()
                .get(0);
    }

    /** Made-up trials whose messages are of one kind of a net; each takes so many times as long. */
    private static NetFindings findings(NetScenario scenario, MessageKind kind, int study, int slower) {
        List<NetTrial> trials = trials(study).stream()
                .map(it -> new NetTrial(
                        it.stream().map(each -> slowed(each, kind, slower)).toList(), 0, 0, 0, 0, 0, 0, List.of()))
                .toList();
        return NetFindings.of(scenario, trials);
    }

    private static NetTrial.Message slowed(NetTrial.Message message, MessageKind kind, int slower) {
        long through = message.writtenNanos() + slower * (message.deliveredNanos() - message.writtenNanos());
        boolean isThrough = message.isDelivered() && through <= 1e9 * END_SECONDS;
        return new NetTrial.Message(
                kind,
                1,
                100,
                message.writtenNanos(),
                message.begunNanos(),
                isThrough ? through : NetTrial.NEVER,
                NetTrial.NEVER,
                1);
    }
}
