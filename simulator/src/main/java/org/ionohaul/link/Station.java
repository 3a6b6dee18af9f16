package org.ionohaul.link;

import org.ionohaul.channel.End;
import org.ionohaul.channel.Reception;
import org.ionohaul.engine.Timer;

/**
 * One station's radio: sends a burst at a time, hears only while it doesn't send, and notices when no answer comes.
 *
 * <p>Between the last symbol it hears and the first it sends, a station leaves the longer of two times: what it needs
 * itself (processing, relays) and what the other needs before it can hear (hang, relays, recovery); the same after an
 * answer that should have come and was not heard. It hears a burst only if its receiver was ready before the first symbol and stayed so to the last.
 */
public final class Station {
    /** Shortest and longest wait before an occupied channel is looked at anew; common practice, no source. */
    private static final long SHORTEST_WAIT_NANOS = 1_000_000_000L;

    private static final long LONGEST_WAIT_NANOS = 4_000_000_000L;

    private final Medium medium;
    private final LinkSetup setup;
    private final End end;
    private final int number;
    private final int peer;
    private final StationTimes times;
    private final long busyDetectionNanos;
    private final Transmitter transmitter;
    private final Burst outgoing = new Burst();
    private final CombiningStore store;
    private final Timer departure;
    private final Timer silence;
    private final Medium.Listener listener = this::onArrival;
    private Protocol protocol = Protocol.IDLE;
    private long mayLeaveFromNanos;
    private long nextOverNanos;
    private boolean isAnswer;
    private long answerWaitNanos;

    /**
     * Sets up a quiet station.
     *
     * @param number its number on the medium
     * @param peer number of the station it works with
     */
    Station(LinkSetup setup, End end, int number, int peer) {
        this.setup = setup;
        this.end = end;
        this.number = number;
        this.peer = peer;
        medium = setup.medium();
        Radio radio = setup.parts().radio(end);
        times = radio.times();
        busyDetectionNanos = radio.busyDetectionNanos();
        transmitter = new Transmitter(radio.foldBack());
        store = new CombiningStore(setup.mode().arq().storeFrames());
        departure = medium.engine().timer(this::onDeparture);
        silence = medium.engine().timer(this::onSilence);
        outgoing.belongTo(setup.timing());
        medium.listen(number, listener);
    }

    /** Lets a protocol work this station from now on. */
    public void operate(Protocol newProtocol) {
        protocol = newProtocol;
    }

    /** Returns which end this is. */
    public End end() {
        return end;
    }

    /** Returns the simulated time, in nanoseconds since the trial began. */
    public long nowNanos() {
        return medium.engine().nowNanos();
    }

    /**
     * Sends a short burst as the answer to one just heard; expects no answer to it.
     *
     * @param message what to say
     * @param number which file or introduction it is about
     * @param bytes a size or offset, if the message needs one
     */
    public void answer(Message message, int number, long bytes) {
        outgoing().say(message, number, bytes);
        depart(true, 0);
    }

    /**
     * Sends a short burst and waits for the answer.
     *
     * @param message what to say
     * @param number which file or introduction it is about
     * @param bytes a size or offset, if the message needs one
     * @param answer what the answer will be, which tells how long it lasts
     * @param isAnswer whether it follows at once upon a burst just heard
     * @param extraNanos how much longer than needed to wait for the answer, zero or more
     */
    public void ask(Message message, int number, long bytes, Message answer, boolean isAnswer, long extraNanos) {
        outgoing().say(message, number, bytes);
        depart(isAnswer, Math.addExact(setup.timing().waitNanos(end, answer), extraNanos));
    }

    /** Sends the over or acknowledgement prepared in {@link #outgoing()}. */
    void sendPrepared(boolean asAnswer, long waitNanos) {
        depart(asAnswer, waitNanos);
    }

    /** Stops waiting for an answer: it has come. */
    public void stopWaiting() {
        silence.stop();
    }

    /** Falls quiet: sends nothing that has not left yet and waits for nothing. */
    public void fallQuiet() {
        departure.stop();
        silence.stop();
    }

    /** Returns whether it has nothing to send and nothing on its way. */
    public boolean isQuiet() {
        return !departure.isRunning() && !medium.isOnItsWay(number);
    }

    /** Returns whether it finds the channel occupied by others at this instant. */
    public boolean hearsOthers() {
        return medium.isOccupied(number, nowNanos());
    }

    /** Hears nothing from now on. */
    void withdraw() {
        medium.ignore(number, listener);
    }

    /** Forgets what it heard of frames that it could not decode. */
    public void forgetUndecoded() {
        store.empty();
    }

    /** Returns the burst to fill before sending. */
    Burst outgoing() {
        if (medium.isOnItsWay(number)) {
            throw new IllegalStateException("burst still on its way: " + outgoing.message());
        }
        return outgoing;
    }

