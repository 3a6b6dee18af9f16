package org.ionohaul.waveform;

/**
 * What makes a frame decodable: symbols at local SINRs are rated, the ratings are averaged over the frame, and the
 * average becomes evidence. Thread-safe; shared by nobody all the same.
 */
interface FrameModel {
    /**
     * Returns the ratings of symbols, to be averaged over the frame's: by symbol energy over the density of noise,
     * interference and distortion, linear.
     */
    RatioTable ratings();

    /**
     * Returns whether symbols are decided one by one, each at the noise of its moment; otherwise a decoder weighs all
     * together, and takes the noise as even in time.
     */
    boolean decidesOneByOne();

    /** Returns the evidence of one copy whose symbols have this mean rating. */
    double evidence(double meanRating);

    /** Returns the evidence of two copies together. */
    double combined(double earlier, double fresh);

    /** Returns the probability that the frame is decoded from the evidence. */
    double decodingProbability(double evidence);

    /** Returns the probability that it is taken as decoded and is wrong. */
    default double unnoticedErrorProbability(double evidence) {
        return 0;
    }
}
