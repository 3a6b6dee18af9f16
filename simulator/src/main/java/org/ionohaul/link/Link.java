package org.ionohaul.link;

import org.ionohaul.channel.End;
import org.ionohaul.engine.Engine;

/** Two stations that work each other on a medium, which others may share. */
public final class Link {
    private final LinkSetup setup;
    private final Station near;
    private final Station far;

    /**
     * Sets up two quiet stations.
     *
     * @param parts what the link is made of
     * @param medium what carries it
     * @param nearNumber number on the medium of the station that dials
     * @param farNumber number of the station that is called
     * @param trace who watches
     */
    public Link(LinkParts parts, Medium medium, int nearNumber, int farNumber, LinkTrace trace) {
        Timing timing = new Timing(
                parts.mode(),
                parts.near().times(),
                parts.far().times(),
                medium.propagationNanos(nearNumber, farNumber));
        setup = new LinkSetup(parts, medium, timing, new Demodulator(parts.mode(), parts.chances()), trace);
        near = new Station(setup, End.NEAR, nearNumber, farNumber);
        far = new Station(setup, End.FAR, farNumber, nearNumber);
    }

    /** Returns the engine that runs both stations. */
    public Engine engine() {
        return setup.medium().engine();
    }

    /** Lets both stations hear nothing from now on: another link may take their places. */
    public void leave() {
        near.withdraw();
        far.withdraw();
    }

    /** Returns the station at an end. */
    public Station station(End end) {
        return end == End.NEAR ? near : far;
    }

    /** Returns what both stations work. */
    public ModeSpec mode() {
        return setup.mode();
    }

    /** Returns who watches. */
    public LinkTrace trace() {
        return setup.trace();
    }

    /** Returns how long the steps of its cycles last. */
    public Timing timing() {
        return setup.timing();
    }
}
