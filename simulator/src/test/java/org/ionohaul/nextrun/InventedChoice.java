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
 * Two modes whose times follow a formula, so that choosing between them can be repeated often and the better one is known exactly.
 */
final class InventedChoice implements World {
    static final double DEADLINE_SECONDS = 600;
    static final double WORTH_IT = 0.05;
    private static final double SCATTER = 0.3;
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final List<Mode> MODES = List.of(mode("brisk-comb"), mode("patient-climber"));

    private final Story story;
    private final long seed;
    private final List<Candidate> candidates;

    /** How times hang on two things that are not known. */
    enum Story {
        /** That of each mode on one of them; all candidates take some ten minutes and all runs get through. */
        APART(0.8, 600, 86_400) {
            @Override
            double logMiddle(int mode, double[] truth) {
                return 0.4 * truth[mode];
            }

            @Override
            double failing(int mode, double[] truth) {
                return 0;
            }

            @Override
            List<Long> sizes() {
                return List.of(1000L);
            }
        },
        /**
         * Both on the first, one more than the other and less straight, and the other's also on the second. Runs fail where it is high;
         * who gets impatient breaks off after 15 minutes; a quarter of the file may be sent; the meter takes two minutes.
         */
        CROSSING(1.2, 120, 900) {
            @Override
            double logMiddle(int mode, double[] truth) {
                return mode == 0 ? -0.05 + 0.1 * truth[0] : 0.4 * Math.exp(0.8 * truth[0]) - 0.5 + 0.2 * truth[1];
            }

            @Override
            double failing(int mode, double[] truth) {
                return 0.3 / (1 + Math.exp(2 - 2 * truth[mode]));
            }

            @Override
            List<Long> sizes() {
                return List.of(1000L, 250L);
            }
        };

        private final double readingError;
        private final double readingSeconds;
        private final double patienceSeconds;

        Story(double readingError, double readingSeconds, double patienceSeconds) {
            this.readingError = readingError;
            this.readingSeconds = readingSeconds;
            this.patienceSeconds = patienceSeconds;
        }

        /** Returns the logarithm of the median time of the whole file over ten minutes. */
        abstract double logMiddle(int mode, double[] truth);

        /** Returns the chance that a run fails. */
        abstract double failing(int mode, double[] truth);

        /** Returns how much may be sent, in bytes. */
        abstract List<Long> sizes();

        List<Candidate> all() {
            List<Candidate> all = new ArrayList<>();
            for (Mode mode : MODES) {
                sizes().forEach(it -> all.add(new Candidate.Send(mode, Direction.UPLOAD, it, Optional.empty())));
            }
            all.add(new Candidate.Listen(End.NEAR, Gauge.What.SNR, readingSeconds, readingError));
            return all;
        }

        SimulatedRun session(int mode, long bytes, double[] truth, UniformRandomProvider random) {
            double seconds = 0.6 * bytes * Math.exp(logMiddle(mode, truth) + SCATTER * normal(random));
            boolean isFailing = random.nextDouble() < failing(mode, truth);
            return isFailing
                    ? new SimulatedRun(Double.POSITIVE_INFINITY, seconds / 2, bytes / 2)
                    : new SimulatedRun(seconds, seconds + 10, bytes);
        }

        /** Returns whether another mode keeps the deadline so much more often: known exactly. */
        boolean isWrong(int choice, double[] truth) {
            return chance(1 - choice, truth) - chance(choice, truth) >= WORTH_IT;
        }

        private double chance(int mode, double[] truth) {
            return (1 - failing(mode, truth)) * NORMAL.cumulativeProbability(-logMiddle(mode, truth) / SCATTER);
        }

        /** Returns a run as it is logged. */
        LoggedRun logged(int number, int mode, long bytes, double[] truth, UniformRandomProvider random) {
            SimulatedRun run = session(mode, bytes, truth, random);
            boolean isThrough = Double.isFinite(run.deliveredSeconds());
            boolean isOff = (isThrough ? run.deliveredSeconds() : run.endedSeconds()) > patienceSeconds;
            NotedTime watch = new NotedTime(0, 10, Rounding.NEAREST);
            return new LoggedRun(
                    number,
                    Optional.empty(),
                    Optional.empty(),
                    MODES.get(mode).name(),
                    Direction.UPLOAD,
                    bytes,
                    OptionalLong.empty(),
                    isOff ? LoggedOutcome.BROKEN_OFF : isThrough ? LoggedOutcome.DELIVERED : LoggedOutcome.GAVE_UP,
                    OptionalLong.empty(),
                    isOff || !isThrough
                            ? Optional.of(watch.written(isOff ? patienceSeconds : run.endedSeconds()))
                            : Optional.empty(),
                    isOff || !isThrough ? Optional.empty() : Optional.of(watch.written(run.deliveredSeconds())),
                    EndReadings.NONE,
                    EndReadings.NONE,
                    "");
        }

        LogModel.MeterReading read(double[] truth, UniformRandomProvider random) {
            return new LogModel.MeterReading(truth[0] + readingError * normal(random), readingError);
        }

        /** Returns the model of what was logged so far. */
        LogModel model(List<LoggedRun> runs, List<LogModel.MeterReading> readings, long seed) {
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
                    int mode = runs.get(run).mode().equals(MODES.get(0).name()) ? 0 : 1;
                    return session(
                            mode, runs.get(run).bytes(), scores, random(seed + 1_000_003L * number + 7919L * run));
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

    /** @param candidates those of the story, or none */
    InventedChoice(Story story, long seed, List<Candidate> candidates) {
        this.story = story;
        this.seed = seed;
        this.candidates = candidates;
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

    static int modeOf(Candidate.Send send) {
        return MODES.indexOf(send.mode());
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
        return story.session(mode, 1000, scores, random(seed + 31L * number + mode));
    }

    @Override
    public List<Candidate> candidates() {
        return candidates;
    }

    @Override
    public LoggedRun plan(Candidate.Send send) {
        return PlannedRun.of(
                9, send.mode().name(), send.direction(), send.bytes(), send.start(), story.patienceSeconds);
    }

    @Override
    public SimulatedRun sent(Candidate.Send send, double[] scores, long number) {
        return story.session(
                modeOf(send),
                send.bytes(),
                scores,
                random(seed + 500_009L + 37L * number + 2L * candidates.indexOf(send)));
    }

    @Override
    public double shown(Candidate.Listen listen, double[] scores, long number) {
        return scores[0];
    }
}
