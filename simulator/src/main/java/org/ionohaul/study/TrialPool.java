package org.ionohaul.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.IntFunction;

/**
 * Runs trials of any kind on several threads and keeps what they come to in memory, in order of trial number: the same whatever the
 * number of threads.
 *
 * @param threads how many threads to use, 1 or more
 * @param progress hears how far it is
 * @param isCancelled asked before each trial whether to stop
 */
public record TrialPool(int threads, StudyProgress progress, BooleanSupplier isCancelled) {
    /** Checks the number of threads. */
    public TrialPool {
        if (threads < 1) {
            throw new IllegalArgumentException("threads must be at least 1: " + threads);
        }
    }

    /** Returns a pool that tells nothing and is never cancelled. */
    public static TrialPool of(int threads) {
        return new TrialPool(threads, (done, asked) -> {}, () -> false);
    }

    /**
     * Runs trials.
     *
     * @param trials how many, from number 0 on
     * @param trial runs one of them; called from several threads at once, must depend on its number alone
     * @return what they came to; if cancelled, of the unbroken run of trials from the first on
     * @throws IllegalStateException if a trial fails; the message names it
     */
    public <R> List<R> run(int trials, IntFunction<R> trial) {
        Kept<R> kept = new Kept<>(new ArrayList<>());
        new ParallelTrials<>(trial, kept, trials, trials, progress, isCancelled).run(threads);
        return List.copyOf(kept.results());
    }

    /**
     * Runs the pieces of work that a store still lacks.
     *
     * @param pieces how many there shall be, numbered from 0
     * @param piece does one of them; called from several threads at once, must depend on its number alone; may come to no
     *     lines if this pool is cancelled meanwhile
     * @param store what is done, perhaps nothing; what is run is added, if cancelled as an unbroken run from the first on
     * @throws IllegalStateException if a piece fails; the message names it
     * @throws NoRoomForTrials if there is no room for so many lines
     */
    public void run(int pieces, IntFunction<List<String>> piece, LineStore store) {
        if (store.trials() < pieces) {
            new ParallelTrials<>(piece, store, pieces, pieces, progress, isCancelled).run(threads);
        }
    }

    private record Kept<R>(List<R> results) implements TrialSink<R> {
        @Override
        public int trials() {
            return results.size();
        }

        @Override
        public int trialsABlock() {
            return 1;
        }

        @Override
        public void append(List<R> block) {
            results.addAll(block);
        }

        @Override
        public void force() {}
    }
}
