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
     * @param fromByte how many of its bytes are held already, from its beginning
     */
    public void begin(int number, long fromByte) {
        firstWrongByte = number == file && firstWrongByte < fromByte ? firstWrongByte : NONE;
        file = number;
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
        for (int frame = 0; frame < over.frames(); frame++) {
            if (over.isDecoded(frame) && isWanted(over.frameStart(frame))) {
                noteWrong(over, frame);
                held.add(over.frameStart(frame), over.frameEnd(frame));
            }
        }
        snrDb = measuresSnr ? station.measuredSnrDb(over) : Double.NaN;
        acknowledge();
    }

    /** Bytes that are held already stay as they are. */
    private void noteWrong(Burst over, int frame) {
        long fromByte = held.firstMissing(over.frameStart(frame));
        if (over.isWrong(frame) && fromByte < over.frameEnd(frame)) {
            firstWrongByte = Math.min(firstWrongByte, fromByte);
            link.trace().onWrongFrame(station.end(), fromByte, station.nowNanos());
        }
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
        station.sendPrepared(true, 0);
    }
}
