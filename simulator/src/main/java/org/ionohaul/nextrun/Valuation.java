package org.ionohaul.nextrun;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.learning.Belief;
import org.ionohaul.placing.SimulatedRun;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.Jackknifed;
import org.ionohaul.study.TrialPool;

/**
 * Values candidates: simulates each, and what is sent in the end with each mode, under draws of what is believed, learns how they
 * hang on it, and works out what a choice loses now and after. Errors are those of the grouped jackknife over draws, so they hold
 * those of simulating and of learning from it.
 */
public final class Valuation {
    private static final double SECONDS_PER_MINUTE = 60;

    /** More do not fit into an evening's patience, and hardly tell more. */
    private static final int MOST_TIMES = 20;

    /** Of modes that are as often wrong, the one that keeps the deadline more often is chosen. */
    private static final double BETWEEN_EQUALS = 1e-6;

    private final World world;
    private final List<double[]> draws;
    private final int sets;
    private final Stakes stakes;
    private final TrialStreams streams;

    /**
     * What is at stake.
     *
     * @param deadlineSeconds by when what is sent must be through
     * @param worthIt from which difference of two modes' chances on the worse one is a wrong choice, above 0
     * @param limitSeconds how long somebody is willing to be on the air
     */
    record Stakes(double deadlineSeconds, double worthIt, double limitSeconds) {}

    /**
     * Prepares a valuation.
     *
     * @param sets how many of the draws are simulated under
     */
    Valuation(World world, Belief belief, int sets, Stakes stakes, long seed) {
        this.world = world;
        this.draws = belief.draws();
        this.sets = Math.min(sets, draws.size());
        this.stakes = stakes;
        this.streams = new TrialStreams(seed, 0);
    }

    /**
     * What was found.
     *
     * @param choice the mode to choose now, by its number
     * @param wrongNow chance that this is a wrong choice
     * @param chances mean chance of keeping the deadline with each mode
     * @param sets how many draws were simulated under
     * @param worths what each candidate is worth, the best per minute first
     */
    public record Found(int choice, Estimate wrongNow, List<Estimate> chances, int sets, List<Worth> worths) {}

    /** What modes, candidates and meters came to under one draw. */
    private record SimulatedSet(List<SimulatedRun> chosen, List<Optional<SimulatedRun>> sent) {}

    /**
     * What a set of draws says.
     *
     * @param choice the mode to choose now
     * @param wrongNow chance that this is a wrong choice
     * @param chances mean chance of keeping the deadline with each mode
     * @param after chance of a wrong choice after each candidate
     * @param changed how often another mode is chosen after each
     * @param afterInTime the same as {@code after} when each is done as often as it fits
     * @param airSeconds how long each takes on the air
     */
    record Numbers(
            int choice,
            double wrongNow,
            List<Double> chances,
            List<Double> after,
            List<Double> changed,
            List<Double> afterInTime,
            List<Double> airSeconds) {
        /** Copies the lists. */
        Numbers {
            chances = List.copyOf(chances);
            after = List.copyOf(after);
            changed = List.copyOf(changed);
            afterInTime = List.copyOf(afterInTime);
            airSeconds = List.copyOf(airSeconds);
        }

        /** Returns by how much a candidate lowers the chance of a wrong choice, for each minute on the air. */
        double fewerWrongPerMinute(int candidate) {
            return (wrongNow - after.get(candidate)) * SECONDS_PER_MINUTE / airSeconds.get(candidate);
        }
    }

    /** Values; empty if cancelled. */
    Optional<Found> found(TrialPool pool) {
        return simulated(pool).flatMap(simulated -> {
            double[] airSeconds = airSeconds(simulated);
            IntFunction<Numbers> numbers = numbers(simulated, airSeconds);
            List<Numbers> all = pool.run(Jackknifed.BLOCKS + 1, numbers);
            return all.size() <= Jackknifed.BLOCKS ? Optional.empty() : Optional.of(found(all, airSeconds));
        });
    }

    /** Values without saying how sure that is, which is much quicker; empty if cancelled. */
    Optional<Numbers> numbers(TrialPool pool) {
        return simulated(pool).map(it -> numbers(it, airSeconds(it)).apply(0));
    }

    private Optional<List<SimulatedSet>> simulated(TrialPool pool) {
        List<SimulatedSet> simulated = pool.run(sets, this::simulated);
        return simulated.size() < sets ? Optional.empty() : Optional.of(simulated);
    }

