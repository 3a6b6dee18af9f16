package org.ionohaul.onair;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.PermutationSampler;

/** In which order an operator makes runs of several modes, as many of each, and on how many evenings. */
public enum RunOrder {
    /** All runs of one mode, then all of the next: A A A B B B. */
    IN_A_ROW {
        @Override
        public List<List<Integer>> evenings(int modes, int runsEach, UniformRandomProvider lot) {
            return List.of(IntStream.range(0, modes * runsEach)
                    .map(run -> run / runsEach)
                    .boxed()
                    .toList());
        }
    },
    /** Turn about: A B A B A B. */
    TAKING_TURNS {
        @Override
        public List<List<Integer>> evenings(int modes, int runsEach, UniformRandomProvider lot) {
            return List.of(IntStream.range(0, modes * runsEach)
                    .map(run -> run % modes)
                    .boxed()
                    .toList());
        }
    },
    /** Turn about, beginning with the last: B A B A B A. */
    TURNS_REVERSED {
        @Override
        public List<List<Integer>> evenings(int modes, int runsEach, UniformRandomProvider lot) {
            return List.of(IntStream.range(0, modes * runsEach)
                    .map(run -> modes - 1 - run % modes)
                    .boxed()
                    .toList());
        }
    },
    /** Turn about, every other round the other way round: A B B A A B. */
    MIRRORED {
        @Override
        public List<List<Integer>> evenings(int modes, int runsEach, UniformRandomProvider lot) {
            return List.of(IntStream.range(0, modes * runsEach)
                    .map(run -> run / modes % 2 == 0 ? run % modes : modes - 1 - run % modes)
                    .boxed()
                    .toList());
        }
    },
    /** Round by round, each in an order drawn by lot: randomised blocks. */
    BY_LOT {
        @Override
        public List<List<Integer>> evenings(int modes, int runsEach, UniformRandomProvider lot) {
            return List.of(
                    rounds(modes, runsEach, lot).stream().flatMap(List::stream).toList());
        }
    },
    /** One round an evening, in an order drawn by lot. */
    ROUND_AN_EVENING {
        @Override
        public List<List<Integer>> evenings(int modes, int runsEach, UniformRandomProvider lot) {
            return rounds(modes, runsEach, lot);
        }
    },
    /** One run an evening, so that every run begins at the same time of day. */
    RUN_AN_EVENING {
        @Override
        public List<List<Integer>> evenings(int modes, int runsEach, UniformRandomProvider lot) {
            return IntStream.range(0, modes * runsEach)
                    .mapToObj(run -> List.of(run % modes))
                    .toList();
        }
    };

    /**
     * Returns the runs: for each evening, the modes in the order of their runs.
     *
     * @param modes how many modes there are, 1 or more
     * @param runsEach how many runs of each, 1 or more
     * @param lot draws what is drawn by lot; equal lots draw equal first rounds
     */
    public abstract List<List<Integer>> evenings(int modes, int runsEach, UniformRandomProvider lot);

    /** Returns whether runs of two rounds meet different skies, so that rounds are independent of each other. */
    public boolean isOverEvenings() {
        return this == ROUND_AN_EVENING || this == RUN_AN_EVENING;
    }

    private static List<List<Integer>> rounds(int modes, int runsEach, UniformRandomProvider lot) {
        List<List<Integer>> rounds = new ArrayList<>();
        for (int round = 0; round < runsEach; round++) {
            rounds.add(IntStream.of(new PermutationSampler(lot, modes, modes).sample())
                    .boxed()
                    .toList());
        }
        return rounds;
    }
}
