package org.ionohaul.session;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.ionohaul.channel.End;
import org.ionohaul.link.Burst;
import org.ionohaul.link.Message;
import org.ionohaul.link.Signals;
import org.jspecify.annotations.Nullable;

/**
 * Charges each stretch of the dialling station's time to a cause.
 *
 * <p>Stretches follow one another without gap or overlap, so the budget sums to the elapsed time by construction. A
 * burst is charged when it has arrived, as it passes the near end; the gap before it is a turnaround if it answered at
 * once, else silence. While dialling, redialling, introducing and hanging up, all time goes to that phase.
 */
final class SpentTime {
    private final Signals signals;
    private final SessionTrace watcher;
    private final Map<Cause, Account> accounts = new EnumMap<>(Cause.class);
    private final Passing fromNear;
    private final Passing fromFar;
    private Cause phase = Cause.DIALLING;
    private boolean isMoving;
    private boolean isWaiting;
    private long markNanos;
    private long limitNanos = Long.MAX_VALUE;

    SpentTime(Signals signals, long propagationNanos, long startNanos, SessionTrace watcher) {
        markNanos = startNanos;
        this.signals = signals;
        this.watcher = watcher;
        fromNear = new Passing(0);
        fromFar = new Passing(propagationNanos);
        for (Cause cause : Cause.values()) {
            accounts.put(cause, new Account());
        }
    }

    /** All time from now on is spent on a phase, until {@link #onSent frames} move again. */
    void enter(Cause newPhase, long atNanos) {
        charge(Cause.SILENCE, atNanos);
        phase = newPhase;
        isMoving = false;
    }

    void onOccupied(long atNanos) {
        charge(isWaiting ? Cause.SILENCE : Cause.TURNAROUNDS, atNanos);
        isWaiting = true;
    }

    void onSilence(long atNanos) {
        charge(Cause.SILENCE, atNanos);
        isWaiting = true;
    }

    void onSent(End from, Burst burst, long durationNanos) {
        passing(from).begin(burst, durationNanos);
    }

    void onArrived(End from) {
        Passing passing = passing(from);
        Burst burst = passing.burst;
        if (burst != null) {
            passing.burst = null;
            chargeBurst(burst, passing.fromNanos, passing.durationNanos);
        }
    }

    private Passing passing(End from) {
        return from == End.NEAR ? fromNear : fromFar;
    }

    private void chargeBurst(Burst burst, long fromNanos, long durationNanos) {
        if (isMoving && isTalk(burst.message())) {
            phase = Cause.INTRODUCTIONS;
            isMoving = false;
        }
        charge(burst.answers() && !isWaiting ? Cause.TURNAROUNDS : Cause.SILENCE, fromNanos);
        isWaiting = false;
        if (burst.message() == Message.OVER) {
            chargeOver(burst, fromNanos, durationNanos);
        } else {
            charge(Cause.ACKNOWLEDGEMENTS, fromNanos + durationNanos);
        }
    }

    private static boolean isTalk(Message message) {
        return switch (message) {
            case INTRODUCTION, INTRODUCTION_ANSWER, REQUEST, OFFER, ACCEPT -> true;
            default -> false;
        };
    }

    private void chargeOver(Burst over, long fromNanos, long durationNanos) {
        isMoving |= phase == Cause.INTRODUCTIONS;
        long preambleNanos = signals.preambleNanos(over.dataRate());
        long framesNanos = durationNanos - preambleNanos;
        long newNanos = (long) (framesNanos * over.newPayloadFrames() / over.frames());
        charge(Cause.PREAMBLES, fromNanos + preambleNanos);
        charge(Cause.NEW_PAYLOAD, fromNanos + preambleNanos + newNanos);
        charge(Cause.REPEATED_PAYLOAD, fromNanos + durationNanos);
    }

    /** Charges a cause, or the phase that swallows it, with the time since the last stretch, if any is left. */
    private void charge(Cause cause, long untilNanos) {
        long end = Math.min(untilNanos, limitNanos);
        if (end > markNanos) {
            Cause charged = isMoving ? cause : phase;
            account(charged).nanos += end - markNanos;
            watcher.onSpent(charged, markNanos, end);
            markNanos = end;
        }
    }

    /** Closes the account at an instant: a burst on the air is charged up to it, nothing after it. */
    void close(long atNanos) {
        limitNanos = Math.min(limitNanos, atNanos);
        for (End from : End.values()) {
            if (passing(from).fromNanos < limitNanos) {
                onArrived(from);
            }
        }
        charge(Cause.SILENCE, limitNanos);
    }

    TimeBudget budget() {
        Map<Cause, Long> budget = new EnumMap<>(Cause.class);
        accounts.forEach((cause, account) -> budget.put(cause, account.nanos));
        return TimeBudget.of(budget);
    }

    private Account account(Cause cause) {
        return Objects.requireNonNull(accounts.get(cause));
    }

    /** What one cause has cost so far. */
    private static final class Account {
        private long nanos;
    }

    /** A burst of one end as it passes the near end. */
    private static final class Passing {
        private final long delayNanos;
        private @Nullable Burst burst;
        private long fromNanos;
        private long durationNanos;

        Passing(long delayNanos) {
            this.delayNanos = delayNanos;
        }

        void begin(Burst newBurst, long newDurationNanos) {
            burst = newBurst;
            fromNanos = newBurst.startNanos() + delayNanos;
            durationNanos = newDurationNanos;
        }
    }
}
