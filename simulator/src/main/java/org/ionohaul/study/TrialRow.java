package org.ionohaul.study;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.ionohaul.session.Cause;
import org.ionohaul.session.LevelUse;
import org.ionohaul.session.Outcome;
import org.ionohaul.session.ProgressCurve;
import org.ionohaul.session.SessionResult;

/**
 * One session's line in a study: what is kept of a {@link SessionResult}, packed so that a study can hold hundreds of
 * thousands. The progress curve is kept at its first byte and, in milliseconds rounded up, at the sizes of {@link
 * SizeGrid}.
 */
public final class TrialRow {
    private static final long NEVER = ProgressCurve.NEVER;
    private static final long NANOS_PER_MILLI = 1_000_000;
    private static final List<Cause> CAUSES = List.of(Cause.values());

    private final long trial;
    private final Outcome outcome;
    private final long endedNanos;
    private final long deliveredNanos;
    private final long confirmedNanos;
    private final long closedNanos;
    private final long firstByteNanos;
    private final long[] filesNanos;
    private final long[] budgetNanos;
    private final long[] levelAirtimeNanos;
    private final int[] levelFrames;
    private final int[] gridMillis;
    private final long bytesHeld;
    private final int linksLost;
    private final int oversSent;
    private final int acknowledgementsLost;

    private TrialRow(long trial, SessionResult result) {
        this.trial = trial;
        this.outcome = result.outcome();
        this.endedNanos = result.endedNanos();
        this.deliveredNanos = result.deliveredNanos().orElse(NEVER);
        this.confirmedNanos = result.confirmedNanos().orElse(NEVER);
        this.closedNanos = result.closedNanos().orElse(NEVER);
        this.firstByteNanos = result.progress().reachedNanos(1);
        this.filesNanos = result.filesDeliveredNanos().stream()
                .mapToLong(it -> it.orElse(NEVER))
                .toArray();
        this.budgetNanos = CAUSES.stream()
                .mapToLong(cause -> result.budget().nanosOf(cause))
                .toArray();
        this.levelAirtimeNanos =
                result.levels().stream().mapToLong(LevelUse::airtimeNanos).toArray();
        this.levelFrames = result.levels().stream()
                .flatMapToInt(level -> IntStream.of(level.framesSent(), level.framesLost()))
                .toArray();
        this.gridMillis = grid(result.progress());
        this.bytesHeld = held(result.progress());
        this.linksLost = result.linksLost();
        this.oversSent = result.oversSent();
        this.acknowledgementsLost = result.acknowledgementsLost();
    }

    private TrialRow(DataInput in) throws IOException {
        this.trial = in.readLong();
        this.outcome = Outcome.valueOf(in.readUTF());
        this.endedNanos = in.readLong();
        this.deliveredNanos = in.readLong();
        this.confirmedNanos = in.readLong();
        this.closedNanos = in.readLong();
        this.firstByteNanos = in.readLong();
        this.filesNanos = readLongs(in);
        this.budgetNanos = readLongs(in);
        this.levelAirtimeNanos = readLongs(in);
        this.levelFrames = readInts(in);
        this.gridMillis = readInts(in);
        this.bytesHeld = in.readLong();
        this.linksLost = in.readInt();
        this.oversSent = in.readInt();
        this.acknowledgementsLost = in.readInt();
    }

    /** Writes every field in the order in which they are read again. */
    void write(DataOutput out) throws IOException {
        out.writeLong(trial);
        out.writeUTF(outcome.name());
        out.writeLong(endedNanos);
        out.writeLong(deliveredNanos);
        out.writeLong(confirmedNanos);
        out.writeLong(closedNanos);
        out.writeLong(firstByteNanos);
        writeLongs(out, filesNanos);
        writeLongs(out, budgetNanos);
        writeLongs(out, levelAirtimeNanos);
        writeInts(out, levelFrames);
        writeInts(out, gridMillis);
        out.writeLong(bytesHeld);
        out.writeInt(linksLost);
        out.writeInt(oversSent);
        out.writeInt(acknowledgementsLost);
    }

    static TrialRow read(DataInput in) throws IOException {
        return new TrialRow(in);
    }

    /**
     * Returns the line of one session.
     *
     * @param trial the trial's number, zero or more
     * @param result what its session came to
     */
    public static TrialRow of(long trial, SessionResult result) {
        return new TrialRow(trial, result);
    }

    /** Returns the trial's number, from 0. */
    public long trial() {
        return trial;
    }

