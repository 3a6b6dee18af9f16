package org.ionohaul.link;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.channel.End;
import org.ionohaul.rate.DesignRates;
import org.ionohaul.rate.LossCurves;

/** How long the steps of a link's cycles last, as both stations know from the mode and from their introductions. */
public final class Timing {
    private final ModeSpec mode;
    private final StationTimes near;
    private final StationTimes far;
    private final long propagationNanos;
    private final int[] mostFrames;

    /**
     * Works out the timing of a link.
     *
     * @param mode what both stations work
     * @param near how fast the station that dials changes between sending and receiving
     * @param far how fast the station that is called does
     * @param propagationNanos how long a signal travels between them, zero or more
     */
    public Timing(ModeSpec mode, StationTimes near, StationTimes far, long propagationNanos) {
        this.mode = mode;
        this.near = near;
        this.far = far;
        this.propagationNanos = propagationNanos;
        mostFrames = mode.signals().dataRates().stream()
                .mapToInt(mode.arq()::mostFrames)
                .toArray();
    }

    /** Returns the number of data rates, 1 or more. */
    public int dataRateCount() {
        return mostFrames.length;
    }

    /** Returns the most frames that an over of a data rate, counted from 1, may ever carry. */
    public int mostFrames(int dataRate) {
        return mostFrames[dataRate - 1];
    }

    /** Returns how long a station leaves between the last symbol it hears and the first it sends, in nanoseconds. */
    public long answerNanos(End end) {
        StationTimes own = times(end);
        return Math.max(
                own.processingNanos() + own.relayNanos(), times(end.other()).deafNanos());
    }

    /**
     * Returns how long the other station, had it answered, could still be deaf when a station notices silence, in
     * nanoseconds: the mode's margin has passed by then.
     *
     * @param end who notices the silence
     */
    long deafAfterSilenceNanos(End end) {
        return Math.max(0, times(end.other()).deafNanos() - mode.arq().marginNanos());
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
        return 2 * propagationNanos
                + answerNanos(end.other())
                + mode.signals().singleNanos(answer)
                + mode.arq().marginNanos()
                + 1;
    }

    /**
     * Returns how long a cycle lasts, in nanoseconds: what it needs, or the mode's rhythm if that is longer.
     *
     * @param dataRate data rate of the over, counted from 1
     * @param frames frames in the over, 1 or more
     */
    public long cycleNanos(int dataRate, int frames) {
        return Math.max(mode.arq().cycleNanos(), neededNanos(dataRate, frames));
    }

    /**
     * Returns how far from each other, as a signal's time in nanoseconds, stations may be at most that keep the mode's
     * rhythm: the acknowledgement of the longest over is there before the sender's relays switch for the next one, and
     * who acknowledged hears again when that arrives. Below zero if they keep it at no distance.
     *
     * @param sender who sends the overs
     */
    public long farthestInRhythmNanos(End sender) {
        long overNanos = IntStream.rangeClosed(1, dataRateCount())
                .mapToLong(dataRate -> mode.signals().dataRate(dataRate).burstNanos(mostFrames(dataRate)))
                .max()
                .orElseThrow();
        long spareNanos = mode.arq().cycleNanos()
                - overNanos
                - answerNanos(sender.other())
                - mode.signals().singleNanos(Message.ACKNOWLEDGEMENT);
        return spareNanos < times(sender.other()).deafNanos()
                ? -1
                : Math.floorDiv(spareNanos - times(sender).relayNanos() - 1, 2);
    }

    /** Returns an over, its acknowledgement, both turnarounds and both ways. */
    private long neededNanos(int dataRate, int frames) {
        return mode.signals().dataRate(dataRate).burstNanos(frames)
                + mode.signals().singleNanos(Message.ACKNOWLEDGEMENT)
                + answerNanos(End.NEAR)
                + answerNanos(End.FAR)
                + 2 * propagationNanos;
    }

    /**
     * Returns the payload that undisturbed cycles of a data rate would bring, in bytes a second, if its overs were as long as
     * they may be at first.
     *
     * @param dataRate data rate, counted from 1
     */
    public double cleanBytesPerSecond(int dataRate) {
        double payloadBytes = (double) usualFrames(dataRate)
                * mode.signals().dataRate(dataRate).payloadBytes();
        return payloadBytes * 1e9 / cycleNanos(dataRate, usualFrames(dataRate));
    }

    /**
     * Returns which share of an undisturbed cycle its over takes, from 0 to 1, if the over is as long as it may be at first.
     *
     * @param dataRate data rate, counted from 1
     */
    public double overShare(int dataRate) {
        int frames = usualFrames(dataRate);
        return (double) mode.signals().dataRate(dataRate).burstNanos(frames) / cycleNanos(dataRate, frames);
    }

    /**
     * Returns what the makers of the mode know of its data rates on such a link.
     *
     * @param curves the data rates' frame loss on a steady path
     */
    public DesignRates designRates(LossCurves curves) {
        List<Double> clean = new ArrayList<>();
        for (int dataRate = 1; dataRate <= dataRateCount(); dataRate++) {
            clean.add(cleanBytesPerSecond(dataRate));
        }
        return new DesignRates(clean, curves);
    }

    /** Returns how long after a silence a station sends again, in nanoseconds. */
    private long repeatNanos(End end) {
        return Math.max(times(end).relayNanos(), deafAfterSilenceNanos(end));
    }

    private StationTimes times(End end) {
        return end == End.NEAR ? near : far;
    }

    private int usualFrames(int dataRate) {
        return Math.min(mode.arq().shortOverFrames(), mostFrames(dataRate));
    }

    /**
     * Returns after how long without a burst the station that answers takes the link for lost, in nanoseconds: one cycle
     * more than the other end needs to find out.
     */
    public long supervisionNanos() {
        long longestNanos = mode.signals().singleNanos(Message.POLL);
        for (int dataRate = 1; dataRate <= mostFrames.length; dataRate++) {
            longestNanos =
                    Math.max(longestNanos, mode.signals().dataRate(dataRate).burstNanos(mostFrames(dataRate)));
        }
        long answerNanos = Math.max(
                Math.max(waitNanos(End.NEAR, Message.ACKNOWLEDGEMENT), waitNanos(End.FAR, Message.ACKNOWLEDGEMENT)),
                Math.max(waitNanos(End.NEAR, Message.POLL), waitNanos(End.FAR, Message.POLL)));
        long repeatNanos = Math.max(repeatNanos(End.NEAR), repeatNanos(End.FAR));
        return Math.multiplyExact(
                mode.arq().silencesToLost() + 1L,
                Math.max(mode.arq().cycleNanos(), longestNanos + answerNanos + repeatNanos));
    }
}
