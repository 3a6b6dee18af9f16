package org.ionohaul.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.ionohaul.fieldlog.EndReadings;
import org.ionohaul.fieldlog.LoggedOutcome;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.fieldlog.NotedTime;
import org.ionohaul.fieldlog.Rounding;
import org.ionohaul.placing.SimulatedRun;
import org.ionohaul.scenario.Direction;

/**
 * Logs of sessions that take as long as a formula says, so that learning from them can be repeated often. Run 0, 2, 4 ... hang on
 * unknown 0, the others on unknown 1; unknown 2 on nothing.
 */
final class InventedLog {
    static final int UNKNOWNS = 3;
    private static final long SENT_BYTES = 40_000;

    /**
     * How sessions go.
     *
     * @param isStraight whether the logarithm of the time is straight in the unknown and no run fails: then everything is normal
     */
    record Kind(boolean isStraight, double stepSeconds, double patienceSeconds) {
        SimulatedRun session(double score, UniformRandomProvider random) {
            double chance = ZigguratSampler.NormalizedGaussian.of(random).sample();
            // About 10 minutes; bent: much longer on the bad side, where scatter and failures grow as well.
            double log = isStraight
                    ? 0.4 * score + 0.3 * chance
                    : 0.5 * Math.exp(0.7 * score) - 0.5 + (0.15 + 0.1 * Math.exp(0.4 * score)) * chance;
            double through = 600 * Math.exp(log);
            boolean isFailing = !isStraight && random.nextDouble() < 0.3 / (1 + Math.exp(2 - 2 * score));
            double until = Math.min(isFailing ? through / 2 : through, patienceSeconds);
            long bytes = Math.min(SENT_BYTES - 1, (long) (SENT_BYTES * until / through));
            return new SimulatedRun(isFailing ? Double.POSITIVE_INFINITY : through, through + 10, bytes);
        }
    }

    private InventedLog() {}

    static UniformRandomProvider random(long seed) {
        return RandomSource.XO_SHI_RO_256_PP.create(seed);
    }

    private static int unknownOf(int run) {
        return run % 2;
    }

    /** Returns a log of a truth. */
    static List<LoggedRun> runs(Kind kind, double[] truth, int count, UniformRandomProvider random) {
        List<LoggedRun> runs = new ArrayList<>();
        for (int run = 0; run < count; run++) {
            runs.add(logged(kind, run + 1, kind.session(truth[unknownOf(run)], random)));
        }
        return runs;
    }

    private static LoggedRun logged(Kind kind, int number, SimulatedRun session) {
        return logged(
                plan(number, "invented", Direction.UPLOAD, SENT_BYTES, kind.patienceSeconds()),
                session,
                kind.stepSeconds());
    }

    /** Returns a run that will be broken off if it is not through in some time. */
    static LoggedRun plan(int number, String mode, Direction direction, long bytes, double patienceSeconds) {
        return new LoggedRun(
                number,
                Optional.empty(),
                Optional.empty(),
                mode,
                direction,
                bytes,
                OptionalLong.empty(),
                LoggedOutcome.BROKEN_OFF,
                OptionalLong.empty(),
                Optional.of(new NotedTime(Math.min(86_400, patienceSeconds), 1, Rounding.NEAREST)),
                Optional.empty(),
                EndReadings.NONE,
                EndReadings.NONE,
                "");
    }

    /** Returns a planned run as it is logged; of every fourth that is broken off, what was through is noted. */
    static LoggedRun logged(LoggedRun plan, SimulatedRun session, double stepSeconds) {
        double patience = plan.sessionTime().orElseThrow().seconds();
        boolean isDelivered = Double.isFinite(session.deliveredSeconds());
        boolean isOff = (isDelivered ? session.deliveredSeconds() : session.endedSeconds()) > patience;
        LoggedOutcome outcome =
                isOff ? LoggedOutcome.BROKEN_OFF : isDelivered ? LoggedOutcome.DELIVERED : LoggedOutcome.GAVE_UP;
        NotedTime watch = new NotedTime(0, stepSeconds, Rounding.NEAREST);
        return new LoggedRun(
                plan.number(),
                plan.date(),
                plan.start(),
                plan.mode(),
                plan.direction(),
                plan.bytes(),
                plan.onAirBytes(),
                outcome,
                isOff && plan.number() % 4 == 1 ? OptionalLong.of(session.bytesThrough()) : OptionalLong.empty(),
                Optional.of(watch.written(isOff ? patience : session.endedSeconds())),
                Optional.empty(),
                plan.near(),
                plan.far(),
                plan.remarks());
    }

    /** Returns the model of a log. */
    static LogModel model(Kind kind, List<LoggedRun> runs, List<LogModel.MeterReading> readings, long seed) {
        return new LogModel() {
            @Override
            public List<LoggedRun> runs() {
                return runs;
            }

            @Override
            public int unknowns() {
                return UNKNOWNS;
            }

            @Override
            public int[] unknownsOf(int run) {
                // The regression must find out by itself what matters.
                return IntStream.range(0, UNKNOWNS).toArray();
            }

            @Override
            public double straightened(int unknown, double score) {
                return score;
            }

            @Override
            public SimulatedRun simulated(int run, double[] scores, long number) {
                return kind.session(scores[unknownOf(run)], random(seed + 1_000_003L * number + 7919L * run));
            }

            @Override
            public List<MeterReading> readings() {
                return readings;
            }

            @Override
            public double[] expectedReadings(double[] scores) {
                return readings.stream().mapToDouble(it -> scores[0]).toArray();
            }
        };
    }
}