    private void depart(boolean asAnswer, long waitNanos) {
        isAnswer = asAnswer;
        answerWaitNanos = waitNanos;
        silence.stop();
        departure.start(Math.max(0, departureNanos() - nowNanos()));
        mayLeaveFromNanos = 0;
    }

    /** Returns when the outgoing burst may leave; overs and polls of a mode with a rhythm keep it, whatever was or was not heard. */
    private long departureNanos() {
        boolean isInRhythm = hasRhythm() && nextOverNanos >= nowNanos() + times.relayNanos();
        if (isInRhythm) {
            return nextOverNanos;
        }
        long gapNanos = isAnswer ? setup.timing().answerNanos(end) : times.relayNanos();
        return Math.max(nowNanos() + gapNanos, mayLeaveFromNanos);
    }

    private void onDeparture() {
        if (isPolite() && findsOthers()) {
            setup.trace().onOccupied(end, nowNanos());
            departure.start(setup.parts().chances().dialling().nextLong(SHORTEST_WAIT_NANOS, LONGEST_WAIT_NANOS));
        } else {
            leave();
        }
    }

    /** Who has just sent has not listened for long enough, and can't know. */
    private boolean findsOthers() {
        long fromNanos = nowNanos() - busyDetectionNanos;
        boolean hasListened = busyDetectionNanos == 0 || medium.hearsFromNanos(number) <= fromNanos;
        return hasListened && medium.isOccupied(number, Math.max(0, fromNanos));
    }

    private boolean isPolite() {
        Message message = outgoing.message();
        return setup.mode().arq().listensFirst() && (message == Message.CALL || message == Message.OVER);
    }

    private void leave() {
        long now = nowNanos();
        long duration = setup.mode()
                .signals()
                .of(outgoing.message(), outgoing.dataRate())
                .burstNanos(outgoing.frames());
        outgoing.leave(now, isAnswer, number, peer);
        transmitter.key(outgoing, duration);
        setup.trace().onSent(end, outgoing, duration);
        medium.transmit(number, outgoing, duration, times.deafNanos());
        if (hasRhythm()) {
            long cycleNanos = setup.mode().arq().cycleNanos();
            nextOverNanos = now + cycleNanos;
            // A rhythm that is shorter than an over can't be kept: the over is heard out before the next is made.
            long arrivedNanos = duration + medium.propagationNanos(number, peer);
            silence.start(
                    Math.max(arrivedNanos, Math.min(duration + answerWaitNanos, cycleNanos - times.relayNanos())));
        } else if (answerWaitNanos > 0) {
            silence.start(duration + answerWaitNanos);
        }
    }

    private boolean hasRhythm() {
        Message message = outgoing.message();
        return setup.mode().arq().hasRhythm() && (message == Message.OVER || message == Message.POLL);
    }

    private void onArrival(Burst burst, long arrivalNanos) {
        if (burst.to() == number && burst.isFor(setup.timing())) {
            hear(burst, arrivalNanos);
        }
    }

    private void hear(Burst burst, long arrivalNanos) {
        Reception reception = reception(burst, arrivalNanos);
        Demodulator demodulator = setup.demodulator();
        boolean isFound =
                medium.hearsFromNanos(number) <= arrivalNanos && demodulator.isFound(reception, burst, arrivalNanos);
        if (isFound) {
            demodulator.decode(reception, burst, arrivalNanos, store);
        }
        setup.trace().onArrived(end, burst, isFound, nowNanos());
        if (isFound && burst.decodedFrames() > 0) {
            protocol.onBurst(burst);
        } else if (isFound && isAnsweredAnyway(burst.message())) {
            protocol.onUnreadable(burst);
        }
    }

    private boolean isAnsweredAnyway(Message message) {
        return switch (setup.mode().arq().scheme()) {
            case ASKED_REPEAT -> message == Message.OVER;
            case ALTERNATING -> message == Message.OVER || message == Message.POLL;
            default -> false;
        };
    }

    /** Returns the SNR that this station measured over a burst it just heard, in dB. */
    double measuredSnrDb(Burst burst) {
        long arrivalNanos = burst.startNanos() + medium.propagationNanos(burst.from(), number);
        return setup.demodulator().measuredSnrDb(reception(burst, arrivalNanos), burst, arrivalNanos);
    }

    private Reception reception(Burst burst, long arrivalNanos) {
        return LoweredReception.of(medium.reception(burst.from(), number), burst, arrivalNanos);
    }

    /** The answer may have been sent and not been heard: who sent it needs its time before it can hear again. */
    private void onSilence() {
        mayLeaveFromNanos = nowNanos() + setup.timing().deafAfterSilenceNanos(end);
        setup.trace().onSilence(end, nowNanos());
        protocol.onSilence();
    }
}
