package org.ionohaul.session;

import org.ionohaul.link.Burst;
import org.ionohaul.link.Link;
import org.ionohaul.link.Message;
import org.ionohaul.link.OverSender;
import org.ionohaul.link.Station;

/** One station's files on their way out: offers each, sends it from the byte the other end wants, waits for the last
 * acknowledgement, and goes on to the next. */
final class FileSender implements OverSender.Fate {
    /** What can become of the files. */
    interface Owner {
        /** The other end holds every file, and this one knows it. */
        void onAllConfirmed();

        /** The other end no longer answers. */
        void onLinkLost();
    }

    private enum State {
        QUIET,
        OFFERING,
        SENDING
    }

    private final Station station;
    private final Cargo cargo;
    private final Owner owner;
    private final SessionBooks books;
    private final OverSender overs;
    private final Exchange offer;
    private State state = State.QUIET;
    private int file;

    FileSender(Link link, Station station, SessionParts parts, Owner owner, SessionBooks books) {
        this.station = station;
        this.owner = owner;
        this.books = books;
        cargo = parts.cargo();
        overs = new OverSender(link, station, parts.ratePolicies().get(), this);
        offer = new Exchange(station, parts.rules().controlAttempts());
        file = cargo.firstFrom(station.end());
    }

    /** Returns whether every file of this station is confirmed. */
    boolean isDone() {
        return file == cargo.endFrom(station.end());
    }

    /**
     * Begins, as the answer to a burst just heard, with the first file not confirmed.
     *
     * @param extraNanos how much longer than needed to wait for the first acceptance
     */
    void begin(long extraNanos) {
        if (isDone()) {
            state = State.QUIET;
            owner.onAllConfirmed();
        } else {
            state = State.OFFERING;
            offer.open(Message.OFFER, file, cargo.bytes(file), Message.ACCEPT, extraNanos);
        }
    }

    /** The other end asks once more for what is already offered. */
    void onRequestRepeated() {
        if (state == State.OFFERING) {
            offer.repeatAsAnswer();
        }
    }

    /** Returns how many bytes of its files, in their order, this station knows to be at the other end. */
    long acknowledgedBytes() {
        long bytes = isDone() ? 0 : overs.acknowledgedBytes(file);
        for (int earlier = cargo.firstFrom(station.end()); earlier < file; earlier++) {
            bytes += cargo.bytes(earlier);
        }
        return bytes;
    }

    void fallQuiet() {
        state = State.QUIET;
    }

    void onBurst(Burst burst) {
        if (state == State.OFFERING && offer.isAnsweredBy(burst)) {
            onAccept(burst.bytes());
        } else if (state == State.SENDING && burst.message() == Message.ACKNOWLEDGEMENT) {
            overs.onAcknowledgement(burst);
        }
    }

    private void onAccept(long fromByte) {
        if (fromByte == cargo.bytes(file)) {
            onAllAcknowledged();
        } else {
            state = State.SENDING;
            overs.begin(file, cargo.bytes(file), fromByte);
        }
    }

    void onSilence() {
        if (state == State.SENDING) {
            overs.onSilence();
        } else if (state == State.OFFERING && !offer.repeats()) {
            onLost();
        }
    }

    @Override
    public void onAllAcknowledged() {
        books.onConfirmed(file, station.nowNanos());
        file++;
        begin(0);
    }

    @Override
    public void onLost() {
        state = State.QUIET;
        owner.onLinkLost();
    }
}
