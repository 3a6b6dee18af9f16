package org.ionohaul.session;

import java.util.Arrays;
import org.ionohaul.link.Burst;
import org.ionohaul.link.Link;
import org.ionohaul.link.Message;
import org.ionohaul.link.OverReceiver;
import org.ionohaul.link.Station;

/** One station's files on their way in: accepts each from the byte where it stopped, keeps what arrives, and says so. */
final class FileReceiver {
    private static final int NONE = -1;

    private final Station station;
    private final Cargo cargo;
    private final boolean resumes;
    private final SessionBooks books;
    private final OverReceiver overs;
    private final long[] heldBytes;
    private int current = NONE;

    FileReceiver(Link link, Station station, SessionParts parts, SessionBooks books) {
        this.station = station;
        this.books = books;
        cargo = parts.cargo();
        resumes = parts.rules().resumes();
        overs = new OverReceiver(link, station);
        heldBytes = new long[cargo.files()];
    }

    /** Returns whether every file of the other station is held. */
    boolean isDone() {
        int last = cargo.endFrom(station.end().other()) - 1;
        return last < cargo.firstFrom(station.end().other()) || heldBytes[last] == cargo.bytes(last);
    }

    /** Returns how many bytes of the other station's files it holds, of each from its first on without a gap. */
    long heldBytes() {
        return Arrays.stream(heldBytes).sum();
    }

    /**
     * A new link begins: an unfinished file goes on where it stopped, and what was heard of its undecoded frames still
     * counts; or it begins anew and nothing does, as the mode says.
     */
    void onNewLink() {
        if (!resumes) {
            station.forgetUndecoded();
        }
        if (current != NONE && !resumes && heldBytes[current] < cargo.bytes(current)) {
            heldBytes[current] = 0;
        }
        current = NONE;
    }

    /** A file is offered: accept it from the first byte that is missing. */
    void onOffer(Burst burst) {
        current = burst.number();
        overs.begin(current, cargo.bytes(current), heldBytes[current]);
        station.answer(Message.ACCEPT, current, heldBytes[current]);
    }

    /** Frames came: keep them, acknowledge, and see how far the file has got. */
    void onOver(Burst burst) {
        if (burst.number() == current) {
            overs.onOver(burst);
            note(overs.heldInOrderBytes(), overs.rightInOrderBytes());
        }
    }

    /** Something came while a file is being received of which nothing was decoded. */
    void onUnreadable(Burst burst) {
        if (burst.number() == current) {
            overs.onUnreadable(burst);
        }
    }

    /** The sender missed the acknowledgement: acknowledge again. */
    void onPoll(Burst burst) {
        if (burst.number() == current) {
            overs.onPoll();
        }
    }

    private void note(long inOrderBytes, long rightBytes) {
        if (inOrderBytes > heldBytes[current]) {
            heldBytes[current] = inOrderBytes;
            books.onHeld(current, inOrderBytes, rightBytes, station.nowNanos());
        }
    }
}