    /** Returns the numbers of all draws, 0, or of those without one block after the other, from 1 on. */
    private IntFunction<Numbers> numbers(List<SimulatedSet> simulated, double[] airSeconds) {
        double[][] straightened = draws.stream().map(world::straightened).toArray(double[][]::new);
        List<double[]> shown = world.candidates().stream().map(this::shown).toList();
        return block -> new Analysis(simulated, straightened, shown, airSeconds, block - 1).numbers();
    }

    private double[] airSeconds(List<SimulatedSet> simulated) {
        return IntStream.range(0, world.candidates().size())
                .mapToDouble(it -> airSeconds(it, simulated))
                .toArray();
    }

    private SimulatedSet simulated(int set) {
        double[] scores = draws.get(set);
        return new SimulatedSet(
                IntStream.range(0, world.modes())
                        .mapToObj(mode -> world.chosen(mode, scores, set))
                        .toList(),
                world.candidates().stream()
                        .map(it -> it instanceof Candidate.Send send
                                ? Optional.of(world.sent(send, scores, set))
                                : Optional.<SimulatedRun>empty())
                        .toList());
    }

    private double[] shown(Candidate candidate) {
        return candidate instanceof Candidate.Listen listen
                ? IntStream.range(0, draws.size())
                        .mapToDouble(it -> world.shown(listen, draws.get(it), it))
                        .toArray()
                : new double[0];
    }

    private double airSeconds(int candidate, List<SimulatedSet> simulated) {
        return world.candidates().get(candidate) instanceof Candidate.Listen listen
                ? listen.seconds()
                : simulated.stream()
                        .mapToDouble(it -> Math.min(
                                stakes.limitSeconds(),
                                it.sent().get(candidate).orElseThrow().endedSeconds()))
                        .average()
                        .orElseThrow();
    }

    private int times(int candidate, double[] airSeconds) {
        boolean isRead = world.candidates().get(candidate) instanceof Candidate.Listen;
        return isRead
                ? 1
                : (int) Math.max(1, Math.min(MOST_TIMES, stakes.limitSeconds() / Math.max(1, airSeconds[candidate])));
    }

    /** What draws say when those of a block are left out. */
    private final class Analysis {
        private final List<SimulatedSet> simulated;
        private final double[][] straightened;
        private final List<double[]> shown;
        private final double[] airSeconds;
        private final boolean[] kept;

        private Analysis(
                List<SimulatedSet> simulated,
                double[][] straightened,
                List<double[]> shown,
                double[] airSeconds,
                int block) {
            this.simulated = simulated;
            this.straightened = straightened;
            this.shown = shown;
            this.airSeconds = airSeconds;
            this.kept = new boolean[draws.size()];
            for (int draw = 0; draw < kept.length; draw++) {
                kept[draw] = draw % Jackknifed.BLOCKS != block;
            }
        }

        private Numbers numbers() {
            double[][] chances =
                    IntStream.range(0, world.modes()).mapToObj(this::chances).toArray(double[][]::new);
            Preposterior analysis = new Preposterior(losses(chances), kept);
            List<Double> after = new ArrayList<>();
            List<Double> changed = new ArrayList<>();
            List<Double> afterInTime = new ArrayList<>();
            for (int candidate = 0; candidate < world.candidates().size(); candidate++) {
                Evidence evidence = evidence(candidate);
                Preposterior.After once =
                        analysis.after(evidence, sets, 1, streams.open(Purpose.NEXT_RUN, 2 * candidate));
                int times = times(candidate, airSeconds);
                after.add(once.loss());
                changed.add(once.changedShare());
                afterInTime.add(
                        times == 1
                                ? once.loss()
                                : analysis.after(
                                                evidence,
                                                sets,
                                                times,
                                                streams.open(Purpose.NEXT_RUN, 2 * candidate + 1))
                                        .loss());
            }
            return new Numbers(
                    analysis.choice(),
                    analysis.now(),
                    Stream.of(chances).map(it -> mean(it, kept)).toList(),
                    after,
                    changed,
                    afterInTime,
                    DoubleStream.of(airSeconds).boxed().toList());
        }

