package org.ionohaul.link;

/**
 * Receives one file over the air: keeps what arrives, recognises what it holds already, and acknowledges each over of
 * which it decoded a frame, and each poll.
 */
public final class OverReceiver {
    private final Station station;
    private final ArqScheme scheme;
    private final boolean measuresSnr;
    private final ByteRanges held = new ByteRanges();
    private int file;
    private double snrDb = Double.NaN;

    /**
     * Sets up a receiver that holds nothing.
     *
     * @param link the link it works on
     * @param station the station that receives
     */
    public OverReceiver(Link link, Station station) {
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

    /** An over came in which frames were decoded: keep them and acknowledge. */
    public void onOver(Burst over) {
        for (int frame = 0; frame < over.frames(); frame++) {
            if (over.isDecoded(frame) && isWanted(over.frameStart(frame))) {
                held.add(over.frameStart(frame), over.frameEnd(frame));
            }
        }
        snrDb = measuresSnr ? station.measuredSnrDb(over) : Double.NaN;
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
        station.sendPrepared(true, 0);
    }
}
