package org.ionohaul.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.IntFunction;

/**
 * Runs the trials that a store still lacks, on several threads.
 *
 * <p>Threads take the next trial from a counter; what they find is stored in order of trial number, so that the result
 * depends on the source and on nothing else: not on how many threads there are nor on which is faster. A thread waits only
 * where it is so far ahead of the slowest trial that memory would grow. When cancelled, the store holds the unbroken run
 * of trials from the first on. When a trial fails, no other is begun.
 *
 * @param <R> what a trial comes to
 */
final class ParallelTrials<R> {
    /** How many trials may be done before the one that all wait for; a few blocks, and enough for many threads. */
    private static final int FARTHEST_AHEAD = 1000;

    /** How often what is done is brought to the disk, so that not even a power cut costs more. */
    private static final long KEPT_EVERY_MILLIS = 2000;

    private final IntFunction<R> source;
    private final TrialSink<R> sink;
    private final int to;
    private final int asked;
    private final StudyProgress progress;
    private final BooleanSupplier isCancelled;

    // What follows is shared by the threads and guarded by this object's monitor.
    private final Map<Integer, R> waiting = new HashMap<>();
    private final List<R> block = new ArrayList<>();
    private Optional<Throwable> failure = Optional.empty();
    private boolean isOver;
    private int next;
    private int inOrder;
    private int finished;

    /**
     * Prepares the trials that a store lacks.
     *
     * @param source runs a trial; called from several threads at once
     * @param sink where they go
     * @param to how many there shall be
     * @param asked how many to speak of to the listener
     */
    ParallelTrials(
            IntFunction<R> source,
            TrialSink<R> sink,
            int to,
            int asked,
            StudyProgress progress,
            BooleanSupplier isCancelled) {
        this.source = source;
        this.sink = sink;
        this.to = to;
        this.asked = asked;
        this.progress = progress;
        this.isCancelled = isCancelled;
        this.next = sink.trials();
        this.inOrder = sink.trials();
        this.finished = sink.trials();
    }

    /**
     * Runs them.
     *
     * @throws IllegalStateException if a trial fails; the message names it
     * @throws NoRoomForTrials if there is no room for so many rows
     */
    void run(int threads) {
        CountDownLatch working = new CountDownLatch(threads);
        try {
            for (int i = 0; i < threads; i++) {
                Thread thread = new Thread(() -> work(working), "trials-" + i);
                // A trial that is not done yet must not hold up the end of a program that failed in another.
                thread.setDaemon(true);
                thread.start();
            }
            awaitAll(working);
            keep();
        } finally {
            stop();
        }
    }

    /** Waits for all threads or the first failure, and meanwhile sees that what is done outlives the program. */
    private void awaitAll(CountDownLatch working) {
        boolean isInterrupted = false;
        boolean isWorking = true;
        while (isWorking) {
            try {
                isWorking = !working.await(KEPT_EVERY_MILLIS, TimeUnit.MILLISECONDS);
            } catch (InterruptedException e) {
                isInterrupted = true;
                stop();
            }
            throwFailure();
            keep();
        }
        if (isInterrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private synchronized void throwFailure() {
        if (failure.isPresent()) {
            throw failure.get() instanceof RuntimeException told
                    ? told
                    : new IllegalStateException("failed between trials: " + failure.get(), failure.get());
        }
    }

    private void keep() {
        store();
        // Outside the monitor, so that no thread waits for the disk.
        sink.force();
    }

    private void work(CountDownLatch working) {
        try {
            for (OptionalInt trial = take(); trial.isPresent(); trial = take()) {
                file(trial.getAsInt(), result(trial.getAsInt()));
            }
            working.countDown();
        } catch (RuntimeException | Error e) {
            fail(working, e);
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

    private R result(int trial) {
        try {
            return source.apply(trial);
        } catch (RuntimeException | Error e) {
            // An Error too: the other threads must hear of it.
            throw new IllegalStateException("trial " + trial + " failed: " + e.getMessage(), e);
        }
    }

    private synchronized void file(int trial, R result) {
        if (failure.isPresent()) {
            return;
        }
        waiting.put(trial, result);
        for (R ready = waiting.remove(inOrder); ready != null; ready = waiting.remove(inOrder)) {
            block.add(ready);
            inOrder++;
            if (block.size() >= sink.trialsABlock()) {
                store();
            }
        }
        finished++;
        progress.onTrialDone(finished, asked);
        notifyAll();
    }

    private synchronized void store() {
        sink.append(block);
        block.clear();
    }

    private synchronized void fail(CountDownLatch working, Throwable cause) {
        if (failure.isEmpty()) {
            failure = Optional.of(cause);
        }
        stop();
        // Who waits for all is told at once, not when the last is done.
        while (working.getCount() > 0) {
            working.countDown();
        }
    }

    private synchronized void stop() {
        isOver = true;
        notifyAll();
    }

    /** Waits until something changes; every caller asks again what it waits for. */
    @SuppressWarnings("WaitNotInLoop")
    private synchronized void pause() {
        try {
            wait();
        } catch (InterruptedException e) {
            stop();
        }
    }
}
