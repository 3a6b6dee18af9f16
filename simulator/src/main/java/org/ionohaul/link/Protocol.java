package org.ionohaul.link;

/** What a station does about what it hears, or doesn't. */
public interface Protocol {
    /** A protocol that minds nothing. */
    Protocol IDLE = new Protocol() {
        @Override
        public void onBurst(Burst burst) {}

        @Override
        public void onSilence() {}
    };

    /**
     * Called when a burst for this station has ended and was understood. Of an over, at least one frame must have been
     * decoded: else the station can't tell who sent it, and stays silent.
     *
     * @param burst the burst; valid during the call only
     */
    void onBurst(Burst burst);

    /**
     * Called when an over or a poll for this station has ended of which nothing was decoded, where the mode's rules have it
     * answered all the same.
     */
    default void onUnreadable(Burst burst) {}

    /** Called when the answer to this station's last burst has not come in the time an answer needs. */
    void onSilence();
}
