package org.ionohaul.net;

import java.util.List;

/** What calls come to. */
public interface Conversations {
    /** Is told how a conversation ends. */
    @FunctionalInterface
    interface Ending {
        /**
         * Called once, when the caller is done and can begin another one. What was delivered stands in the letters.
         *
         * @param wasAnswered whether the call was ever answered
         */
        void onEnded(boolean wasAnswered);
    }

    /** A call to be made. */
    record Call(int caller, int called, int channel, List<Letter> fromCaller, List<Letter> fromCalled) {
        /** Copies the lists. */
        public Call {
            fromCaller = List.copyOf(fromCaller);
            fromCalled = List.copyOf(fromCalled);
        }
    }

    /** Returns whether a station can call on a channel now: it has finished what it did before, and works nobody who called it. */
    boolean isFree(int station, int channel);

    /** Returns whether a station has heard anybody on a channel since an instant, in nanoseconds since the trial began. */
    boolean isBusy(int station, int channel, long sinceNanos);

    /** Makes a call; the caller must be free. */
    void begin(Call call, Ending ending);
}
