package org.ionohaul.cli;

import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.ionohaul.study.StudyProgress;

/** A bar that grows while trials run, on the error stream if a person watches it there, else nothing. */
final class TrialProgress {
    private static final int WIDTH = 78;
    private static final int UPDATE_MILLIS = 100;

    private TrialProgress() {}

    /** A piece of work that reports its progress. */
    @FunctionalInterface
    interface Work<T> {
        /** Does the work. */
        T run(StudyProgress progress);
    }

    /** Does the work under a bar, which is gone when it is done. */
    static <T> T during(String task, int trials, Work<T> work) {
        if (!Watched.ERROR.isTerminal()) {
            return work.run((done, asked) -> {});
        }
        try (ProgressBar bar = bar(task, trials)) {
            return work.run((done, asked) -> bar.stepTo(done));
        }
    }

    private static ProgressBar bar(String task, int trials) {
        return new ProgressBarBuilder()
                .setTaskName(task)
                .setUnit(" trials", 1)
                .setInitialMax(trials)
                .setStyle(ProgressBarStyle.ASCII)
                .setUpdateIntervalMillis(UPDATE_MILLIS)
                .clearDisplayOnFinish()
                .setConsumer(new ConsoleProgressBarConsumer(System.err, WIDTH))
                .build();
    }
}
