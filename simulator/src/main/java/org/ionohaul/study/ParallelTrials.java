package org.ionohaul.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import org.ionohaul.session.SessionResult;

/**
 * Runs the trials that a store still lacks, on several threads.
 *
 * <p>Threads take the next trial from a counter; what they find is stored in order of trial number, so that the result
 * depends on the source and on nothing else: not on how many threads there are nor on which is faster. A thread waits only
 * where it is so far ahead of the slowest trial that memory would grow. When cancelled, the store holds the unbroken run
 * of trials from the first on. When a trial fails, no other is begun.
 */
final class ParallelTrials {
    /** How many trials may be done before the one that all wait for; a few blocks, and enough for many threads. */
    private static final int FARTHEST_AHEAD = 1000;

    private final TrialSource source;
    private final RowStore rows;
    private final int to;
    private final int asked;
    private final StudyProgress progress;
    private final BooleanSupplier isCancelled;

    // What follows is shared by the threads and guarded by this object's monitor.
    private final Map<Integer, List<byte[]>> waiting = new HashMap<>();
    private final List<List<byte[]>> block = new ArrayList<>();
    private Optional<RuntimeException> failure = Optional.empty();
    private boolean isOver;
    private boolean isInterrupted;
    private int next;
    private int inOrder;
    private int finished;
    private int atWork;

    /**
     * Prepares the trials that a store lacks.
     *
     * @param rows where they go
     * @param to how many there shall be
     * @param asked how many to speak of to the listener
     */
    ParallelTrials(
            TrialSource source, RowStore rows, int to, int asked, StudyProgress progress, BooleanSupplier isCancelled) {
        this.source = source;
        this.rows = rows;
        this.to = to;
        this.asked = asked;
        this.progress = progress;
        this.isCancelled = isCancelled;
        this.next = rows.trials();
        this.inOrder = rows.trials();
        this.finished = rows.trials();
    }

    /**
     * Runs them.
     *
     * @throws IllegalStateException if a trial fails; the message names it
     * @throws NoRoomForTrials if there is no room for so many rows
     */
    synchronized void run(int threads) {
        atWork = threads;
        for (int i = 0; i < threads; i++) {
            Thread thread = new Thread(this::work, "trials-" + i);
            // A trial that is not done yet must not hold up the end of a program that failed in another.
            thread.setDaemon(true);
            thread.start();
        }
        while (atWork > 0 && failure.isEmpty()) {
            pause();
        }
        if (isInterrupted) {
            Thread.currentThread().interrupt();
        }
        if (failure.isPresent()) {
            throw failure.get();
        }
        store();
    }

    private void work() {
        try {
            for (OptionalInt trial = take(); trial.isPresent(); trial = take()) {
                file(trial.getAsInt(), rows(trial.getAsInt()));
            }
        } catch (RuntimeException e) {
            fail(e);
        } finally {
            leave();
        }
    }

    /** Returns the next trial to run; empty if there is none, one failed or the study is cancelled. */
    private synchronized OptionalInt take() {
        while (!isOver && next >= inOrder + FARTHEST_AHEAD) {
            pause();
        }
        isOver = isOver || next >= to || isCancelled.getAsBoolean();
        return isOver ? OptionalInt.empty() : OptionalInt.of(next++);
    }

    private List<byte[]> rows(int trial) {
        try {
            List<SessionResult> results = source.run(trial);
            return results.stream().map(it -> TrialRow.packed(trial, it)).toList();
        } catch (RuntimeException | Error e) {
            // An Error too: the other threads must hear of it.
            throw new IllegalStateException("trial " + trial + " failed: " + e.getMessage(), e);
        }
    }

    private synchronized void file(int trial, List<byte[]> results) {
        if (failure.isPresent()) {
            return;
        }
        waiting.put(trial, results);
        for (List<byte[]> ready = waiting.remove(inOrder); ready != null; ready = waiting.remove(inOrder)) {
            block.add(ready);
            inOrder++;
            if (block.size() == RowStore.TRIALS_A_BLOCK) {
                store();
            }
        }
        finished++;
        progress.onTrialDone(finished, asked);
        notifyAll();
    }

    private void store() {
        rows.append(block);
        block.clear();
    }

    private synchronized void fail(RuntimeException cause) {
        if (failure.isEmpty()) {
            failure = Optional.of(cause);
        }
        isOver = true;
        notifyAll();
    }

    private synchronized void leave() {
        isOver = true;
        atWork--;
        notifyAll();
    }

    /** Waits until something changes; every caller asks again what it waits for. */
    @SuppressWarnings("WaitNotInLoop")
    private synchronized void pause() {
        try {
            wait();
        } catch (InterruptedException e) {
            isOver = true;
            isInterrupted = true;
        }
    }
}
