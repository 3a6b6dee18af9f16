package org.ionohaul.rate;

/**
 * Chooses the data rate of each over from what the sender can see: which frames were acknowledged, which overs met
 * silence, what SNR the receiver reports. Never sees the channel.
 */
public interface RatePolicy {
    /**
     * Returns the data rate of the over about to begin, counted from 1. Asked once an over.
     *
     * @param nowNanos the instant, in nanoseconds since the trial began
     */
    int chooseDataRate(long nowNanos);

    /**
     * An over was acknowledged, wholly or in part.
     *
     * @param nowNanos when
     * @param dataRate data rate of the over
     * @param framesSent frames whose fate is known, 1 or more
     * @param framesLost of these, how many were not decoded
     * @param snrDb SNR in 3 kHz that the receiver measured over it, in dB; NaN if it measured none
     */
    void onAcknowledged(long nowNanos, int dataRate, int framesSent, int framesLost, double snrDb);

    /**
     * An over met silence: it was lost, or its acknowledgement.
     *
     * @param nowNanos when
     * @param dataRate data rate of the over
     * @param framesSent frames it carried
     */
    void onSilence(long nowNanos, int dataRate, int framesSent);

    /** Returns in the trade's words why the last choice fell as it did. */
    String reason();
}
