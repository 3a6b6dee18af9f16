package org.ionohaul.link;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A burst: what it says and, once it has arrived, what became of its frames.
 *
 * <p>A station has one, which it fills anew each time it sends, so that nothing is allocated a burst. Readers outside
 * this package see it only while it is passed to them and must not keep it.
 */
public final class Burst {
    private final ByteRanges held = new ByteRanges();
    private long[] starts = new long[16];
    private long[] ends = new long[16];
    private boolean[] decoded = new boolean[16];
    private boolean[] wrong = new boolean[16];
    private Message message = Message.CALL;
    private int dataRate = 1;
    private int number;
    private long bytes;
    private int frames;
    private int newFrames;
    private double newShare;
    private double snrDb = Double.NaN;
    private boolean answers;
    private boolean turn;
    private boolean asksAgain;
    private long startNanos;
    private int from;
    private int to;
    private @Nullable Timing timing;
    private long fullPowerNanos = Long.MAX_VALUE;
    private double loweredPower = 1;
    private double meanPower = 1;

    Burst() {}

    /** Returns what it says. */
    public Message message() {
        return message;
    }

    /** Returns the data rate of an over, counted from 1. */
    public int dataRate() {
        return dataRate;
    }

    /** Returns which file or introduction it is about, counted from 0. */
    public int number() {
        return number;
    }

    /** Returns the size of an offered file, the byte from which an accepted one is wanted, or the bytes acknowledged. */
    public long bytes() {
        return bytes;
    }

    /** Returns how many frames it carries, 1 or more; the single block of a burst that is no over counts as one. */
    public int frames() {
        return message == Message.OVER ? frames : 1;
    }

    /** Returns how many frames the station's last over carried, also while a poll takes the over's place. */
    int framesOfOver() {
        return frames;
    }

    /** Returns how many frames of an over carry nothing but bytes that were never on the air before. */
    public int newFrames() {
        return newFrames;
    }

    /**
     * Returns how much of an over's payload was never on the air before, in frames, from 0 to {@link #frames()}: a frame
     * that was cut anew after a change of data rate may be new in part.
     */
    public double newPayloadFrames() {
        return newFrames + newShare;
    }

    /** Returns the first byte of a frame of an over. */
    public long frameStart(int frame) {
        return starts[frame];
    }

    /** Returns the byte after the last of a frame of an over. */
    public long frameEnd(int frame) {
        return ends[frame];
    }

    /** Returns whether a frame was decoded; to be asked at its arrival or after it. */
    public boolean isDecoded(int frame) {
        return decoded[frame];
    }

    /** Returns whether a frame was decoded wrong and its check noticed nothing, which no station can know. */
    boolean isWrong(int frame) {
        return wrong[frame];
    }

    /** Returns how many frames were decoded; to be asked at its arrival or after it. */
    public int decodedFrames() {
        int count = 0;
        for (int frame = 0; frame < frames(); frame++) {
            count += decoded[frame] ? 1 : 0;
        }
        return count;
    }

    /** Returns the SNR in 3 kHz, in dB, that an acknowledgement reports of the last over heard; NaN if unknown. */
    public double snrDb() {
        return snrDb;
    }

    /** Returns whether it answers another burst at once; else a timer or the sender's own wish brought it. */
    public boolean answers() {
        return answers;
    }

    /** Returns the number of the station that sends it, on the {@link Medium}. */
    public int from() {
        return from;
    }

    /** Returns the number of the station that it is meant for. */
    public int to() {
        return to;
    }

    /** Returns when its first symbol left the sender, in nanoseconds since the trial began. */
    public long startNanos() {
        return startNanos;
    }

    /** Returns whether the sender's power fell before its end, to what it is from {@link #fullPowerNanos()} on. */
    public boolean isLowered() {
        return meanPower < 1;
    }

    /** Returns how long the sender kept its full power up, in nanoseconds from the first symbol. */
    public long fullPowerNanos() {
        return fullPowerNanos;
    }

    /** Returns the sender's power after that as a share of the full one. */
    public double loweredPower() {
        return loweredPower;
    }

    /** Returns the sender's mean power as a share of the full one. */
    public double meanPower() {
        return meanPower;
    }

    /** Returns whether an acknowledgement asks to have the over repeated, as whoever sent it meant it. */
    public boolean asksAgain() {
        return asksAgain;
    }

    /** Returns which of two frames in turn an over carries. */
    boolean turn() {
        return turn;
    }

    /** Returns which of two frames in turn an acknowledgement asks for, as it was understood. */
    boolean asksFor() {
        return turn != wrong[0];
    }

    ByteRanges held() {
        return held;
    }

    void say(Message what, int ofNumber, long ofBytes) {
        message = what;
        number = ofNumber;
        bytes = ofBytes;
        snrDb = Double.NaN;
        asksAgain = false;
    }

    void openOver(int ofNumber, int atDataRate) {
        say(Message.OVER, ofNumber, 0);
        dataRate = atDataRate;
        frames = 0;
        newFrames = 0;
        newShare = 0;
    }

    /** Says which of two frames in turn the over carries. */
    void takeTurn(boolean second) {
        turn = second;
    }

    /** Adds a frame to an over, of whose bytes those from {@code newFrom} on were never on the air before. */
    void addFrame(long start, long end, long newFrom) {
        if (frames == starts.length) {
            starts = Arrays.copyOf(starts, 2 * frames);
            ends = Arrays.copyOf(ends, 2 * frames);
            decoded = Arrays.copyOf(decoded, 2 * frames);
            wrong = Arrays.copyOf(wrong, 2 * frames);
        }
        starts[frames] = start;
        ends[frames] = end;
        if (newFrom <= start) {
            newFrames++;
        } else if (newFrom < end) {
            newShare += (double) (end - newFrom) / (end - start);
        }
        frames++;
    }

    void acknowledge(int ofNumber, ByteRanges whatIsHeld, ArqScheme scheme, double withSnrDb) {
        say(Message.ACKNOWLEDGEMENT, ofNumber, whatIsHeld.prefixEnd());
        snrDb = withSnrDb;
        if (scheme == ArqScheme.SELECTIVE_REPEAT) {
            held.copyFrom(whatIsHeld);
        } else {
            held.setPrefix(whatIsHeld.prefixEnd());
        }
    }

    /** Asks for one of two frames in turn, for the one that was just sent if {@code again}. */
    void askFor(boolean second, boolean again) {
        turn = second;
        asksAgain = again;
    }

    /** Gives it to a link, which is known by its timing. */
    void belongTo(Timing ofLink) {
        timing = ofLink;
    }

    /** Returns whether it belongs to the link whose timing this is. */
    boolean isFor(Timing ofLink) {
        return timing == ofLink;
    }

    void leave(long atNanos, boolean asAnswer, int sender, int addressee) {
        startNanos = atNanos;
        from = sender;
        to = addressee;
        answers = asAnswer;
        Arrays.fill(decoded, false);
        Arrays.fill(wrong, false);
    }

    void lowerPower(long afterNanos, long durationNanos, double toShare) {
        fullPowerNanos = afterNanos;
        loweredPower = toShare;
        meanPower = 1 - (1 - toShare) * (durationNanos - afterNanos) / durationNanos;
    }

    void decode(int frame, boolean isWrong) {
        decoded[frame] = true;
        wrong[frame] = isWrong;
    }
}
