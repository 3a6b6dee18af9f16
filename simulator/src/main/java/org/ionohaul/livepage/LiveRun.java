package org.ionohaul.livepage;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import org.ionohaul.analysis.Rerun;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.report.AtAGlance;
import org.ionohaul.report.ShownRace;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Understood;
import org.ionohaul.study.RowStore;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.StudyRunner;
import org.ionohaul.trial.Trials;

/** The study of one setting while its trials come in. One thread works on it; any may look at what there is. */
final class LiveRun {
    /** So many trials make the first picture: few, so that it comes at once. */
    private static final int FIRST = 4;

    private static final int STEP = 10;

    /** From then on each picture has a fifth more trials than the one before: sharper beyond what eyes would miss. */
    private static final int FIFTH = 5;

    private final Understood understood;
    private final ModeOrder palette;
    private final RowStore rows = RowStore.nameless();
    private Optional<Trials> trials = Optional.empty();
    private volatile Optional<Seen> seen = Optional.empty();
    private volatile Optional<String> failure = Optional.empty();
    private volatile boolean isOver;

    /**
     * What its trials come to so far.
     *
     * @param result the trials
     * @param summary what they come to
     * @param order the colours of its modes
     * @param glance the same in words
     * @param races pictures that were asked for
     */
    record Seen(
            StudyResult result,
            StudySummary summary,
            ModeOrder order,
            AtAGlance glance,
            Rerun rerun,
            Map<Integer, ShownRace> races) {
        static Seen of(StudyResult result, ModeOrder palette, Rerun rerun) {
            StudySummary summary = StudySummary.of(result);
            ModeOrder order = palette.among(
                    result.scenario().modes().stream().map(Mode::title).toList());
            return new Seen(
                    result, summary, order, AtAGlance.of(result, summary, order), rerun, new ConcurrentHashMap<>());
        }

        /** Returns the race of a case; the trial in it is run again for that. */
        ShownRace race(int place) {
            return races.computeIfAbsent(place, it -> ShownRace.of(result, summary, it, rerun));
        }
    }

    /**
     * Prepares it.
     *
     * @param palette the colours of all modes that any setting may have
     */
    LiveRun(Understood understood, ModeOrder palette) {
        this.understood = understood;
        this.palette = palette;
    }

    /** Returns what is simulated, and what is odd about it. */
    Understood understood() {
        return understood;
    }

    /** Returns what there is to see; empty before the first trials are done. */
    Optional<Seen> seen() {
        return seen;
    }

    /** Returns why it can't go on; empty if it can. */
    Optional<String> failure() {
        return failure;
    }

    /** Returns whether there is nothing left to do. */
    boolean isOver() {
        return isOver;
    }

    /** Returns how many trials are done. */
    int trialsDone() {
        return seen.map(it -> it.result().trialsDone()).orElse(0);
    }

    /**
     * Runs trials until there is something new to see.
     *
     * @param isCancelled asked before each trial whether to stop; what is done then is kept
     */
    void goOn(int threads, BooleanSupplier isCancelled) {
        try {
            Trials prepared = trials.orElseGet(() -> new Trials(understood.scenario()));
            trials = Optional.of(prepared);
            Scenario next = understood.scenario().tried(goal());
            StudyResult result =
                    new StudyRunner(next, prepared::run, threads, (done, asked) -> {}, isCancelled).run(rows);
            if (result.trialsDone() > trialsDone()) {
                Rerun rerun = seen.map(Seen::rerun).orElseGet(() -> Rerun.of(understood.scenario()));
                seen = Optional.of(Seen.of(result, palette, rerun));
            }
            isOver = trialsDone() >= most();
        } catch (RuntimeException e) {
            failure = Optional.of(String.valueOf(e.getMessage()));
            isOver = true;
        }
    }

    private int goal() {
        int done = trialsDone();
        return Math.min(done == 0 ? understood.scenario().trials() : most(), next(done));
    }

    /** Returns how many trials the picture after one of so many has. */
    static int next(int done) {
        return done == 0 ? FIRST : (done / STEP + Math.max(1, done / FIFTH / STEP)) * STEP;
    }

    /** Returns how many trials it may have: what the scenario says, as far as they stay in memory. */
    private int most() {
        return (int) Math.min(understood.scenario().trials(), (long) rows.trials() + rows.roomInMemory());
    }
}
