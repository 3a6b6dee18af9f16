package org.ionohaul.session;

import org.ionohaul.link.Burst;
import org.ionohaul.link.Message;
import org.ionohaul.link.Station;

/** A short burst that is repeated until its answer comes or the attempts are used up. */
final class Exchange {
    private final Station station;
    private final int mostAttempts;
    private Message message = Message.CALL;
    private Message answer = Message.CALL_ANSWER;
    private int number;
    private long bytes;
    private long extraNanos;
    private int attempts;

    Exchange(Station station, int mostAttempts) {
        this.station = station;
        this.mostAttempts = mostAttempts;
    }

    /** Opens an exchange in the other end's turn to listen, at once after a burst heard. */
    void open(Message newMessage, int newNumber, long newBytes, Message newAnswer, long newExtraNanos) {
        message = newMessage;
        number = newNumber;
        bytes = newBytes;
        answer = newAnswer;
        extraNanos = newExtraNanos;
        attempts = 0;
        ask(true);
    }

    /** Returns whether a burst is the answer; if so, waits no longer. */
    boolean isAnsweredBy(Burst burst) {
        boolean isAnswer = burst.message() == answer && burst.number() == number;
        if (isAnswer) {
            station.stopWaiting();
        }
        return isAnswer;
    }

    /** No answer came: asks again and returns true, or returns false if the attempts are used up. */
    boolean repeats() {
        boolean mayRepeat = attempts < mostAttempts;
        if (mayRepeat) {
            ask(false);
        }
        return mayRepeat;
    }

    /** The other end has repeated the burst that led to this one, so it has not heard it: asks again. */
    void repeatAsAnswer() {
        ask(true);
    }

    private void ask(boolean asAnswer) {
        attempts++;
        station.ask(message, number, bytes, answer, asAnswer, extraNanos);
    }
}
