package org.ionohaul.link;

import org.ionohaul.limits.OutOfRange;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.Waveform;

/**
 * The rules by which a mode moves frames.
 *
 * @param scheme which frames go out again
 * @param windowFrames most frames that may be unacknowledged at once, 1 or more
 * @param shortOverFrames most frames an over carries at first and while the queue is short or frames get lost, 1 or more
 * @param longOverFrames most frames an over carries when more than a short over is waiting and the last over came
 *     through whole, {@code shortOverFrames} or more
 * @param longestOverNanos an over never lasts longer than this unless one frame alone does, positive
 * @param combining what the receiver does with copies of a frame
 * @param storeFrames how many undecoded frames the receiver can keep for combining, zero or more
 * @param answerToSilence what the sender does when no acknowledgement comes
 * @param silencesToLost after how many overs in a row without an acknowledgement the link counts as lost, 1 or more
 * @param listensFirst whether a station waits for a clear channel before it begins an over
 * @param marginNanos how long the sender waits beyond the latest instant an acknowledgement could end, zero or more
 * @param cycleNanos how long a cycle lasts where both stations keep a rhythm: an over leaves so long after the one before,
 *     and an acknowledgement that comes later than that is missed; zero where each over waits for its answer
 */
public record ArqRules(
        ArqScheme scheme,
        int windowFrames,
        int shortOverFrames,
        int longOverFrames,
        long longestOverNanos,
        Combining combining,
        int storeFrames,
        AnswerToSilence answerToSilence,
        int silencesToLost,
        boolean listensFirst,
        long marginNanos,
        long cycleNanos) {

    /** What the sender does when no acknowledgement comes. */
    public enum AnswerToSilence {
        /** Send the whole over again. */
        REPEAT,
        /** Ask for the acknowledgement with a short control burst. */
        POLL
    }

    /** Far above what any link has in one over, and few enough to go through them one by one. */
    private static final int MOST_FRAMES = 10_000;

    private static final int MOST_SILENCES = 1000;

    /** Checks every value. */
    public ArqRules {
        requireCount(windowFrames >= 1, "windowFrames", windowFrames);
        requireCount(shortOverFrames >= 1, "shortOverFrames", shortOverFrames);
        OutOfRange.unless(
                longOverFrames >= shortOverFrames,
                "longOverFrames",
                "must not be below shortOverFrames",
                longOverFrames);
        requireCount(true, "longOverFrames", longOverFrames);
        OutOfRange.unless(longestOverNanos > 0, "longestOverNanos", "must be positive", longestOverNanos);
        OutOfRange.unless(
                storeFrames >= 0 && storeFrames <= MOST_FRAMES, "storeFrames", "must be from 0 to 10,000", storeFrames);
        OutOfRange.unless(
                silencesToLost >= 1 && silencesToLost <= MOST_SILENCES,
                "silencesToLost",
                "must be from 1 to 1,000",
                silencesToLost);
        OutOfRange.unless(
                scheme != ArqScheme.ALTERNATING || answerToSilence == AnswerToSilence.POLL,
                "answerToSilence",
                "must be poll where frames carry no numbers, since one that is repeated would be taken for the next",
                answerToSilence);
        OutOfRange.unless(marginNanos >= 0, "marginNanos", "must not be negative", marginNanos);
        OutOfRange.unless(cycleNanos >= 0, "cycleNanos", "must not be negative", cycleNanos);
    }

    private static void requireCount(boolean isEnough, String name, int frames) {
        OutOfRange.unless(isEnough && frames <= MOST_FRAMES, name, "must be at least 1 and at most 10,000", frames);
    }

    /** Returns whether both stations keep a rhythm. */
    public boolean hasRhythm() {
        return cycleNanos > 0;
    }

    /** Returns the most frames that an over may ever carry. */
    int mostFrames(Waveform waveform) {
        int frames = scheme.isOneByOne() ? 1 : Math.min(longOverFrames, windowFrames);
        while (frames > 1 && waveform.burstNanos(frames) > longestOverNanos) {
            frames--;
        }
        return frames;
    }

    /** Returns how many frames an over carries at first, if so many are waiting. */
    public int usualFrames(Waveform waveform) {
        return Math.min(shortOverFrames, mostFrames(waveform));
    }
}
