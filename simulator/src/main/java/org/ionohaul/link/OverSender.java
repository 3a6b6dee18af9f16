package org.ionohaul.link;

import org.ionohaul.rate.RatePolicy;

/**
 * Sends one file over the air in overs until the other end has acknowledged all of it.
 *
 * <p>It keeps which bytes are acknowledged. Each over begins with the first byte that is not, is cut into frames of the
 * chosen data rate's size, skips what is acknowledged, and goes on into bytes never sent. Since everything unacknowledged goes
 * out first and no over carries more frames than the window has, no more than these are ever unacknowledged at once. While the
 * data rate stays, the cuts fall where they fell before, so a repeated frame equals its first copy; when the data rate changes,
 * everything not acknowledged is cut anew.
 */
public final class OverSender {
    /** What can become of a file. */
    public interface Fate {
        /** The other end has acknowledged the whole file. */
        void onAllAcknowledged();

        /** Too many overs in a row met silence. */
        void onLost();
    }

    private final Link link;
    private final Station station;
    private final ArqRules rules;
    private final Signals signals;
    private final RatePolicy policy;
    private final Fate fate;
    private final ByteRanges acknowledged = new ByteRanges();
    private int file;
    private long fileBytes;
    private long everSentBytes;
    private int silences;
    private int dataRate;
    private boolean cameThroughWhole;
    private boolean isPolling;
    private boolean turn;

    /**
     * Sets up a sender that keeps its rate policy from file to file.
     *
     * @param link the link it works on
     * @param station the station that sends
     * @param policy what chooses the data rate
     * @param fate who learns what became of a file
     */
    public OverSender(Link link, Station station, RatePolicy policy, Fate fate) {
        this.link = link;
        this.station = station;
        this.policy = policy;
        this.fate = fate;
        rules = link.mode().arq();
        signals = link.mode().signals();
        dataRate = link.mode().ratePolicy().startDataRate();
    }

    /**
     * Begins to send a file, as the answer to a burst just heard.
     *
     * @param number the file's number
     * @param bytes its size, 1 or more
     * @param fromByte the first byte that the other end wants, below the size
     */
    public void begin(int number, long bytes, long fromByte) {
        everSentBytes = number == file ? everSentBytes : 0;
        file = number;
        fileBytes = bytes;
        acknowledged.setPrefix(fromByte);
        silences = 0;
        cameThroughWhole = false;
        turn = false;
        sendOver(true);
    }

    /** Returns how many bytes of a file, from its first on without a gap, it knows to be at the other end. */
    public long acknowledgedBytes(int number) {
        return number == file ? acknowledged.prefixEnd() : 0;
    }

    /** An acknowledgement arrived: learn from it, and send what comes next. */
    public void onAcknowledgement(Burst burst) {
        if (burst.number() != file) {
            return;
        }
        station.stopWaiting();
        if (burst.isWrong(0) && rules.scheme().answersEach()) {
            link.trace().onWrongReply(station.end(), burst.asksFor() == turn, station.nowNanos());
        }
        if (!rules.scheme().answersEach()) {
            acknowledged.copyFrom(burst.held());
        } else if (burst.asksFor() == turn) {
            onAskedAgain(burst.snrDb());
            return;
        } else {
            turn = !turn;
            acknowledged.add(0, station.outgoing().frameEnd(0));
        }
        silences = 0;
        learn(burst.snrDb());
        if (acknowledged.contains(0, fileBytes)) {
            fate.onAllAcknowledged();
        } else {
            sendOver(true);
        }
    }

    /** The other end asks for what it just got: send it again, or give the link up. */
    private void onAskedAgain(double snrDb) {
        silences++;
        cameThroughWhole = false;
        policy.onAcknowledged(station.nowNanos(), dataRate, 1, 1, snrDb);
        if (silences >= rules.silencesToLost()) {
            fate.onLost();
        } else {
            sendOver(true);
        }
    }

    /** No acknowledgement came: poll, or send the over again, or give the link up. */
    public void onSilence() {
        silences++;
        cameThroughWhole = false;
        if (!isPolling) {
            policy.onSilence(station.nowNanos(), dataRate, station.outgoing().framesOfOver());
        }
        if (silences >= rules.silencesToLost()) {
            fate.onLost();
        } else if (rules.answerToSilence() == ArqRules.AnswerToSilence.POLL) {
            isPolling = true;
            station.ask(Message.POLL, file, 0, Message.ACKNOWLEDGEMENT, false, 0);
        } else {
            sendOver(false);
        }
    }

    /** With cumulative acknowledgements nothing is known of the frames after the first missing one. */
    private void learn(double snrDb) {
        Burst over = station.outgoing();
        int lost = 0;
        int known = 0;
        boolean isCumulative = rules.scheme() != ArqScheme.SELECTIVE_REPEAT;
        while (known < over.framesOfOver() && !(isCumulative && lost > 0)) {
            lost += acknowledged.contains(over.frameStart(known), over.frameEnd(known)) ? 0 : 1;
            known++;
        }
        cameThroughWhole = lost == 0;
        policy.onAcknowledged(station.nowNanos(), dataRate, known, lost, snrDb);
    }

    private void sendOver(boolean asAnswer) {
        isPolling = false;
        int chosen = policy.chooseDataRate(station.nowNanos());
        link.trace().onDataRate(station.end(), dataRate, chosen, policy, station.nowNanos());
        dataRate = chosen;
        cutFrames();
        station.sendPrepared(asAnswer, link.timing().waitNanos(station.end(), Message.ACKNOWLEDGEMENT));
    }

    private void cutFrames() {
        int payload = signals.dataRate(dataRate).payloadBytes();
        int most = Math.min(link.timing().mostFrames(dataRate), framesAllowed(payload));
        Burst over = station.outgoing();
        over.openOver(file, dataRate);
        over.takeTurn(turn);
        long at = acknowledged.firstMissing(0);
        while (over.framesOfOver() < most && at < fileBytes) {
            long end = Math.min(at + payload, acknowledged.missingEnd(at, fileBytes));
            over.addFrame(at, end, everSentBytes);
            at = acknowledged.firstMissing(end);
        }
        everSentBytes = Math.max(everSentBytes, over.frameEnd(over.framesOfOver() - 1));
    }

    private int framesAllowed(int payload) {
        long waitingBytes = fileBytes - acknowledged.prefixEnd();
        boolean isLong = cameThroughWhole && waitingBytes > (long) rules.shortOverFrames() * payload;
        return isLong ? rules.longOverFrames() : rules.shortOverFrames();
    }
}
