package org.ionohaul.nextrun;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.ionohaul.channel.End;
import org.ionohaul.fieldlog.EndReadings;
import org.ionohaul.fieldlog.LoggedOutcome;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.fieldlog.NotedTime;
import org.ionohaul.fieldlog.Rounding;
import org.ionohaul.learning.LogModel;
import org.ionohaul.placing.Gauge;
import org.ionohaul.placing.SimulatedRun;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;

/**
 * Two modes whose times follow a formula, so that choosing between them can be repeated often: the logarithm of the time with mode 0
 * hangs on unknown 0, that with mode 1 on unknown 1.
 */
final class InventedChoice implements World {
    static final double DEADLINE_SECONDS = 600;
    static final double WORTH_IT = 0.05;
    private static final double SLOPE = 0.4;
    private static final double SCATTER = 0.3;
    private static final double READING_ERROR = 0.8;
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final List<Mode> MODES = List.of(mode("brisk-comb"), mode("patient-climber"));

    private final long seed;
    private final List<Candidate> candidates;

    /** @param candidates those of {@link #all}, or none */
    InventedChoice(long seed, List<Candidate> candidates) {
        this.seed = seed;
        this.candidates = candidates;
    }

    /** Sending with either mode takes some ten minutes; so does reading a meter that tells of unknown 0. */
    static List<Candidate> all() {
        return List.of(
                new Candidate.Send(MODES.get(0), Direction.UPLOAD, 1000, Optional.empty()),
                new Candidate.Send(MODES.get(1), Direction.UPLOAD, 1000, Optional.empty()),
                new Candidate.Listen(End.NEAR, Gauge.What.SNR, 600, READING_ERROR));
    }

    private static Mode mode(String name) {
        try {
            return ScenarioReader.readMode(Path.of("../scenarios/modes", name + ".toml"));
        } catch (ScenarioProblems e) {
            throw new IllegalStateException(e);
        }
    }

    static UniformRandomProvider random(long seed) {
        return RandomSource.XO_SHI_RO_256_PP.create(seed);
    }

    static double normal(UniformRandomProvider random) {
        return ZigguratSampler.NormalizedGaussian.of(random).sample();
    }

    static SimulatedRun session(double score, UniformRandomProvider random) {
        double seconds = 600 * Math.exp(SLOPE * score + SCATTER * normal(random));
        return new SimulatedRun(seconds, seconds + 10, 1000);
    }

    /** Returns whether another mode keeps the deadline so much more often: known exactly. */
    static boolean isWrong(int choice, double[] truth) {
        double own = NORMAL.cumulativeProbability(-SLOPE * truth[choice] / SCATTER);
        double other = NORMAL.cumulativeProbability(-SLOPE * truth[1 - choice] / SCATTER);
        return other - own >= WORTH_IT;
    }

    static int modeOf(Candidate candidate) {
        return candidate instanceof Candidate.Send send ? MODES.indexOf(send.mode()) : 0;
    }

    /** Returns a run with a mode as it is logged. */
    static LoggedRun logged(int number, int mode, double[] truth, UniformRandomProvider random) {
        double seconds = session(truth[mode], random).deliveredSeconds();
        return new LoggedRun(
                number,
                Optional.empty(),
                Optional.empty(),
                MODES.get(mode).name(),
                Direction.UPLOAD,
                1000,
                OptionalLong.empty(),
                LoggedOutcome.DELIVERED,
                OptionalLong.empty(),
                Optional.empty(),
                Optional.of(new NotedTime(10 * Math.rint(seconds / 10), 10, Rounding.NEAREST)),
                EndReadings.NONE,
                EndReadings.NONE,
                "");
    }

    static LogModel.MeterReading read(double[] truth, UniformRandomProvider random) {
        return new LogModel.MeterReading(truth[0] + READING_ERROR * normal(random), READING_ERROR);
    }

    /** Returns the model of what was logged so far. */
    static LogModel model(List<LoggedRun> runs, List<LogModel.MeterReading> readings, long seed) {
        return new LogModel() {
            @Override
            public List<LoggedRun> runs() {
                return runs;
            }

            @Override
            public int unknowns() {
                return 2;
            }

            @Override
            public int[] unknownsOf(int run) {
                return new int[] {0, 1};
            }

            @Override
            public double straightened(int unknown, double score) {
                return score;
            }

            @Override
            public SimulatedRun simulated(int run, double[] scores, long number) {
                boolean isFirst = runs.get(run).mode().equals(MODES.get(0).name());
                return session(scores[isFirst ? 0 : 1], random(seed + 1_000_003L * number + 7919L * run));
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

    static List<LoggedRun> with(List<LoggedRun> runs, LoggedRun more) {
        List<LoggedRun> all = new ArrayList<>(runs);
        all.add(more);
        return all;
    }

    @Override
    public double[] straightened(double[] scores) {
        return scores;
    }

    @Override
    public int modes() {
        return 2;
    }

    @Override
    public SimulatedRun chosen(int mode, double[] scores, long number) {
        return session(scores[mode], random(seed + 31L * number + mode));
    }

    @Override
    public List<Candidate> candidates() {
        return candidates;
    }

    @Override
    public LoggedRun plan(Candidate.Send send) {
        return PlannedRun.of(9, send.mode().name(), send.direction(), send.bytes(), send.start(), 86_400);
    }

    @Override
    public SimulatedRun sent(Candidate.Send send, double[] scores, long number) {
        return session(scores[modeOf(send)], random(seed + 500_009L + 37L * number + modeOf(send)));
    }

    @Override
    public double shown(Candidate.Listen listen, double[] scores, long number) {
        return scores[0];
    }
}
