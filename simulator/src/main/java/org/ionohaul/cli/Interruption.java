package org.ionohaul.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/**
 * Ctrl-C: asks the running command to stop, and holds the Java machine open until it has put its results in order.
 *
 * <p>The machine ends with the command's own exit code then, not with that of a signal.
 */
final class Interruption implements BooleanSupplier {
    /** Longest that a command may take to put its results in order. */
    private static final long PATIENCE_SECONDS = 60;

    private final CountDownLatch finished = new CountDownLatch(1);
    private final CountDownLatch asked = new CountDownLatch(1);
    private volatile int exitCode = ExitCode.FAILED;

    private Interruption() {}

    /** Returns one that nobody will ask for. */
    static Interruption never() {
        return new Interruption();
    }

    /** Returns one that listens to the machine's signals. */
    static Interruption watched() {
        Interruption interruption = new Interruption();
        Runtime.getRuntime().addShutdownHook(new Thread(interruption::onShutdown, "interruption"));
        return interruption;
    }

    /** Asks the running command to stop. */
    void ask() {
        asked.countDown();
    }

    /** Returns whether the running command is asked to stop. */
    @Override
    public boolean getAsBoolean() {
        return asked.getCount() == 0;
    }

    /** Waits until the running command is asked to stop. */
    void await() {
        try {
            asked.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Says that the command has put everything in order. */
    void finish(int code) {
        exitCode = code;
        finished.countDown();
    }

    private void onShutdown() {
        boolean wasRunning = finished.getCount() > 0;
        ask();
        try {
            if (wasRunning && finished.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                Runtime.getRuntime().halt(exitCode);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
