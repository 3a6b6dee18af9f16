package org.ionohaul.engine;

import java.util.Arrays;

/**
 * A discrete-event engine: a clock in {@code long} nanoseconds since the start of the trial and a list of actions to run.
 *
 * <p>Actions due at the same instant run in the order in which they were scheduled, so a run is a pure function of its
 * inputs. The event list is a binary heap in plain arrays: nothing is allocated per event once the arrays have grown.
 * It knows nothing of radio, takes no wall-clock time and is not safe for use by several threads.
 */
public final class Engine {
    private static final int INITIAL_CAPACITY = 64;

    private long[] timesNanos = new long[INITIAL_CAPACITY];
    private long[] orders = new long[INITIAL_CAPACITY];
    private Action[] actions = new Action[INITIAL_CAPACITY];
    private int size;
    private long nextOrder;
    private long nowNanos;

    /** Returns the simulated time, in nanoseconds since the trial began. */
    public long nowNanos() {
        return nowNanos;
    }

    /**
     * Schedules an action.
     *
     * @param delayNanos how long from now, in nanoseconds, zero or more
     * @param action what to run
     * @throws IllegalArgumentException if the delay is negative
     * @throws ArithmeticException if the instant lies beyond the range of the clock
     */
    public void schedule(long delayNanos, Action action) {
        push(delayNanos, action);
    }

    /** Returns a timer of this engine that runs the action each time it expires; it is not yet started. */
    public Timer timer(Action action) {
        return new Timer(this, action);
    }

    /** Runs every action in order of time until none is left. */
    public void run() {
        runUntil(Long.MAX_VALUE);
    }

    /**
     * Runs every action due at or before the instant. Afterwards the clock stands at the last action run if the list is
     * empty, else at the instant; later actions stay scheduled.
     *
     * @param untilNanos the last instant to run, in nanoseconds since the trial began
     */
    public void runUntil(long untilNanos) {
        while (size > 0 && timesNanos[0] <= untilNanos) {
            runFirst();
        }
        if (size > 0) {
            nowNanos = Math.max(nowNanos, untilNanos);
        }
    }

    /** Returns how many actions are scheduled, cancelled timers included until their instant has passed. */
    public int pending() {
        return size;
    }

    /** Schedules and returns the order number under which the action was filed. */
    long push(long delayNanos, Action action) {
        if (delayNanos < 0) {
            throw new IllegalArgumentException("delayNanos must not be negative: " + delayNanos);
        }
        long atNanos = Math.addExact(nowNanos, delayNanos);
        if (size == timesNanos.length) {
            grow();
        }
        siftUp(size++, atNanos, nextOrder, action);
        return nextOrder++;
    }

    private void runFirst() {
        long order = orders[0];
        Action action = actions[0];
        nowNanos = timesNanos[0];
        removeFirst();
        if (!(action instanceof Timer timer) || timer.isArmedAs(order)) {
            action.run();
        }
    }

    private void removeFirst() {
        int last = --size;
        long time = timesNanos[last];
        long order = orders[last];
        Action action = actions[last];
        actions[last] = Engine::nothing;
        if (last > 0) {
            siftDown(time, order, action);
        }
    }

    private static void nothing() {}

    private void siftUp(int start, long time, long order, Action action) {
        int hole = start;
        while (hole > 0) {
            int parent = (hole - 1) >>> 1;
            if (isBefore(timesNanos[parent], orders[parent], time, order)) {
                break;
            }
            move(parent, hole);
            hole = parent;
        }
        put(hole, time, order, action);
    }

    private void siftDown(long time, long order, Action action) {
        int hole = 0;
        for (int child = 1; child < size; child = 2 * hole + 1) {
            int right = child + 1;
            if (right < size && isBefore(timesNanos[right], orders[right], timesNanos[child], orders[child])) {
                child = right;
            }
            if (isBefore(time, order, timesNanos[child], orders[child])) {
                break;
            }
            move(child, hole);
            hole = child;
        }
        put(hole, time, order, action);
    }

    private static boolean isBefore(long time, long order, long otherTime, long otherOrder) {
        return time < otherTime || (time == otherTime && order < otherOrder);
    }

    private void move(int from, int to) {
        put(to, timesNanos[from], orders[from], actions[from]);
    }

    private void put(int at, long time, long order, Action action) {
        timesNanos[at] = time;
        orders[at] = order;
        actions[at] = action;
    }

    private void grow() {
        int capacity = Math.multiplyExact(size, 2);
        timesNanos = Arrays.copyOf(timesNanos, capacity);
        orders = Arrays.copyOf(orders, capacity);
        actions = Arrays.copyOf(actions, capacity);
    }
}
