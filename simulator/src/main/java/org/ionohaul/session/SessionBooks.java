package org.ionohaul.session;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.ionohaul.channel.End;
import org.ionohaul.link.Burst;
import org.ionohaul.link.LinkTrace;
import org.ionohaul.link.Message;
import org.ionohaul.link.Signals;
import org.ionohaul.rate.RatePolicy;

/**
 * Writes a session down: what was delivered, confirmed and closed when, where the time went, how each data rate was used.
 * Knows both ends, decides nothing, and passes everything on to whoever else watches.
 */
final class SessionBooks implements LinkTrace {
    private static final long NEVER = Long.MAX_VALUE;

    private final Cargo cargo;
    private final SessionTrace watcher;
    private final SpentTime spent;
    private final ProgressNotes progress = new ProgressNotes();
    private final DataRateTally dataRates;
    private final long propagationNanos;
    private final long startNanos;
    private final long[] deliveredNanos;
    private final long[] bytesBefore;
    private final Set<End> hungUp = EnumSet.noneOf(End.class);
    private long lastHungUpNanos = NEVER;
    private long mostHeldBytes;
    private int wrongFrames;
    private final Set<Integer> wrongFiles = new HashSet<>();
    private int confirmedFiles;
    private long confirmedNanos = NEVER;
    private long endedNanos = NEVER;
    private Optional<Ending> ending = Optional.empty();
    private int linksLost;
    private int oversSent;
    private int acknowledgementsLost;

    /**
     * Opens the books.
     *
     * @param propagationNanos how long a signal travels between the two stations
     * @param startNanos when the operator presses send, by the engine's clock
     */
    SessionBooks(SessionParts parts, long propagationNanos, long startNanos) {
        cargo = parts.cargo();
        watcher = parts.trace();
        this.propagationNanos = propagationNanos;
        this.startNanos = startNanos;
        Signals signals = parts.link().mode().signals();
        spent = new SpentTime(signals, propagationNanos, startNanos, watcher);
        dataRates = new DataRateTally(signals.dataRateCount());
        deliveredNanos = new long[cargo.files()];
        Arrays.fill(deliveredNanos, NEVER);
        bytesBefore = new long[cargo.files()];
        for (int file = 1; file < bytesBefore.length; file++) {
            bytesBefore[file] = bytesBefore[file - 1] + cargo.bytes(file - 1);
        }
    }

    @Override
    public boolean wantsSnr() {
        return watcher.wantsSnr();
    }

    @Override
    public void onSent(End from, Burst burst, long durationNanos) {
        spent.onSent(from, burst, durationNanos);
        oversSent += burst.message() == Message.OVER ? 1 : 0;
        watcher.onSent(from, burst, durationNanos);
    }

    @Override
    public void onArrived(End at, Burst burst, boolean isHeard, long atNanos) {
        spent.onArrived(at.other());
        int decoded = isHeard ? burst.decodedFrames() : 0;
        if (burst.message() == Message.OVER) {
            long airtimeNanos = atNanos - propagationNanos - burst.startNanos();
            dataRates.count(burst.dataRate(), airtimeNanos, burst.frames(), burst.frames() - decoded);
        } else if (burst.message() == Message.ACKNOWLEDGEMENT) {
            acknowledgementsLost += 1 - decoded;
        }
        watcher.onArrived(at, burst, isHeard, atNanos);
    }

    @Override
    public void onWrongFrame(End at, long fromByte, long atNanos) {
        wrongFrames++;
        watcher.onWrongFrame(at, fromByte, atNanos);
    }

    @Override
    public void onWrongReply(End at, boolean asRepeat, long atNanos) {
        watcher.onWrongReply(at, asRepeat, atNanos);
    }

    @Override
    public void onOccupied(End at, long atNanos) {
        spent.onOccupied(atNanos);
        watcher.onOccupied(at, atNanos);
    }

    @Override
    public void onSilence(End at, long atNanos) {
        spent.onSilence(atNanos);
        watcher.onSilence(at, atNanos);
    }

    @Override
    public void onDataRate(End at, int before, int chosen, RatePolicy policy, long atNanos) {
        watcher.onDataRate(at, before, chosen, policy, atNanos);
    }

    void onLinked(long nowNanos) {
        spent.enter(Cause.INTRODUCTIONS, nowNanos);
        watcher.onLinked(nowNanos);
    }

    void onLost(End at, long nowNanos) {
        if (at == End.NEAR) {
            linksLost++;
            spent.enter(Cause.REDIALLING, nowNanos);
        }
        watcher.onLost(at, nowNanos);
    }

