package org.ionohaul.study;

import java.nio.ByteBuffer;
import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.ionohaul.session.Cause;
import org.ionohaul.session.DataRateUse;
import org.ionohaul.session.Ending;
import org.ionohaul.session.Outcome;
import org.ionohaul.session.ProgressCurve;
import org.ionohaul.session.SessionResult;

/**
 * One session's line in a study: what is kept of a {@link SessionResult}. The progress curve is kept at its first byte
 * and, in milliseconds rounded up, at the sizes of {@link SizeGrid}.
 *
 * <p>A row is a view of packed bytes, which may lie in a file: asking it costs a few nanoseconds, keeping it keeps its
 * block of rows in reach. The bytes are, in order: trial, five instants, bytes held (8 bytes each); links lost, overs,
 * acknowledgements lost, wrong frames (4 each); outcome, ending, number of files, of data rates, of sizes (1 each); nanoseconds of each cause
 * (8); of each file its instant (8); of each data rate its airtime (8), frames sent and lost (4 each); of each size its instant
 * (4). Most significant byte first.
 */
public final class TrialRow {
    private static final long NEVER = ProgressCurve.NEVER;
    private static final long NANOS_PER_MILLI = 1_000_000;
    private static final List<Cause> CAUSES = List.of(Cause.values());
    private static final List<Outcome> OUTCOMES = List.of(Outcome.values());
    private static final List<Ending> ENDINGS = List.of(Ending.values());

    private static final int ENDED = Long.BYTES;
    private static final int DELIVERED = ENDED + Long.BYTES;
    private static final int CONFIRMED = DELIVERED + Long.BYTES;
    private static final int CLOSED = CONFIRMED + Long.BYTES;
    private static final int FIRST_BYTE = CLOSED + Long.BYTES;
    private static final int BYTES_HELD = FIRST_BYTE + Long.BYTES;
    private static final int LINKS_LOST = BYTES_HELD + Long.BYTES;
    private static final int OVERS_SENT = LINKS_LOST + Integer.BYTES;
    private static final int ACKNOWLEDGEMENTS_LOST = OVERS_SENT + Integer.BYTES;
    private static final int WRONG_FRAMES = ACKNOWLEDGEMENTS_LOST + Integer.BYTES;
    private static final int OUTCOME = WRONG_FRAMES + Integer.BYTES;
    private static final int ENDING = OUTCOME + 1;
    private static final int FILE_COUNT = ENDING + 1;
    private static final int DATA_RATE_COUNT = FILE_COUNT + 1;
    private static final int SIZE_COUNT = DATA_RATE_COUNT + 1;
    private static final int BUDGET = SIZE_COUNT + 1;
    private static final int FILES = BUDGET + CAUSES.size() * Long.BYTES;
    private static final int BYTES_A_DATA_RATE = Long.BYTES + 2 * Integer.BYTES;

    private final ByteBuffer bytes;
    private final int at;

    /**
     * Views a row.
     *
     * @param bytes packed rows
     * @param at where in them the row begins
     */
    TrialRow(ByteBuffer bytes, int at) {
        this.bytes = bytes;
        this.at = at;
    }

    /**
     * Returns the line of one session.
     *
     * @param trial the trial's number, zero or more
     * @param result what its session came to
     */
    public static TrialRow of(long trial, SessionResult result) {
        return new TrialRow(ByteBuffer.wrap(packed(trial, result)), 0);
    }

    /** Returns the bytes of one session's line. */
    static byte[] packed(long trial, SessionResult result) {
        int[] grid = grid(result.progress());
        ByteBuffer out = ByteBuffer.allocate(
                length(result.filesDeliveredNanos().size(), result.dataRates().size(), grid.length));
        out.putLong(trial).putLong(result.endedNanos());
        out.putLong(result.deliveredNanos().orElse(NEVER));
        out.putLong(result.confirmedNanos().orElse(NEVER));
        out.putLong(result.closedNanos().orElse(NEVER));
        out.putLong(result.progress().reachedNanos(1)).putLong(held(result.progress()));
        out.putInt(result.linksLost()).putInt(result.oversSent()).putInt(result.acknowledgementsLost());
        out.putInt(result.wrongFrames());
        out.put(count(OUTCOMES.indexOf(result.outcome())));
        out.put(count(ENDINGS.indexOf(result.ending())));
        out.put(count(result.filesDeliveredNanos().size()));
        out.put(count(result.dataRates().size())).put(count(grid.length));
        CAUSES.forEach(cause -> out.putLong(result.budget().nanosOf(cause)));
        result.filesDeliveredNanos().forEach(nanos -> out.putLong(nanos.orElse(NEVER)));
        result.dataRates()
                .forEach(dataRate -> out.putLong(dataRate.airtimeNanos())
                        .putInt(dataRate.framesSent())
                        .putInt(dataRate.framesLost()));
        IntStream.of(grid).forEach(out::putInt);
        return out.array();
    }

