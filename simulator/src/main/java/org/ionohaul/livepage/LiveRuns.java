package org.ionohaul.livepage;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The runs that pages look at, and the one thread that works on them: always on that which has the fewest trials, so that two
 * settings advance together and a new one is seen at once. A page that no longer asks is forgotten, and a run that no page
 * looks at rests.
 *
 * <p>However many pages there are, there are no more than {@value #MOST_PAGES} at work and {@value #MOST_RUNS} runs kept.
 */
final class LiveRuns implements AutoCloseable {
    static final int MOST_PAGES = 4;
    static final int MOST_RUNS = 10;

    /** How often the clock may strike before a page is forgotten that does not ask any more. */
    private static final int PATIENCE = 5;

    private final int threads;
    private final Map<String, Watched> pages = new HashMap<>();
    private final Map<Map<String, String>, LiveRun> runs = new LinkedHashMap<>(16, 0.75f, true);
    private final Thread worker;
    private boolean isClosed;

    /** What a page looks at, and how often the clock may still strike. */
    private record Watched(List<LiveRun> runs, int patience) {}

    LiveRuns(int threads) {
        this.threads = threads;
        this.worker = new Thread(this::work, "live-runs");
        worker.setDaemon(true);
        worker.start();
    }

    /** Returns the run of a setting, if there is one. */
    synchronized Optional<LiveRun> of(Map<String, String> setting) {
        return Optional.ofNullable(runs.get(setting));
    }

    /** Keeps the run of a setting; returns it, or the one that there was already. */
    synchronized LiveRun keep(Map<String, String> setting, LiveRun run) {
        LiveRun kept = runs.computeIfAbsent(setting, it -> run);
        Iterator<LiveRun> oldest = runs.values().iterator();
        while (runs.size() > MOST_RUNS && oldest.hasNext()) {
            LiveRun candidate = oldest.next();
            if (!candidate.equals(kept) && !isWatched(candidate)) {
                oldest.remove();
            }
        }
        return kept;
    }

    /**
     * Says what a page looks at from now on; what it looked at before is left.
     *
     * @param page the page's own name
     * @return whether there is room for it
     */
    synchronized boolean watch(String page, List<LiveRun> wanted) {
        if (!pages.containsKey(page) && pages.size() >= MOST_PAGES) {
            return false;
        }
        pages.put(page, new Watched(List.copyOf(wanted), PATIENCE));
        notifyAll();
        return true;
    }

    /** Lets pages be forgotten that have not asked for some strokes; to be called at even intervals. */
    synchronized void strike() {
        pages.replaceAll((page, watched) -> new Watched(watched.runs(), watched.patience() - 1));
        pages.values().removeIf(it -> it.patience() < 0);
    }

    @Override
    public synchronized void close() {
        isClosed = true;
        notifyAll();
    }

    private synchronized boolean isWatched(LiveRun run) {
        return pages.values().stream().anyMatch(it -> it.runs().contains(run));
    }

    private void work() {
        for (Optional<LiveRun> run = next(); run.isPresent(); run = next()) {
            LiveRun current = run.get();
            int before = current.trialsDone();
            current.goOn(threads, () -> isToYield(current, before));
        }
    }

    private synchronized Optional<LiveRun> next() {
        try {
            while (!isClosed) {
                Optional<LiveRun> next = unfinished().min(Comparator.comparingInt(LiveRun::trialsDone));
                if (next.isPresent()) {
                    return next;
                }
                wait();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return Optional.empty();
    }

    private synchronized boolean isToYield(LiveRun current, int trials) {
        return isClosed || !isWatched(current) || unfinished().anyMatch(it -> it.trialsDone() < trials);
    }

    private Stream<LiveRun> unfinished() {
        return pages.values().stream().flatMap(it -> it.runs().stream()).filter(it -> !it.isOver());
    }
}
