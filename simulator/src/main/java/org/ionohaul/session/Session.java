package org.ionohaul.session;

import org.ionohaul.channel.End;
import org.ionohaul.engine.Engine;
import org.ionohaul.link.Link;
import org.ionohaul.link.Medium;
import org.ionohaul.link.PairEther;

/**
 * One session, from the operator pressing send to the end. Runs once: alone, or among others on a medium and an engine that they
 * share.
 */
public final class Session {
    private static final int STATIONS = 2;

    private final SessionBooks books;
    private final Engine engine;
    private final Link link;
    private final NearStation near;
    private final FarStation far;

    /** Sets up both stations, quiet, at time zero. */
    public Session(SessionParts parts) {
        this(
                parts,
                new Medium(new Engine(), parts.ether(), STATIONS),
                PairEther.NEAR,
                PairEther.FAR,
                Doorkeeper.ALWAYS_OPEN);
    }

    /**
     * Sets up both stations, quiet, on a medium that others may use as well, at its engine's time.
     *
     * @param nearNumber number on the medium of the station that dials
     * @param farNumber number of the station that is called
     * @param doorkeeper what that station does about its caller
     */
    public Session(SessionParts parts, Medium medium, int nearNumber, int farNumber, Doorkeeper doorkeeper) {
        engine = medium.engine();
        books = new SessionBooks(parts, medium.propagationNanos(nearNumber, farNumber), engine.nowNanos());
        link = new Link(parts.link(), medium, nearNumber, farNumber, books);
        near = new NearStation(link, parts, books);
        far = new FarStation(link, parts, books, doorkeeper);
    }

    /** Presses send; the engine runs the rest. */
    public void pressSend() {
        near.pressSend();
    }

    /** Returns whether it is over for the station that dialled, with nothing left to send. */
    public boolean hasEnded() {
        return near.hasEnded() && link.station(End.NEAR).isQuiet();
    }

    /** Returns whether the station that was called minds nothing of it any more, with nothing left to send. */
    public boolean isFarAtRest() {
        return far.isResting() && link.station(End.FAR).isQuiet();
    }

    /** Lets the station that was called mind nothing of it any more, at once and without a word. */
    public void breakOffFar() {
        far.breakOff();
    }

    /** Lets neither station hear the other any more: a new session may begin in its place. */
    public void leave() {
        link.leave();
    }

    /**
     * Returns what it has come to.
     *
     * @param atNanos the engine's time at which it is looked at, in nanoseconds
     */
    public SessionResult result(long atNanos) {
        return books.result(atNanos, near.endingAtHorizon());
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
        pressSend();
        engine.runUntil(horizonNanos);
        if (!near.hasEnded() && engine.pending() == 0) {
            throw new IllegalStateException("nothing more can happen at " + engine.nowNanos() + " ns: " + near);
        }
        return result(horizonNanos);
    }
}
