package org.ionohaul.study;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.ionohaul.session.SessionResult;

/**
 * Runs a range of trials on several threads.
 *
 * <p>Threads take the next trial from a counter and file what they find under its number, so that the result depends on
 * the source and on nothing else: not on how many threads there are nor on which is faster. When cancelled it returns
 * the unbroken run of trials from the first on.
 */
final class ParallelTrials {
    private final TrialSource source;
    private final int from;
    private final int to;
    private final int asked;
    private final StudyProgress progress;
    private final BooleanSupplier isCancelled;
    private final AtomicInteger next;
    private final AtomicReferenceArray<List<byte[]>> done;
    private final AtomicBoolean isFailed = new AtomicBoolean();
    private int finished;

    /** Prepares the trials from {@code from} to below {@code to}, out of {@code asked}. */
    ParallelTrials(
            TrialSource source, int from, int to, int asked, StudyProgress progress, BooleanSupplier isCancelled) {
        this.source = source;
        this.from = from;
        this.to = to;
        this.asked = asked;
        this.progress = progress;
        this.isCancelled = isCancelled;
        this.next = new AtomicInteger(from);
        this.done = new AtomicReferenceArray<>(to - from);
        this.finished = from;
    }

    /** Returns the bytes of each row of each trial done, in order of trial number. */
    List<List<byte[]>> run(int threads) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            CompletableFuture.allOf(IntStream.range(0, threads)
                            .mapToObj(i -> CompletableFuture.runAsync(this::work, pool))
                            .toArray(CompletableFuture<?>[]::new))
                    .join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof IllegalStateException failure ? failure : e;
        } finally {
            pool.shutdownNow();
        }
        return unbroken();
    }

    private void work() {
        while (!isCancelled.getAsBoolean() && !isFailed.get()) {
            int trial = next.getAndIncrement();
            if (trial >= to) {
                return;
            }
            done.set(trial - from, rows(trial));
            announce();
        }
    }

    private List<byte[]> rows(int trial) {
        try {
            List<SessionResult> results = source.run(trial);
            return results.stream().map(it -> TrialRow.packed(trial, it)).toList();
        } catch (RuntimeException e) {
            isFailed.set(true);
            throw new IllegalStateException("trial " + trial + " failed: " + e.getMessage(), e);
        }
    }

    private synchronized void announce() {
        finished++;
        progress.onTrialDone(finished, asked);
    }

    private List<List<byte[]>> unbroken() {
        return IntStream.range(0, to - from)
                .mapToObj(done::get)
                .takeWhile(rows -> rows != null)
                .toList();
    }
}
