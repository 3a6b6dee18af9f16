package org.ionohaul.link;

import org.ionohaul.channel.End;
import org.ionohaul.engine.Engine;

/** Two stations, the air between them, and the engine that runs them. */
public final class Link {
    private final Engine engine = new Engine();
    private final LinkParts parts;
    private final LinkTrace trace;
    private final Timing timing;
    private final Air air;
    private final Station near;
    private final Station far;

    /**
     * Sets up two quiet stations at time zero.
     *
     * @param parts what the link is made of
     * @param trace who watches
     */
    public Link(LinkParts parts, LinkTrace trace) {
        this.parts = parts;
        this.trace = trace;
        timing = new Timing(parts);
        air = new Air(parts);
        near = new Station(this, End.NEAR);
        far = new Station(this, End.FAR);
    }

    /** Returns the engine that runs both stations. */
    public Engine engine() {
        return engine;
    }

    /** Returns the station at an end. */
    public Station station(End end) {
        return end == End.NEAR ? near : far;
    }

    /** Returns what the link is made of. */
    public LinkParts parts() {
        return parts;
    }

    /** Returns who watches. */
    public LinkTrace trace() {
        return trace;
    }

    Air air() {
        return air;
    }

    /** Returns how long the steps of its cycles last. */
    public Timing timing() {
        return timing;
    }
}
