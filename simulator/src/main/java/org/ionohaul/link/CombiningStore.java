package org.ionohaul.link;

/**
 * What a receiver keeps of frames that it could not decode, to add to their next copy.
 *
 * <p>Each frame kept has a threshold, drawn once when it first came: it is decoded as soon as the probability of decoding
 * the evidence gathered so far exceeds it. So the chance of success with the second copy, given failure with the first,
 * is right, and a copy never makes things worse by a new draw.
 *
 * <p>Only equal frames add up. The store therefore holds frames of one data rate and one file at a time: a change of data rate
 * cuts the bytes into other frames and empties it. When it is full, a further frame is not kept.
 */
final class CombiningStore {
    /** Returned when no frame is kept under a start. */
    static final int NONE = -1;

    private final long[] starts;
    private final double[] evidence;
    private final double[] thresholds;
    private int size;
    private int dataRate;
    private int file;

    CombiningStore(int frames) {
        starts = new long[frames];
        evidence = new double[frames];
        thresholds = new double[frames];
    }

    /** Prepares for frames of a file and data rate: empties the store if it holds others. */
    void turnTo(int ofFile, int atDataRate) {
        if (ofFile != file || atDataRate != dataRate) {
            size = 0;
        }
        file = ofFile;
        dataRate = atDataRate;
    }

    /** Forgets every frame. */
    void empty() {
        size = 0;
    }

    /** Returns the place of the frame that begins with the byte, or {@link #NONE}. */
    int find(long start) {
        for (int at = 0; at < size; at++) {
            if (starts[at] == start) {
                return at;
            }
        }
        return NONE;
    }

    double evidence(int at) {
        return evidence[at];
    }

    double threshold(int at) {
        return thresholds[at];
    }

    /** Keeps a frame that was not decoded, if there is room. */
    void keep(long start, double gathered, double threshold) {
        if (size < starts.length) {
            put(size++, start, gathered, threshold);
        }
    }

    /** Replaces the evidence of a frame that was not decoded this time either. */
    void gather(int at, double gathered) {
        evidence[at] = gathered;
    }

    /** Forgets a frame that was decoded. */
    void forget(int at) {
        size--;
        put(at, starts[size], evidence[size], thresholds[size]);
    }

    private void put(int at, long start, double gathered, double threshold) {
        starts[at] = start;
        evidence[at] = gathered;
        thresholds[at] = threshold;
    }
}
