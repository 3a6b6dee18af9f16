package org.ionohaul.link;

import org.ionohaul.channel.End;

/** How long the steps of a link's cycles last, as both stations know from the mode and from their introductions. */
public final class Timing {
    private final LinkParts parts;
    private final int[] mostFrames;

    /** Works out the timing of a link. */
    public Timing(LinkParts parts) {
        this.parts = parts;
        mostFrames = parts.signals().dataRates().stream()
                .mapToInt(parts.arq()::mostFrames)
                .toArray();
    }

    /** Returns the most frames that an over of a data rate, counted from 1, may ever carry. */
    public int mostFrames(int dataRate) {
        return mostFrames[dataRate - 1];
    }

    /** Returns how long a station leaves between the last symbol it hears and the first it sends, in nanoseconds. */
    public long answerNanos(End end) {
        StationTimes own = parts.times(end);
        StationTimes other = parts.times(end.other());
        return Math.max(
                own.processingNanos() + own.relayNanos(),
                other.hangNanos() + other.relayNanos() + other.recoveryNanos());
    }

    /**
     * Returns how long a station waits, from the last symbol of its own burst, until an answer must have ended: both ways
     * of propagation, the other's answering time, the answer itself and the mode's margin. The nanosecond more lets an
     * answer that ends on time come first.
     *
     * @param end who waits
     * @param answer what the answer will be
     */
    public long waitNanos(End end, Message answer) {
        return 2 * parts.propagationNanos()
                + answerNanos(end.other())
                + parts.signals().singleNanos(answer)
                + parts.arq().marginNanos()
                + 1;
    }

    /**
     * Returns how long a cycle lasts, in nanoseconds: an over, its acknowledgement, both turnarounds.
     *
     * @param dataRate data rate of the over, counted from 1
     * @param frames frames in the over, 1 or more
     */
    public long cycleNanos(int dataRate, int frames) {
        return parts.signals().dataRate(dataRate).burstNanos(frames)
                + parts.signals().singleNanos(Message.ACKNOWLEDGEMENT)
                + answerNanos(End.NEAR)
                + answerNanos(End.FAR)
                + 2 * parts.propagationNanos();
    }

    /**
     * Returns the payload that undisturbed cycles of a data rate would bring, in bytes a second, if its overs were as long as
     * they may be at first.
     *
     * @param dataRate data rate, counted from 1
     */
    public double cleanBytesPerSecond(int dataRate) {
        double payloadBytes = (double) usualFrames(dataRate)
                * parts.signals().dataRate(dataRate).payloadBytes();
        return payloadBytes * 1e9 / cycleNanos(dataRate, usualFrames(dataRate));
    }

    /**
     * Returns the payload that the oracle expects of a data rate, in bytes a second, counted over the whole cycle of an over as
     * long as it may be at first.
     *
     * @param dataRate data rate, counted from 1
     * @param atNanos when the over begins, in nanoseconds since the trial began
     */
    public double expectedBytesPerSecond(int dataRate, long atNanos) {
        int frames = usualFrames(dataRate);
        double airShare = (double) parts.signals().dataRate(dataRate).burstNanos(frames) / cycleNanos(dataRate, frames);
        return parts.oracle().payloadBytesPerSecond(dataRate, atNanos) * airShare;
    }

    private int usualFrames(int dataRate) {
        return Math.min(parts.arq().shortOverFrames(), mostFrames(dataRate));
    }

    /**
     * Returns after how long without a burst the station that answers takes the link for lost, in nanoseconds: one cycle
     * more than the other end needs to find out.
     */
    public long supervisionNanos() {
        long longestNanos = parts.signals().singleNanos(Message.POLL);
        for (int dataRate = 1; dataRate <= mostFrames.length; dataRate++) {
            longestNanos =
                    Math.max(longestNanos, parts.signals().dataRate(dataRate).burstNanos(mostFrames(dataRate)));
        }
        long answerNanos = Math.max(
                Math.max(waitNanos(End.NEAR, Message.ACKNOWLEDGEMENT), waitNanos(End.FAR, Message.ACKNOWLEDGEMENT)),
                Math.max(waitNanos(End.NEAR, Message.POLL), waitNanos(End.FAR, Message.POLL)));
        return Math.multiplyExact(parts.arq().silencesToLost() + 1L, longestNanos + answerNanos);
    }
}
