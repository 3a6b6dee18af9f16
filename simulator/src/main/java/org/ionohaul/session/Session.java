package org.ionohaul.session;

import org.ionohaul.engine.Engine;
import org.ionohaul.link.Link;
import org.ionohaul.link.Medium;
import org.ionohaul.link.PairEther;

/** One session, from the operator pressing send to the end. Runs once. */
public final class Session {
    private static final int STATIONS = 2;

    private final SessionBooks books;
    private final Engine engine;
    private final NearStation near;

    /** Sets up both stations, quiet, at time zero. */
    public Session(SessionParts parts) {
        books = new SessionBooks(parts);
        engine = new Engine();
        Medium medium = new Medium(engine, parts.ether(), STATIONS);
        Link link = new Link(parts.link(), medium, PairEther.NEAR, PairEther.FAR, books);
        near = new NearStation(link, parts, books);
        new FarStation(link, parts, books);
    }

    /**
     * Presses send and runs until both stations are at rest or the horizon comes.
     *
     * @param horizonNanos how long to watch, in nanoseconds, positive
     * @throws IllegalStateException if both stations wait for ever: a fault of the protocol
     */
    public SessionResult run(long horizonNanos) {
        if (horizonNanos <= 0) {
            throw new IllegalArgumentException("horizonNanos must be positive: " + horizonNanos);
        }
        near.pressSend();
        engine.runUntil(horizonNanos);
        if (!near.hasEnded() && engine.pending() == 0) {
            throw new IllegalStateException("nothing more can happen at " + engine.nowNanos() + " ns: " + near);
        }
        return books.result(horizonNanos, near.endingAtHorizon());
    }
}
