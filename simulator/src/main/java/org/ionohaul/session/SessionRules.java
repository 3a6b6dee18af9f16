package org.ionohaul.session;

import org.ionohaul.limits.OutOfRange;

/**
 * The rules by which a mode opens and closes a link.
 *
 * @param callAttempts how many calls it makes before it pauses and dials anew, 1 or more
 * @param callPauseNanos pause after an unanswered call, zero or more
 * @param introductions how many control exchanges it takes to get to know each other, zero or more
 * @param controlAttempts how often a control burst (introduction, request, offer, hang-up) is sent before giving up, 1 or
 *     more; polls end with the silences that lose a link
 * @param resumes whether a transfer goes on where it stopped when a lost link is dialled anew; else the unfinished file
 *     begins anew
 * @param redials how many times a lost link or unanswered dialling is tried anew before giving up, zero or more
 * @param progressRenewsRedials whether the redials are counted from the last link that got further with the files than any
 *     before it; else over the whole session
 * @param redialPauseNanos pause before dialling anew, zero or more
 */
public record SessionRules(
        int callAttempts,
        long callPauseNanos,
        int introductions,
        int controlAttempts,
        boolean resumes,
        int redials,
        boolean progressRenewsRedials,
        long redialPauseNanos) {
    /** Checks every value. */
    public SessionRules {
        OutOfRange.unless(callAttempts >= 1, "callAttempts", "must be at least 1", callAttempts);
        OutOfRange.unless(callPauseNanos >= 0, "callPauseNanos", "must not be negative", callPauseNanos);
        OutOfRange.unless(introductions >= 0, "introductions", "must not be negative", introductions);
        OutOfRange.unless(controlAttempts >= 1, "controlAttempts", "must be at least 1", controlAttempts);
        OutOfRange.unless(redials >= 0, "redials", "must not be negative", redials);
        OutOfRange.unless(redialPauseNanos >= 0, "redialPauseNanos", "must not be negative", redialPauseNanos);
    }

    /** Returns these rules for who calls so often, 1 or more, and leaves it to others to dial anew. */
    public SessionRules calling(int attempts) {
        return new SessionRules(
                attempts,
                callPauseNanos,
                introductions,
                controlAttempts,
                resumes,
                0,
                progressRenewsRedials,
                redialPauseNanos);
    }
}
