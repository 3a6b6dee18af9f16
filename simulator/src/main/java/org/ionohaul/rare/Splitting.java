package org.ionohaul.rare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.study.TrialPool;

/**
 * The chance of what is rare, by generalised splitting (Z. I. Botev and D. P. Kroese, "Efficient Monte Carlo simulation via the
 * generalized splitting method", Statistics and Computing 22, 2012): trials that score high are tried again and again with
 * some pieces of their chance drawn anew, and kept where they score as high still. That leaves their distribution, given that
 * they score so high, as it is: pieces are independent, are picked whatever they hold, and a try that falls below counts as
 * no move. So the mean of what all first trials lead to is the chance itself, without bias, however well or badly the moves mix;
 * what was chosen beforehand (the levels, from trials of their own) moves its scatter alone.
 */
public final class Splitting {
    /** Share of trials that shall reach the next level: about the best there is, and flat about it (Botev and Kroese). */
    private static final double KEPT = 0.2;

    /** After how many moves the next copy stands: fewer, and copies are alike. Tried on sums of waits: one to three, three did best. */
    private static final int MOVES = 3;

    private static final int SCOUTS = 200;
    private static final int MOST_LEVELS = 12;
    private static final int MOST_COPIES = 25;

    /** What follows a first trial's number in the numbers of its moves. */
    private static final int MOVES_BITS = 24;

    /** Number of the first scout: far beyond those of trials. */
    private static final long FIRST_SCOUT = 1L << 36;

    /** Of what share of the pieces moves try: each as often as the others, since none suits every stage. */
    private static final double[] SHARES = {1.0 / 16, 1.0 / 8, 1.0 / 4, 1.0 / 2};

    private final Score score;
    private final long seed;
    private final TrialPool pool;

    /**
     * Prepares.
     *
     * @param seed of all chance
     * @param pool runs the trials
     */
    public Splitting(Score score, long seed, TrialPool pool) {
        this.score = score;
        this.seed = seed;
        this.pool = pool;
    }

    /** A trial, and how high it scored. */
    private record Scored(TrialStreams chance, double score) {}

    /** The trials that come from one first trial: counts the moves and the sessions. */
    private final class Tree {
        private final long number;
        private int trials;

        Tree(long number) {
            this.number = number;
        }

        Scored first() {
            return scored(new TrialStreams(seed, number).inPieces());
        }

        /** Returns a trial as likely as another, given that both score at least so high. */
        Scored moved(Scored from, double atLeast) {
            Scored tried =
                    scored(from.chance().redrawn((number << MOVES_BITS) + trials, SHARES[trials % SHARES.length]));
            return tried.score() >= atLeast ? tried : from;
        }

        private Scored scored(TrialStreams chance) {
            trials++;
            return new Scored(chance, score.of(chance));
        }

        /** Returns the moves after which copies of trials on a level stand, one after the other. */
        List<Scored> copies(List<Scored> from, int copies, double level) {
            List<Scored> all = new ArrayList<>();
            for (Scored one : from) {
                Scored now = one;
                for (int copy = 0; copy < copies; copy++) {
                    for (int move = 0; move < MOVES; move++) {
                        now = moved(now, level);
                    }
                    all.add(now);
                }
            }
            return all;
        }
    }

    /**
     * Looks for levels, each of which about one of five that reached the one before reaches.
     *
     * @return empty if there is no way up within {@value #MOST_LEVELS} levels: what nothing scores near to, or what is rarer than
     *     can be told; also if the pool was cancelled
     */
    public Optional<Ladder> ladder() {
        List<Double> levels = new ArrayList<>();
        List<Integer> copies = new ArrayList<>(List.of(1));
        long scouts = FIRST_SCOUT;
        List<Scored> all = pool.run(SCOUTS, i -> new Tree(FIRST_SCOUT + i).first());
        for (int stage = 0; stage < MOST_LEVELS && all.size() >= SCOUTS / 2; stage++) {
            Optional<Double> next = level(all, stage == 0 ? Double.NEGATIVE_INFINITY : levels.get(stage - 1));
            if (next.isEmpty()) {
                return Optional.empty();
            }
            double level = next.get();
            levels.add(level);
            if (Double.isInfinite(level)) {
                return Optional.of(new Ladder(levels, copies));
            }
            List<Scored> on = reaching(level, all);
            int each = (int) Math.min(MOST_COPIES, Math.round((double) all.size() / on.size()));
            copies.add(each);
            scouts += all.size();
            long first = scouts;
            List<List<Scored>> moved =
                    pool.run(on.size(), i -> new Tree(first + i).copies(List.of(on.get(i)), each, level));
            if (moved.size() < on.size()) {
                return Optional.empty();
            }
            all = moved.stream().flatMap(List::stream).toList();
        }
        return Optional.empty();
    }

    private static List<Scored> reaching(double level, List<Scored> trials) {
        return trials.stream().filter(it -> it.score() >= level).toList();
    }

    /** Returns the level above the last one that about so many reach as shall; empty if nothing lies above. */
    private static Optional<Double> level(List<Scored> trials, double last) {
        List<Double> rising = trials.stream().map(Scored::score).sorted().toList();
        double usual = rising.get((int) Math.ceil((1 - KEPT) * rising.size()) - 1);
        if (usual > last) {
            return Optional.of(usual);
        }
        return rising.stream().filter(it -> it > last).findFirst();
    }

    /**
     * Estimates the chance.
     *
     * @param trees how many trials to begin with, 2 or more
     * @return empty if the pool was cancelled meanwhile
     */
    public Optional<RareChance> chance(Ladder ladder, int trees) {
        List<RareChance.FromOne> each = pool.run(trees, number -> fromOne(ladder, number));
        return each.size() < trees ? Optional.empty() : Optional.of(RareChance.of(each));
    }

    private RareChance.FromOne fromOne(Ladder ladder, long number) {
        Tree tree = new Tree(number);
        List<Scored> on = List.of(tree.first());
        for (int stage = 0; stage < ladder.levels().size(); stage++) {
            double level = ladder.levels().get(stage);
            if (stage > 0) {
                on = tree.copies(on, ladder.copies().get(stage), ladder.levels().get(stage - 1));
            }
            on = reaching(level, on);
        }
        return new RareChance.FromOne(on.size() * ladder.weight(), tree.trials);
    }
}
