package org.ionohaul.engine;

/**
 * A reusable alarm: started, it runs its action after a delay unless it is stopped or started anew before.
 *
 * <p>Made once and started as often as needed, so that protocol code allocates nothing per event. Stopping costs
 * nothing: the engine drops the stale entry when its instant comes.
 */
public final class Timer implements Action {
    private static final long STOPPED = -1;

    private final Engine engine;
    private final Action action;
    private long armedOrder = STOPPED;

    Timer(Engine engine, Action action) {
        this.engine = engine;
        this.action = action;
    }

    /**
     * Starts the timer, or starts it anew if it runs already.
     *
     * @param delayNanos how long from now, in nanoseconds, zero or more
     * @throws IllegalArgumentException if the delay is negative
     * @throws ArithmeticException if the instant lies beyond the range of the clock
     */
    public void start(long delayNanos) {
        armedOrder = engine.push(delayNanos, this);
    }

    /** Stops the timer; does nothing if it does not run. */
    public void stop() {
        armedOrder = STOPPED;
    }

    /** Returns whether the timer has been started and has neither expired nor been stopped. */
    public boolean isRunning() {
        return armedOrder != STOPPED;
    }

    /** Called by the engine when the timer expires; not for other callers. */
    @Override
    public void run() {
        armedOrder = STOPPED;
        action.run();
    }

    boolean isArmedAs(long order) {
        return armedOrder == order;
    }
}
