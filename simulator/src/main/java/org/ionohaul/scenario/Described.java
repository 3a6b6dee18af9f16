package org.ionohaul.scenario;

import org.ionohaul.limits.OutOfRange;

/** Something that is known up to the scenario's uncertain inputs. */
@FunctionalInterface
interface Described<T> {
    /** Returns what it is in one trial. */
    T in(Draws draws);

    /**
     * Returns this after trying it at the middle and at both ends of what can be drawn, so that a limit which only some
     * trials would break is found before any runs.
     *
     * @throws OutOfRange if it breaks one
     */
    default Described<T> tried() {
        in(key -> 0.5);
        in(key -> Math.ulp(0.5));
        in(key -> Math.nextDown(1.0));
        return this;
    }
}
