package org.ionohaul.trace;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.ionohaul.channel.End;
import org.ionohaul.link.Burst;
import org.ionohaul.link.Message;
import org.ionohaul.rate.RatePolicy;
import org.ionohaul.rendering.EndingText;
import org.ionohaul.session.Cause;
import org.ionohaul.session.Ending;
import org.ionohaul.session.SessionTrace;
import org.ionohaul.session.TimeBudget;
import org.ionohaul.trace.TraceStep.Kind;

/** Watches a session and writes down, step by step, what happened. */
public final class TraceRecorder implements SessionTrace {
    private final SkyGauge gauge;
    private final List<TraceStep> steps = new ArrayList<>();
    private final List<TraceSpan> spans = new ArrayList<>();
    private final Map<Cause, Long> spent = new EnumMap<>(Cause.class);
    private long heldBytes;
    private boolean isOccupied;

    /**
     * Begins with nothing written down.
     *
     * @param gauge reads the true SINR of the same trial
     */
    public TraceRecorder(SkyGauge gauge) {
        this.gauge = gauge;
    }

    /** Returns what happened so far, in the order in which it ended. */
    List<TraceStep> steps() {
        return List.copyOf(steps);
    }

    /** Returns what the dialling station's time went to, in order. */
    List<TraceSpan> spans() {
        return List.copyOf(spans);
    }

    SkyGauge gauge() {
        return gauge;
    }

    @Override
    public boolean wantsSnr() {
        return true;
    }

    @Override
    public void onSpent(Cause cause, long fromNanos, long untilNanos) {
        spent.merge(cause, untilNanos - fromNanos, Math::addExact);
        TraceSpan.append(spans, cause, fromNanos, untilNanos);
    }

    @Override
    public void onArrived(End at, Burst burst, boolean isHeard, long atNanos) {
        isOccupied = false;
        noteFoldBack(at.other(), burst);
        boolean isOver = burst.message() == Message.OVER;
        int decoded = isHeard ? burst.decodedFrames() : 0;
        steps.add(new TraceStep(
                Kind.BURST,
                burst.startNanos(),
                atNanos,
                at.other(),
                words(burst),
                isOver ? burst.dataRate() : 0,
                burst.frames(),
                isOver ? burst.frames() - burst.newFrames() : 0,
                decoded,
                decoded > 0,
                gauge.meanDb(at, burst.startNanos(), atNanos) + 10 * Math.log10(burst.meanPower()),
                heldBytes,
                TimeBudget.of(spent)));
    }

    private void noteFoldBack(End sender, Burst burst) {
        if (burst.isLowered()) {
            String says = String.format(
                    Locale.ROOT,
                    "power folds back by %.1f dB after %.1f s of this burst",
                    -10 * Math.log10(burst.loweredPower()),
                    1e-9 * burst.fullPowerNanos());
            note(Kind.POWER, sender, says, 0, burst.startNanos() + burst.fullPowerNanos());
        }
    }

    private static String words(Burst burst) {
        String name = burst.message().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return switch (burst.message()) {
            case INTRODUCTION, INTRODUCTION_ANSWER -> name + " " + (burst.number() + 1);
            case OFFER -> "offer of file " + (burst.number() + 1) + ", " + burst.bytes() + " bytes";
            case ACCEPT -> "accept file " + (burst.number() + 1) + " from byte " + burst.bytes();
            case ACKNOWLEDGEMENT ->
                (burst.asksAgain() ? "request to repeat from" : name + " up to") + " byte " + burst.bytes()
                        + measured(burst.snrDb());
            default -> name;
        };
    }

    private static String measured(double snrDb) {
        return Double.isNaN(snrDb) ? "" : String.format(Locale.ROOT, ", measured %.1f dB", snrDb);
    }

    @Override
    public void onDataRate(End at, int before, int chosen, RatePolicy policy, long atNanos) {
        String move = chosen == before
                ? "stays at " + chosen
                : (chosen < before ? "down " : "up ") + before + " -> " + chosen;
        note(Kind.DATA_RATE, at, move + ": " + policy.reason(), chosen, atNanos);
    }

    @Override
    public void onSilence(End at, long atNanos) {
        note(Kind.SILENCE, at, "no answer", 0, atNanos);
    }

    @Override
    public void onOccupied(End at, long atNanos) {
        if (!isOccupied) {
            note(Kind.OCCUPIED, at, "channel occupied, waits", 0, atNanos);
        }
        isOccupied = true;
    }

    @Override
    public void onLinked(long atNanos) {
        note(Kind.STAGE, End.NEAR, "linked", 0, atNanos);
    }

    @Override
    public void onLost(End at, long atNanos) {
        note(Kind.STAGE, at, "takes the link for lost", 0, atNanos);
    }

    /** The over that brought the bytes has just been written down; it gets the new count. */
    @Override
    public void onProgress(long bytes, long atNanos) {
        heldBytes = bytes;
        int last = lastBurst();
        steps.set(last, steps.get(last).withHeldBytes(bytes));
    }

    private int lastBurst() {
        int last = steps.size() - 1;
        while (steps.get(last).kind() != Kind.BURST) {
            last--;
        }
        return last;
    }

    /** Returns the station that was meant to hear the last burst. */
    private End lastListener() {
        return steps.get(lastBurst()).at().other();
    }

    @Override
    public void onDelivered(int file, long atNanos) {
        note(Kind.STAGE, lastListener(), "holds file " + (file + 1) + " whole", 0, atNanos);
    }

    @Override
    public void onWrongFrame(End at, long fromByte, long atNanos) {
        note(Kind.STAGE, at, "keeps a wrong frame from byte " + fromByte + ": nothing is noticed", 0, atNanos);
    }

    @Override
    public void onWrongReply(End at, boolean asRepeat, long atNanos) {
        String says = asRepeat
                ? "takes leave to go on for a request to repeat"
                : "takes a request to repeat for leave to go on";
        note(Kind.STAGE, at, says + ", and does not know", 0, atNanos);
    }

    @Override
    public void onCutShort(int file, long atNanos) {
        End receiver = lastListener().other();
        note(Kind.STAGE, receiver, "lacks the end of file " + (file + 1) + ", and nobody knows", 0, atNanos);
    }

    @Override
    public void onDeliveredWrong(int file, long atNanos) {
        note(
                Kind.STAGE,
                lastListener(),
                "holds file " + (file + 1) + " whole but wrong, and does not know",
                0,
                atNanos);
    }

    @Override
    public void onConfirmed(int file, long atNanos) {
        note(Kind.STAGE, lastListener(), "knows file " + (file + 1) + " delivered", 0, atNanos);
    }

    @Override
    public void onHungUp(End at, long atNanos) {
        note(Kind.STAGE, at, "hangs up: all done", 0, atNanos);
    }

    @Override
    public void onEnded(Ending why, long atNanos) {
        note(Kind.STAGE, End.NEAR, "session ends: " + EndingText.of(why), 0, atNanos);
    }

    private void note(Kind kind, End at, String says, int dataRate, long atNanos) {
        steps.add(new TraceStep(
                kind,
                atNanos,
                atNanos,
                at,
                says,
                dataRate,
                0,
                0,
                0,
                false,
                Double.NaN,
                heldBytes,
                TimeBudget.of(spent)));
    }
}
