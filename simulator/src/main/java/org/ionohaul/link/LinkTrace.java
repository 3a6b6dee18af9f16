package org.ionohaul.link;

import org.ionohaul.channel.End;
import org.ionohaul.rate.RatePolicy;

/**
 * Watches a link from outside, knowing both ends. Watching changes nothing: no method's result decides anything, and none
 * may keep what it is shown.
 */
public interface LinkTrace {
    /** Returns whether the watcher wants receivers to measure SNR even when no policy uses it. */
    default boolean wantsSnr() {
        return false;
    }

    /**
     * A burst leaves a station.
     *
     * @param from who sends it; when is {@link Burst#startNanos()}
     * @param burst what is sent
     * @param durationNanos how long it will be on the air
     */
    default void onSent(End from, Burst burst, long durationNanos) {}

    /**
     * A burst has wholly arrived.
     *
     * @param at who was meant to hear it
     * @param burst what was sent, with the frames marked that were decoded
     * @param isHeard whether the station was listening and found it
     * @param atNanos when its end arrived
     */
    default void onArrived(End at, Burst burst, boolean isHeard, long atNanos) {}

    /**
     * A receiver keeps a frame that is wrong, since its check noticed nothing, or takes it in twice or for one that never came.
     *
     * @param at who keeps it, and knows nothing of it
     * @param fromByte the first byte of the file that is wrong by it
     * @param atNanos when
     */
    default void onWrongFrame(End at, long fromByte, long atNanos) {}

    /**
     * A sender takes an answer for the opposite of what was sent.
     *
     * @param at who takes it so, and knows nothing of it
     * @param asRepeat whether it is taken as a request to repeat; else as leave to go on
     * @param atNanos when
     */
    default void onWrongReply(End at, boolean asRepeat, long atNanos) {}

    /** A station finds the channel occupied by others and waits. */
    default void onOccupied(End at, long atNanos) {}

    /** The answer a station waited for has not come. */
    default void onSilence(End at, long atNanos) {}

    /**
     * A rate policy has chosen the data rate of the next over.
     *
     * @param at who chose
     * @param before data rate of the over before, counted from 1
     * @param chosen data rate of the next over
     * @param policy the policy, which can say why
     * @param atNanos when
     */
    default void onDataRate(End at, int before, int chosen, RatePolicy policy, long atNanos) {}
}
