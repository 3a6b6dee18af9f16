package org.ionohaul.onair;

/** One evening's sky, under which runs are made one after another. Belongs to one thread. */
@FunctionalInterface
public interface Evening {
    /**
     * Makes one run. What comes of it depends on the evening and on what is said here alone.
     *
     * @param mode which mode, by its place among those compared
     * @param repeat how many runs of that mode came before it on this evening
     * @param startNanos when the operator presses send, in nanoseconds since the evening's sky began
     */
    Run run(int mode, int repeat, long startNanos);
}
