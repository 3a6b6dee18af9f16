package org.ionohaul.link;

/**
 * Receives one file over the air: keeps what arrives, recognises what it holds already, and acknowledges each over of
 * which it decoded a frame, and each poll.
 */
public final class OverReceiver {
    private static final long NONE = Long.MAX_VALUE;

    private final Link link;
    private final Station station;
    private final ArqScheme scheme;
    private final boolean measuresSnr;
    private final ByteRanges held = new ByteRanges();
    private int file;
    private long fileBytes;
    private boolean asksFor;
    private boolean asksAgain;
    private long firstWrongByte = NONE;
    private double snrDb = Double.NaN;

    /**
     * Sets up a receiver that holds nothing.
     *
     * @param link the link it works on
     * @param station the station that receives
     */
    public OverReceiver(Link link, Station station) {
        this.link = link;
        this.station = station;
        scheme = link.mode().arq().scheme();
        measuresSnr = link.mode().ratePolicy().usesSnr() || link.trace().wantsSnr();
    }

    /**
     * Begins to receive a file.
     *
     * @param number the file's number
     * @param bytes its size, 1 or more
     * @param fromByte how many of its bytes are held already, from its beginning
     */
    public void begin(int number, long bytes, long fromByte) {
        firstWrongByte = number == file && firstWrongByte < fromByte ? firstWrongByte : NONE;
        file = number;
        fileBytes = bytes;
        asksFor = false;
        asksAgain = false;
        held.setPrefix(fromByte);
        snrDb = Double.NaN;
    }

    /** Returns the number of the file being received. */
    public int file() {
        return file;
    }

    /** Returns how many bytes are held in order, from the beginning of the file. */
    public long heldInOrderBytes() {
        return held.prefixEnd();
    }

    /**
     * Returns how many of them come before the first that is wrong because no check noticed; nobody on the air can know.
     */
    public long rightInOrderBytes() {
        return Math.min(heldInOrderBytes(), firstWrongByte);
    }

    /** An over came in which frames were decoded: keep them and acknowledge. */
    public void onOver(Burst over) {
        switch (scheme) {
            case ALTERNATING -> takeForNext(over);
            case ASKED_REPEAT -> takeIfNext(over);
            default -> takeWanted(over);
        }
        snrDb = measuresSnr ? station.measuredSnrDb(over) : Double.NaN;
        acknowledge();
    }

    private void takeWanted(Burst over) {
        for (int frame = 0; frame < over.frames(); frame++) {
            if (over.isDecoded(frame) && isWanted(over.frameStart(frame))) {
                noteWrong(over, frame);
                held.add(over.frameStart(frame), over.frameEnd(frame));
            }
        }
    }

    private void takeIfNext(Burst over) {
        takeWanted(over);
        asksAgain = !isWanted(over.frameStart(0));
        asksFor = asksAgain == over.turn();
    }

    /**
     * Without a number a frame is taken for the one that was asked for, whatever it is: if a control signal was taken for the
     * other, it is the one before or a later one, and from there on the file is wrong.
     */
    private void takeForNext(Burst over) {
        long next = held.prefixEnd();
        if (over.frameStart(0) == next) {
            noteWrong(over, 0);
        } else if (next < fileBytes) {
            noteWrongFrom(next);
        }
        held.add(next, over.frameEnd(0));
        asksFor = !asksFor;
        asksAgain = false;
    }

    /** Bytes that are held already stay as they are. */
    private void noteWrong(Burst over, int frame) {
        long fromByte = held.firstMissing(over.frameStart(frame));
        if (over.isWrong(frame) && fromByte < over.frameEnd(frame)) {
            noteWrongFrom(fromByte);
        }
    }

    private void noteWrongFrom(long fromByte) {
        firstWrongByte = Math.min(firstWrongByte, fromByte);
        link.trace().onWrongFrame(station.end(), fromByte, station.nowNanos());
    }

    /** Something came of which nothing was decoded, in the other end's turn: ask for it again. */
    public void onUnreadable(Burst burst) {
        asksAgain |= burst.message() == Message.OVER;
        asksFor = scheme == ArqScheme.ALTERNATING ? asksFor : burst.turn();
        acknowledge();
    }

    /** The sender asks what is held: acknowledge again. */
    public void onPoll() {
        acknowledge();
    }

    /** Without selective repeat a receiver drops what comes out of order. */
    private boolean isWanted(long start) {
        return scheme == ArqScheme.SELECTIVE_REPEAT || start <= held.prefixEnd();
    }

    private void acknowledge() {
        station.outgoing().acknowledge(file, held, scheme, snrDb);
        station.outgoing().askFor(asksFor, asksAgain);
        station.sendPrepared(true, 0);
    }
}
