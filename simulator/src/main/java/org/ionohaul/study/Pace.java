package org.ionohaul.study;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.ionohaul.session.Cause;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;

/**
 * A mode in five numbers: what it costs to get in, and how fast it then goes. Estimates are medians over trials, with
 * intervals of confidence {@link ModeSummary#CONFIDENCE}.
 *
 * @param firstByteSeconds entry price: when the receiver holds its first byte, in seconds after pressing send
 * @param firstKilobyteSeconds entry price: when it holds the first 1000 bytes
 * @param earlyBytesPerMinute early pace: from the first kilobyte to {@link #EARLY_BYTES}
 * @param sustainedBytesPerMinute sustained pace: from there to the end of the transfer or of the time watched
 * @param troubleShare share of all time that went into repeats, silence and redialling, from 0 to 1
 * @param lostBytesPerMinute pace lost to trouble: how much faster the bytes held would have come without that time
 */
public record Pace(
        Estimate firstByteSeconds,
        Estimate firstKilobyteSeconds,
        Estimate earlyBytesPerMinute,
        Estimate sustainedBytesPerMinute,
        double troubleShare,
        Estimate lostBytesPerMinute) {
    /** Where the early pace ends and the sustained one begins, in bytes. */
    public static final long EARLY_BYTES = 10_000;

    private static final long KILOBYTE = 1000;
    private static final List<Cause> TROUBLE = List.of(Cause.REPEATED_PAYLOAD, Cause.SILENCE, Cause.REDIALLING);

    /** Returns the pace of a mode in trials of one long transfer, at least one. */
    static Pace of(List<TrialRow> rows) {
        return new Pace(
                median(rows, TrialRow::firstByteSeconds),
                median(rows, row -> reachedSeconds(row, KILOBYTE)),
                median(rows, row -> pace(row, KILOBYTE, EARLY_BYTES)),
                median(rows, row -> pace(row, EARLY_BYTES, Long.MAX_VALUE)),
                rows.stream().mapToDouble(Pace::troubleSeconds).sum()
                        / rows.stream().mapToDouble(Pace::endedSeconds).sum(),
                median(rows, Pace::lostPace));
    }

    private static Estimate median(List<TrialRow> rows, ToDoubleFunction<TrialRow> value) {
        return OrderedSample.of(rows.stream().mapToDouble(value).toArray()).quantile(0.5, ModeSummary.CONFIDENCE);
    }

    private static double reachedSeconds(TrialRow row, long bytes) {
        return row.reachedSeconds(SizeGrid.BYTES.indexOf(bytes));
    }

    /** Bytes a minute between two sizes, or as far as it got; infinite if both came in the same over. */
    private static double pace(TrialRow row, long from, long to) {
        double start = reachedSeconds(row, from);
        if (start == Double.POSITIVE_INFINITY) {
            return 0;
        }
        boolean isReached = row.bytesHeld() >= to;
        double end = isReached ? reachedSeconds(row, to) : Math.min(endedSeconds(row), row.deliveredSeconds());
        return perMinute(Math.min(to, row.bytesHeld()) - from, end - start);
    }

    private static double lostPace(TrialRow row) {
        return perMinute(row.bytesHeld(), endedSeconds(row) - troubleSeconds(row))
                - perMinute(row.bytesHeld(), endedSeconds(row));
    }

    private static double perMinute(long bytes, double seconds) {
        return bytes == 0 ? 0 : 60 * bytes / seconds;
    }

    private static double troubleSeconds(TrialRow row) {
        return TROUBLE.stream().mapToLong(row::budgetNanos).sum() / 1e9;
    }

    private static double endedSeconds(TrialRow row) {
        return row.endedNanos() / 1e9;
    }
}