    /** Returns a copy of the bytes that the row is. */
    byte[] packed() {
        byte[] copy = new byte[length(files(), dataRates(), sizes())];
        bytes.get(at, copy);
        return copy;
    }

    /** Returns the trial's number, from 0. */
    public long trial() {
        return bytes.getLong(at);
    }

    /** Returns what the session had achieved when it ended. */
    public Outcome outcome() {
        return OUTCOMES.get(bytes.get(at + OUTCOME));
    }

    /** Returns why it ended for the station that dialled. */
    public Ending ending() {
        return ENDINGS.get(bytes.get(at + ENDING));
    }

    /** Returns when it ended for the station that dialled, or the horizon. */
    public long endedNanos() {
        return bytes.getLong(at + ENDED);
    }

    /** Returns when the receiver held the last byte of the last file, all of them right or wrong ones accepted. */
    public OptionalLong deliveredNanos() {
        return optional(DELIVERED);
    }

    /** Returns the completion time, in seconds: {@link #deliveredNanos()}, infinite if that never came. */
    public double deliveredSeconds() {
        return seconds(DELIVERED);
    }

    /** Returns when the sender knew that everything was delivered. */
    public OptionalLong confirmedNanos() {
        return optional(CONFIRMED);
    }

    /** Returns when both ends had hung up. */
    public OptionalLong closedNanos() {
        return optional(CLOSED);
    }

    /** Returns how many files were sent. */
    public int files() {
        return number(FILE_COUNT);
    }

    /** Returns when the receiver held a file whole; {@code index} from 0 to below {@link #files()}, in the order sent. */
    public OptionalLong fileDeliveredNanos(int index) {
        return optional(FILES + Objects.checkIndex(index, files()) * Long.BYTES);
    }

    /** Returns the nanoseconds spent on a cause; all together make {@link #endedNanos()}. */
    public long budgetNanos(Cause cause) {
        return bytes.getLong(at + BUDGET + CAUSES.indexOf(cause) * Long.BYTES);
    }

    /** Returns how many data rates the mode has. */
    public int dataRates() {
        return number(DATA_RATE_COUNT);
    }

    /** Returns the use of a data rate; {@code dataRate} from 1 (most robust) to {@link #dataRates()}. */
    public DataRateUse dataRate(int dataRate) {
        int start = at + dataRatesStart() + Objects.checkIndex(dataRate - 1, dataRates()) * BYTES_A_DATA_RATE;
        return new DataRateUse(
                bytes.getLong(start),
                bytes.getInt(start + Long.BYTES),
                bytes.getInt(start + Long.BYTES + Integer.BYTES));
    }

    /** Returns when the receiver held its first byte, in seconds; infinite if never. */
    public double firstByteSeconds() {
        return seconds(FIRST_BYTE);
    }

    /**
     * Returns when the receiver first held so many bytes, in seconds; infinite if never.
     *
     * @param sizeIndex index of the size in {@link SizeGrid#BYTES}
     */
    public double reachedSeconds(int sizeIndex) {
        int start = dataRatesStart() + dataRates() * BYTES_A_DATA_RATE;
        return sizeIndex < sizes()
                ? bytes.getInt(at + start + sizeIndex * Integer.BYTES) / 1e3
                : Double.POSITIVE_INFINITY;
    }

    /** Returns how many bytes the receiver held at best: more than at the end if a mode restarts. */
    public long bytesHeld() {
        return bytes.getLong(at + BYTES_HELD);
    }

    /** Returns how often the link was lost. */
    public int linksLost() {
        return bytes.getInt(at + LINKS_LOST);
    }

    /** Returns how many overs with frames were sent. */
    public int oversSent() {
        return bytes.getInt(at + OVERS_SENT);
    }

    /** Returns how many acknowledgements were sent but not decoded. */
    public int acknowledgementsLost() {
        return bytes.getInt(at + ACKNOWLEDGEMENTS_LOST);
    }

    /** Returns how many frames the receiver kept that were wrong, since no check noticed. */
    public int wrongFrames() {
        return bytes.getInt(at + WRONG_FRAMES);
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

    /** Returns how many sizes of the grid were reached. */
    private int sizes() {
        return number(SIZE_COUNT);
    }

    private int dataRatesStart() {
        return FILES + files() * Long.BYTES;
    }

    private int number(int field) {
        return Byte.toUnsignedInt(bytes.get(at + field));
    }

    private OptionalLong optional(int field) {
        long nanos = bytes.getLong(at + field);
        return nanos == NEVER ? OptionalLong.empty() : OptionalLong.of(nanos);
    }

    private double seconds(int field) {
        long nanos = bytes.getLong(at + field);
        return nanos == NEVER ? Double.POSITIVE_INFINITY : nanos / 1e9;
    }

    private static int length(int files, int dataRates, int sizes) {
        return FILES + files * Long.BYTES + dataRates * BYTES_A_DATA_RATE + sizes * Integer.BYTES;
    }

    private static byte count(int number) {
        if (number > 255) {
            throw new IllegalArgumentException("a row holds at most 255 files or data rates: " + number);
        }
        return (byte) number;
    }
}
