package org.ionohaul.engine;

/** What happens at an instant of simulated time. */
@FunctionalInterface
public interface Action {
    /** Runs once, when the engine's clock stands at the instant it was scheduled for. */
    void run();
}
