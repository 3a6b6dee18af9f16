package org.ionohaul.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.ionohaul.study.StudyProgress;
import picocli.CommandLine.Help.Ansi;

/** A bar that grows while trials run, on the error stream if a person watches it there, else nothing. */
final class TrialProgress {
    private static final int WIDTH = 78;
    private static final int UPDATE_MILLIS = 100;
    /** Where Linux says what the error stream is connected to; Java 17 itself cannot tell. */
    private static final Path ERROR_STREAM = Path.of("/proc/self/fd/2");

    private TrialProgress() {}

    /** A piece of work that reports its progress. */
    @FunctionalInterface
    interface Work<T> {
        /** Does the work. */
        T run(StudyProgress progress);
    }

    /** Does the work under a bar, which is gone when it is done. */
    static <T> T during(String task, int trials, Work<T> work) {
        if (!isWatched()) {
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

    private static boolean isWatched() {
        try {
            String target = Files.readSymbolicLink(ERROR_STREAM).toString();
            return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty") || target.equals("/dev/console");
        } catch (IOException | UnsupportedOperationException e) {
            return Ansi.AUTO.enabled();
        }
    }
}
