package org.ionohaul.session;

import org.ionohaul.channel.End;
import org.ionohaul.engine.Timer;
import org.ionohaul.link.Burst;
import org.ionohaul.link.Link;
import org.ionohaul.link.Message;
import org.ionohaul.link.Protocol;
import org.ionohaul.link.Station;

/**
 * The station whose operator pressed send: it dials, introduces itself, sends its files, asks for those of the other,
 * hangs up; and dials anew when the link is lost.
 */
final class NearStation implements Protocol, FileSender.Owner {
    private enum State {
        CALLING,
        PAUSING,
        INTRODUCING,
        SENDING,
        REQUESTING,
        RECEIVING,
        HANGING_UP,
        ENDED
    }

    private final Link link;
    private final Station station;
    private final SessionRules rules;
    private final SessionBooks books;
    private final FileSender sender;
    private final FileReceiver receiver;
    private final Exchange exchange;
    private final Timer pause;
    private final Timer supervision;
    private final Timer patience;
    private State state = State.PAUSING;
    private boolean wasLinked;
    private int calls;
    private int redials;
    private long furthestBytes;
    private int introductions;

    NearStation(Link link, SessionParts parts, SessionBooks books) {
        this.link = link;
        this.books = books;
        station = link.station(End.NEAR);
        rules = parts.rules();
        sender = new FileSender(link, station, parts, this, books);
        receiver = new FileReceiver(link, station, parts, books);
        exchange = new Exchange(station, rules.controlAttempts());
        pause = link.engine().timer(this::call);
        supervision = link.engine().timer(this::onNothingHeard);
        patience = link.engine().timer(this::onPatienceLost);
        station.operate(this);
        if (parts.patienceNanos() < Long.MAX_VALUE) {
            patience.start(parts.patienceNanos());
        }
    }

    /** The operator presses send. */
    void pressSend() {
        call();
    }

    boolean hasEnded() {
        return state == State.ENDED;
    }

    /** Returns why the session is over for this station, should the horizon cut it off now. */
    Ending endingAtHorizon() {
        return wasLinked ? Ending.AT_HORIZON : Ending.NEVER_LINKED_AT_HORIZON;
    }

    @Override
    public String toString() {
        return "near station " + state;
    }

    private void call() {
        state = State.CALLING;
        calls++;
        station.ask(Message.CALL, 0, 0, Message.CALL_ANSWER, false, 0);
    }

    @Override
    public void onBurst(Burst burst) {
        switch (state) {
            case CALLING -> onCallAnswer(burst);
            case INTRODUCING -> onIntroductionAnswer(burst);
            case SENDING -> sender.onBurst(burst);
            case REQUESTING, RECEIVING -> onFarBurst(burst);
            case HANGING_UP -> onHangUpAnswer(burst);
            case PAUSING -> {}
            case ENDED -> answerHangUp(burst);
        }
    }

    private void onCallAnswer(Burst burst) {
        if (burst.message() == Message.CALL_ANSWER) {
            station.stopWaiting();
            calls = 0;
            wasLinked = true;
            books.onLinked(station.nowNanos());
            receiver.onNewLink();
            introductions = 0;
            introduce();
        }
    }

    private void introduce() {
        if (introductions < rules.introductions()) {
            state = State.INTRODUCING;
            exchange.open(Message.INTRODUCTION, introductions, 0, Message.INTRODUCTION_ANSWER, 0);
        } else {
            state = State.SENDING;
            sender.begin(0);
        }
    }

    private void onIntroductionAnswer(Burst burst) {
        if (exchange.isAnsweredBy(burst)) {
            introductions++;
            introduce();
        }
    }

    /** All own files are through: ask for those of the other end, or hang up. */
    @Override
    public void onAllConfirmed() {
        if (receiver.isDone()) {
            state = State.HANGING_UP;
            exchange.open(Message.HANG_UP, 0, 0, Message.HANG_UP_ANSWER, 0);
        } else {
            state = State.REQUESTING;
            exchange.open(Message.REQUEST, 0, 0, Message.OFFER, 0);
        }
    }

    /** From the first offer on the other end leads, and this one only answers. */
    private void onFarBurst(Burst burst) {
        station.stopWaiting();
        state = State.RECEIVING;
        supervision.start(link.timing().supervisionNanos());
        switch (burst.message()) {
            case OFFER -> receiver.onOffer(burst);
            case OVER -> receiver.onOver(burst);
            case POLL -> receiver.onPoll(burst);
            case HANG_UP -> {
                answerHangUp(burst);
                hangUp();
            }
            default -> {}
        }
    }

    private void answerHangUp(Burst burst) {
        if (burst.message() == Message.HANG_UP) {
            station.answer(Message.HANG_UP_ANSWER, 0, 0);
        }
    }

    private void onHangUpAnswer(Burst burst) {
        if (exchange.isAnsweredBy(burst)) {
            hangUp();
        }
    }

    private void hangUp() {
        books.onHungUp(End.NEAR, station.nowNanos());
        finish(Ending.COMPLETED);
    }

    @Override
    public void onUnreadable(Burst burst) {
        if (state == State.RECEIVING) {
            receiver.onUnreadable(burst);
        }
    }

    @Override
    public void onSilence() {
        switch (state) {
            case CALLING -> onCallUnanswered();
            case SENDING -> sender.onSilence();
            case INTRODUCING, REQUESTING -> {
                if (!exchange.repeats()) {
                    onLinkLost();
                }
            }
            case HANGING_UP -> {
                if (!exchange.repeats()) {
                    end(Ending.HANG_UP_UNANSWERED);
                }
            }
            case PAUSING, RECEIVING, ENDED -> {}
        }
    }

    private void onCallUnanswered() {
        if (calls < rules.callAttempts()) {
            state = State.PAUSING;
            pause.start(rules.callPauseNanos());
        } else {
            redial();
        }
    }

    private void onNothingHeard() {
        if (receiver.isDone()) {
            end(Ending.NOTHING_MORE_HEARD);
        } else {
            onLinkLost();
        }
    }

    @Override
    public void onLinkLost() {
        books.onLost(End.NEAR, station.nowNanos());
        redial();
    }

    private void redial() {
        quieten();
        calls = 0;
        if (rules.progressRenewsRedials()) {
            renewRedials();
        }
        if (redials < rules.redials()) {
            redials++;
            state = State.PAUSING;
            pause.start(rules.redialPauseNanos());
        } else {
            end(wasLinked ? Ending.LINK_LOST : Ending.NEVER_LINKED);
        }
    }

    /** Only this station's own knowledge counts: what was acknowledged to it, and what it holds itself. */
    private void renewRedials() {
        long bytes = sender.acknowledgedBytes() + receiver.heldBytes();
        if (bytes > furthestBytes) {
            furthestBytes = bytes;
            redials = 0;
        }
    }

    private void onPatienceLost() {
        if (state != State.ENDED) {
            end(wasLinked ? Ending.OUT_OF_PATIENCE : Ending.NEVER_LINKED_OUT_OF_PATIENCE);
        }
    }

    private void end(Ending why) {
        quieten();
        finish(why);
    }

    private void finish(Ending why) {
        state = State.ENDED;
        supervision.stop();
        patience.stop();
        books.onEnded(why, station.nowNanos());
    }

    private void quieten() {
        station.fallQuiet();
        sender.fallQuiet();
        supervision.stop();
        pause.stop();
    }
}