        private double[] chances(int mode) {
            List<SimulatedRun> runs =
                    simulated.stream().map(it -> it.chosen().get(mode)).toList();
            return new RunOutlook(PlannedRun.watched(), straightened, runs, kept)
                    .chancesWithin(stakes.deadlineSeconds());
        }

        private Evidence evidence(int candidate) {
            if (world.candidates().get(candidate) instanceof Candidate.Send send) {
                List<SimulatedRun> runs = simulated.stream()
                        .map(it -> it.sent().get(candidate).orElseThrow())
                        .toList();
                return new RunOutlook(world.plan(send), straightened, runs, kept);
            }
            Candidate.Listen listen = (Candidate.Listen) world.candidates().get(candidate);
            return new ReadingEvidence(shown.get(candidate), listen.deviationDb());
        }
    }

    private Found found(List<Numbers> analyses, double[] airSeconds) {
        Numbers whole = analyses.get(0);
        Jackknifed now = jackknifed(analyses, it -> it.wrongNow());
        List<Jackknifed> fewer = perCandidate(
                candidate -> now.minus(jackknifed(analyses, it -> it.after().get(candidate))));
        List<Jackknifed> perMinute =
                perCandidate(candidate -> jackknifed(analyses, it -> it.fewerWrongPerMinute(candidate)));
        List<Worth> worths = new ArrayList<>();
        for (int candidate = 0; candidate < airSeconds.length; candidate++) {
            int place = candidate;
            Jackknifed inTime =
                    now.minus(jackknifed(analyses, it -> it.afterInTime().get(place)));
            worths.add(new Worth(
                    world.candidates().get(candidate),
                    airSeconds[candidate],
                    fewer.get(candidate).within(-1, 1, Estimate.CONFIDENCE),
                    perMinute.get(candidate).within(-100, 100, Estimate.CONFIDENCE),
                    whole.changed().get(candidate),
                    times(candidate, airSeconds),
                    inTime.within(-1, 1, Estimate.CONFIDENCE),
                    mayBeBest(candidate, perMinute)));
        }
        worths.sort(Comparator.comparingDouble(it -> -it.fewerWrongPerMinute().value()));
        return new Found(
                whole.choice(),
                now.within(0, 1, Estimate.CONFIDENCE),
                IntStream.range(0, world.modes())
                        .mapToObj(
                                mode -> jackknifed(analyses, it -> it.chances().get(mode))
                                        .within(0, 1, Estimate.CONFIDENCE))
                        .toList(),
                sets,
                worths);
    }

    /** Compared with the best of all, at an error rate shared out over the others (Bonferroni). */
    private static boolean mayBeBest(int candidate, List<Jackknifed> perMinute) {
        Jackknifed best = perMinute.stream()
                .max(Comparator.comparingDouble(Jackknifed::value))
                .orElseThrow();
        double errorRate = 2 * (1 - Estimate.CONFIDENCE) / Math.max(1, perMinute.size() - 1);
        Jackknifed behind = best.minus(perMinute.get(candidate));
        return behind.within(-100, 100, 1 - Math.min(0.5, errorRate)).low() <= 0;
    }

    private List<Jackknifed> perCandidate(IntFunction<Jackknifed> number) {
        return IntStream.range(0, world.candidates().size()).mapToObj(number).toList();
    }

    private static Jackknifed jackknifed(List<Numbers> analyses, ToDoubleFunction<Numbers> number) {
        return Jackknifed.of(
                number.applyAsDouble(analyses.get(0)), block -> number.applyAsDouble(analyses.get(block + 1)));
    }

    private static double mean(double[] values, boolean[] kept) {
        return IntStream.range(0, values.length)
                .filter(it -> kept[it])
                .mapToDouble(it -> values[it])
                .average()
                .orElseThrow();
    }

    /** A mode is a wrong choice where another keeps the deadline so much more often that it is worth the asking. */
    private double[][] losses(double[][] chances) {
        double[][] losses = new double[chances.length][draws.size()];
        for (int draw = 0; draw < draws.size(); draw++) {
            int place = draw;
            double best =
                    Arrays.stream(chances).mapToDouble(it -> it[place]).max().orElseThrow();
            for (int mode = 0; mode < chances.length; mode++) {
                double behind = best - chances[mode][draw];
                losses[mode][draw] = (behind >= stakes.worthIt() ? 1 : 0) + BETWEEN_EQUALS * behind;
            }
        }
        return losses;
    }
}
