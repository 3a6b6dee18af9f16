package org.ionohaul.traffic;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.net.Arrivals;
import org.ionohaul.net.MessageKind;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
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
}
