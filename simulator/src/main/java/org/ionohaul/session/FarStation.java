package org.ionohaul.session;

import org.ionohaul.channel.End;
import org.ionohaul.engine.Timer;
import org.ionohaul.link.Burst;
import org.ionohaul.link.Link;
import org.ionohaul.link.Message;
import org.ionohaul.link.Protocol;
import org.ionohaul.link.Station;

/**
 * The station that is called: it answers, takes files in, sends its own on request, and goes back to listening when it
 * has hung up or hears nothing any more. A call reaches it in any state: it then drops the old link for the new one.
 */
final class FarStation implements Protocol, FileSender.Owner {
    private enum State {
        LISTENING,
        ANSWERING,
        SENDING,
        HANGING_UP
    }

    private final Link link;
    private final Station station;
    private final SessionBooks books;
    private final FileSender sender;
    private final FileReceiver receiver;
    private final Exchange hangUp;
    private final Doorkeeper doorkeeper;
    private final Timer supervision;
    private State state = State.LISTENING;

    FarStation(Link link, SessionParts parts, SessionBooks books, Doorkeeper doorkeeper) {
        this.doorkeeper = doorkeeper;
        this.link = link;
        this.books = books;
        station = link.station(End.FAR);
        sender = new FileSender(link, station, parts, this, books);
        receiver = new FileReceiver(link, station, parts, books);
        hangUp = new Exchange(station, parts.rules().controlAttempts());
        supervision = link.engine().timer(this::onLinkLost);
        station.operate(this);
    }

    /** Returns whether it minds nobody. */
    boolean isResting() {
        return state == State.LISTENING;
    }

    /** Minds nobody from now on, without a word. */
    void breakOff() {
        station.fallQuiet();
        sender.fallQuiet();
        rest();
    }

    @Override
    public void onBurst(Burst burst) {
        if (!doorkeeper.admits(burst.message())) {
            return;
        }
        if (burst.message() == Message.CALL) {
            onCall();
        } else {
            switch (state) {
                case LISTENING -> onHangUp(burst);
                case ANSWERING -> onNearBurst(burst);
                case SENDING -> onBurstWhileSending(burst);
                case HANGING_UP -> onHangUpAnswer(burst);
            }
        }
    }

    private void onCall() {
        station.fallQuiet();
        sender.fallQuiet();
        receiver.onNewLink();
        state = State.ANSWERING;
        supervision.start(doorkeeper.idleNanos(link.timing().supervisionNanos()));
        station.answer(Message.CALL_ANSWER, 0, 0);
    }

    private void onNearBurst(Burst burst) {
        supervision.start(doorkeeper.idleNanos(link.timing().supervisionNanos()));
        switch (burst.message()) {
            case INTRODUCTION -> station.answer(Message.INTRODUCTION_ANSWER, burst.number(), 0);
            case OFFER -> receiver.onOffer(burst);
            case OVER -> receiver.onOver(burst);
            case POLL -> receiver.onPoll(burst);
            case REQUEST -> onRequest();
            case HANG_UP -> onHangUp(burst);
            default -> {}
        }
    }

    /** The direction turns. The first offer waits long enough for the request to be repeated, should the offer get lost. */
    private void onRequest() {
        supervision.stop();
        state = State.SENDING;
        sender.begin(link.timing().waitNanos(End.FAR, Message.REQUEST));
    }

    private void onBurstWhileSending(Burst burst) {
        if (burst.message() == Message.REQUEST) {
            sender.onRequestRepeated();
        } else {
            sender.onBurst(burst);
        }
    }

    private void onHangUp(Burst burst) {
        if (burst.message() == Message.HANG_UP) {
            station.answer(Message.HANG_UP_ANSWER, 0, 0);
            rest();
            books.onHungUp(End.FAR, station.nowNanos());
        }
    }

    @Override
    public void onAllConfirmed() {
        state = State.HANGING_UP;
        hangUp.open(Message.HANG_UP, 0, 0, Message.HANG_UP_ANSWER, 0);
    }

    private void onHangUpAnswer(Burst burst) {
        if (hangUp.isAnsweredBy(burst)) {
            rest();
            books.onHungUp(End.FAR, station.nowNanos());
        }
    }

    @Override
    public void onUnreadable(Burst burst) {
        if (state == State.ANSWERING) {
            receiver.onUnreadable(burst);
        }
    }

    @Override
    public void onSilence() {
        switch (state) {
            case SENDING -> sender.onSilence();
            case HANGING_UP -> {
                if (!hangUp.repeats()) {
                    rest();
                }
            }
            case LISTENING, ANSWERING -> {}
        }
    }

    @Override
    public void onLinkLost() {
        books.onLost(End.FAR, station.nowNanos());
        rest();
    }

    private void rest() {
        state = State.LISTENING;
        supervision.stop();
    }
}
