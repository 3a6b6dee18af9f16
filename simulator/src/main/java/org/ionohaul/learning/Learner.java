package org.ionohaul.learning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.ionohaul.placing.SimulatedRun;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.study.TrialPool;

/**
 * Learns from a log in rounds: simulates it under values of the unknowns that are drawn first from the prior, then from around what
 * is believed so far (half of the evidence counted, so that they reach wider), and learns the likelihood from all that was simulated,
 * the later rounds counting most.
 */
public final class Learner {
    static final int ROUNDS = 3;

    /** How many equally likely draws stand for what is believed. */
    static final int DRAWS = 1000;

    /** Sets of the first round are spread over all that was thought possible: they hold the regression there, but count little. */
    private static final double FIRST_ROUND_WEIGHT = 0.1;

    private static final double WIDENING = 0.5;
    private static final int MOST_CHECKED = 300;
    private static final int GRID = 500;

    private final LogModel model;
    private final int setsARound;
    private final TrialPool pool;
    private final TrialStreams streams;

    /**
     * Prepares to learn.
     *
     * @param setsARound how many sets of values each round simulates
     */
    public Learner(LogModel model, int setsARound, TrialPool pool, long seed) {
        this.model = model;
        this.setsARound = setsARound;
        this.pool = pool;
        this.streams = new TrialStreams(seed, 0);
    }

    /** Learns; empty if cancelled before it is done. */
    public Optional<Learned> learned() {
        List<double[]> sets = new ArrayList<>();
        List<List<SimulatedRun>> simulated = new ArrayList<>();
        List<ToDoubleFunction<double[]>> overPrior = new ArrayList<>(List.of(scores -> 0));
        List<double[]> next = Belief.prior(model.unknowns(), setsARound, streams.open(Purpose.LEARNING, 0));
        double chanceOfLess = 1;
        for (int round = 0; round < ROUNDS; round++) {
            List<double[]> drawn = next;
            long first = (long) round * setsARound;
            List<List<SimulatedRun>> runs = pool.run(setsARound, set -> run(drawn.get(set), first + set));
            if (runs.size() < setsARound) {
                return Optional.empty();
            }
            sets.addAll(drawn);
            simulated.addAll(runs);
            LogLikelihood likelihood = LogLikelihood.of(model, sets, simulated, weights(sets.size()));
            if (round == 0) {
                chanceOfLess = chanceOfLess(likelihood, sets, simulated);
            }
            if (round == ROUNDS - 1) {
                Belief belief = belief(likelihood::at, DRAWS, ROUNDS + 1);
                return Optional.of(new Learned(
                        belief,
                        effective(likelihood, sets, overPrior),
                        sets.size(),
                        Math.min(chanceOfLess, chanceOfBeyond(likelihood.beyondAll(), sets.size()))));
            }
            ToDoubleFunction<double[]> widened = scores -> WIDENING * likelihood.at(scores);
            Belief wide = belief(widened, setsARound, round + 1);
            overPrior.add(scores -> widened.applyAsDouble(scores) - wide.logEvidence());
            next = wide.draws();
        }
        throw new IllegalStateException("there is a last round");
    }

    private List<SimulatedRun> run(double[] scores, long number) {
        List<SimulatedRun> runs = new ArrayList<>();
        for (int run = 0; run < model.runs().size(); run++) {
            runs.add(model.simulated(run, scores, number));
        }
        return runs;
    }

    private double[] weights(int sets) {
        double[] weights = new double[sets];
        Arrays.fill(weights, 1);
        if (sets > setsARound) {
            Arrays.fill(weights, 0, setsARound, FIRST_ROUND_WEIGHT);
        }
        return weights;
    }

    private double chanceOfLess(LogLikelihood likelihood, List<double[]> sets, List<List<SimulatedRun>> simulated) {
        int checked = Math.min(MOST_CHECKED, setsARound);
        return likelihood.chanceOfLess(
                sets.subList(0, checked),
                simulated.subList(0, checked),
                Belief.prior(model.unknowns(), GRID, streams.open(Purpose.LEARNING, 100)),
                streams.open(Purpose.LEARNING, 101));
    }

    /**
     * Returns the chance that so many runs, or more, lie beyond all simulated ones of their kind though the model is right. Ranks don't
     * tell by how far a run lies beyond; but among simulations where the truth is believed to be, a run that belongs there is the
     * first or last with a chance of 2 in their number plus one, given the unknowns each by itself.
     */
    private double chanceOfBeyond(int beyond, int sets) {
        int nearTruth = sets - setsARound;
        return BinomialDistribution.of(model.runs().size(), 2.0 / (nearTruth + 1))
                .survivalProbability(beyond - 1);
    }

    private Belief belief(ToDoubleFunction<double[]> logLikelihood, int count, int stage) {
        return Belief.after(logLikelihood, model.unknowns(), count, streams.open(Purpose.LEARNING, stage));
    }

    /** What the simulated sets are worth as draws of what is believed in the end: importance weights over the mixture of all rounds. */
    private static double effective(
            LogLikelihood likelihood, List<double[]> sets, List<ToDoubleFunction<double[]>> overPrior) {
        double[] logs = sets.stream()
                .mapToDouble(set -> likelihood.at(set)
                        - Weights.logMean(overPrior.stream()
                                .mapToDouble(it -> it.applyAsDouble(set))
                                .toArray()))
                .toArray();
        return Weights.effective(Weights.ofLogs(logs));
    }
}