    /** Returns how the session ended. */
    public Outcome outcome() {
        return outcome;
    }

    /** Returns when it ended for the station that dialled, or the horizon. */
    public long endedNanos() {
        return endedNanos;
    }

    /** Returns when the receiver held the last byte of the last file. */
    public OptionalLong deliveredNanos() {
        return optional(deliveredNanos);
    }

    /** Returns the completion time, in seconds: {@link #deliveredNanos()}, infinite if that never came. */
    public double deliveredSeconds() {
        return seconds(deliveredNanos);
    }

    /** Returns when the sender knew that everything was delivered. */
    public OptionalLong confirmedNanos() {
        return optional(confirmedNanos);
    }

    /** Returns when both ends had hung up. */
    public OptionalLong closedNanos() {
        return optional(closedNanos);
    }

    /** Returns how many files were sent. */
    public int files() {
        return filesNanos.length;
    }

    /** Returns when the receiver held a file whole; {@code index} from 0 to below {@link #files()}, in the order sent. */
    public OptionalLong fileDeliveredNanos(int index) {
        return optional(filesNanos[index]);
    }

    /** Returns the nanoseconds spent on a cause; all together make {@link #endedNanos()}. */
    public long budgetNanos(Cause cause) {
        return budgetNanos[CAUSES.indexOf(cause)];
    }

    /** Returns how many speed levels the mode has. */
    public int levels() {
        return levelAirtimeNanos.length;
    }

    /** Returns the use of a speed level; {@code level} from 1 (most robust) to {@link #levels()}. */
    public LevelUse level(int level) {
        int index = level - 1;
        return new LevelUse(levelAirtimeNanos[index], levelFrames[2 * index], levelFrames[2 * index + 1]);
    }

    /** Returns when the receiver held its first byte, in seconds; infinite if never. */
    public double firstByteSeconds() {
        return seconds(firstByteNanos);
    }

    /**
     * Returns when the receiver first held so many bytes, in seconds; infinite if never.
     *
     * @param sizeIndex index of the size in {@link SizeGrid#BYTES}
     */
    public double reachedSeconds(int sizeIndex) {
        return sizeIndex < gridMillis.length ? gridMillis[sizeIndex] / 1e3 : Double.POSITIVE_INFINITY;
    }

    /** Returns how many bytes the receiver held at best: more than at the end if a mode restarts. */
    public long bytesHeld() {
        return bytesHeld;
    }

    /** Returns how often the link was lost. */
    public int linksLost() {
        return linksLost;
    }

    /** Returns how many overs with frames were sent. */
    public int oversSent() {
        return oversSent;
    }

    /** Returns how many acknowledgements were sent but not decoded. */
    public int acknowledgementsLost() {
        return acknowledgementsLost;
    }

    private static int[] grid(ProgressCurve progress) {
        return SizeGrid.BYTES.stream()
                .mapToLong(progress::reachedNanos)
                .takeWhile(reached -> reached != NEVER)
                .mapToInt(TrialRow::millisRoundedUp)
                .toArray();
    }

    private static int millisRoundedUp(long nanos) {
        return Math.toIntExact(-Math.floorDiv(-nanos, NANOS_PER_MILLI));
    }

    private static long held(ProgressCurve progress) {
        return progress.size() == 0 ? 0 : progress.heldBytes(progress.size() - 1);
    }

    private static long[] readLongs(DataInput in) throws IOException {
        long[] values = new long[in.readInt()];
        for (int i = 0; i < values.length; i++) {
            values[i] = in.readLong();
        }
        return values;
    }

    private static int[] readInts(DataInput in) throws IOException {
        int[] values = new int[in.readInt()];
        for (int i = 0; i < values.length; i++) {
            values[i] = in.readInt();
        }
        return values;
    }

    private static void writeLongs(DataOutput out, long[] values) throws IOException {
        out.writeInt(values.length);
        for (long value : values) {
            out.writeLong(value);
        }
    }

    private static void writeInts(DataOutput out, int[] values) throws IOException {
        out.writeInt(values.length);
        for (int value : values) {
            out.writeInt(value);
        }
    }

    private static OptionalLong optional(long nanos) {
        return nanos == NEVER ? OptionalLong.empty() : OptionalLong.of(nanos);
    }

    private static double seconds(long nanos) {
        return nanos == NEVER ? Double.POSITIVE_INFINITY : nanos / 1e9;
    }
}