    /**
     * The receiver holds so many bytes of a file in order.
     *
     * @param rightBytes how many of them come before the first wrong one
     */
    void onHeld(int file, long bytes, long rightBytes, long nowNanos) {
        long total = bytesBefore[file] + bytes;
        if (total > mostHeldBytes) {
            mostHeldBytes = total;
            watcher.onProgress(total, nowNanos);
        }
        long countedBytes = cargo.acceptsErrors() ? bytes : rightBytes;
        if (wrongFiles.isEmpty()) {
            progress.note(bytesBefore[file] + countedBytes, nowNanos - startNanos);
        }
        if (bytes == cargo.bytes(file)) {
            onWhole(file, countedBytes == bytes, nowNanos);
        }
    }

    private void onWhole(int file, boolean isDelivered, long nowNanos) {
        if (isDelivered) {
            deliveredNanos[file] = nowNanos;
            watcher.onDelivered(file, nowNanos);
        } else {
            wrongFiles.add(file);
            watcher.onDeliveredWrong(file, nowNanos);
        }
    }

    /** Every file is held, and some of them wrong. */
    private boolean isHeldWrong() {
        long deliveredFiles =
                Arrays.stream(deliveredNanos).filter(it -> it < NEVER).count();
        return !wrongFiles.isEmpty() && wrongFiles.size() + deliveredFiles == cargo.files();
    }

    void onConfirmed(int file, long nowNanos) {
        if (deliveredNanos[file] == NEVER && !wrongFiles.contains(file)) {
            onCutShort(file, nowNanos);
        }
        confirmedFiles++;
        watcher.onConfirmed(file, nowNanos);
        if (confirmedFiles == cargo.files()) {
            confirmedNanos = nowNanos;
            spent.enter(Cause.HANGING_UP, nowNanos);
        }
    }

    /** Text that may be wrong may end too early. */
    private void onCutShort(int file, long nowNanos) {
        wrongFrames++;
        watcher.onCutShort(file, nowNanos);
        if (cargo.acceptsErrors()) {
            progress.note(bytesBefore[file] + cargo.bytes(file), nowNanos - startNanos);
            deliveredNanos[file] = nowNanos;
        } else {
            wrongFiles.add(file);
        }
    }

    void onHungUp(End at, long nowNanos) {
        if (hungUp.add(at)) {
            lastHungUpNanos = nowNanos;
            watcher.onHungUp(at, nowNanos);
        }
    }

    void onEnded(Ending why, long nowNanos) {
        ending = Optional.of(why);
        endedNanos = nowNanos;
        spent.close(nowNanos);
        watcher.onEnded(why, nowNanos);
    }

    /**
     * Closes the books at the horizon, or earlier if the session has ended.
     *
     * @param atHorizon why the session is over if it has not ended
     */
    SessionResult result(long horizonNanos, Ending atHorizon) {
        boolean isRunning = ending.isEmpty();
        spent.close(horizonNanos);
        long delivered = lastDeliveredNanos();
        long closed = hungUp.size() < 2 ? NEVER : lastHungUpNanos;
        return new SessionResult(
                isRunning ? Outcome.RUNNING : outcome(delivered, closed),
                ending.orElse(atHorizon),
                (isRunning ? horizonNanos : endedNanos) - startNanos,
                sinceStart(delivered),
                sinceStart(confirmedNanos),
                sinceStart(closed),
                Arrays.stream(deliveredNanos).mapToObj(this::sinceStart).toList(),
                progress.curve(),
                spent.budget(),
                dataRates.use(),
                linksLost,
                oversSent,
                acknowledgementsLost,
                wrongFrames);
    }

    private Outcome outcome(long delivered, long closed) {
        if (isHeldWrong()) {
            return Outcome.DELIVERED_WRONG;
        }
        if (closed < NEVER && confirmedNanos < NEVER) {
            return Outcome.CLOSED;
        }
        if (confirmedNanos < NEVER) {
            return Outcome.CONFIRMED_NOT_CLOSED;
        }
        return delivered < NEVER ? Outcome.DELIVERED_UNCONFIRMED : Outcome.GAVE_UP;
    }

    private long lastDeliveredNanos() {
        return Arrays.stream(deliveredNanos).max().orElseThrow();
    }

    private OptionalLong sinceStart(long nanos) {
        return nanos < NEVER ? OptionalLong.of(nanos - startNanos) : OptionalLong.empty();
    }
}
