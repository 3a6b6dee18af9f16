package org.ionohaul.analysis;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.ionohaul.session.Cause;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.study.SizeGrid;
import org.ionohaul.study.TrialRow;

/**
 * A mode in five numbers: what it costs to get in, and how fast it then goes. Estimates are medians over trials, with
 * intervals of confidence {@link Estimate#CONFIDENCE}.
 *
 * @param firstByteSeconds entry price: when the receiver holds its first byte, in seconds after pressing send
 * @param firstKilobyteSeconds entry price: when it holds the first 1000 bytes
 * @param earlyBytesPerMinute early pace: from the first kilobyte to {@link #EARLY_BYTES}, in the session that
 *     the latter is read off
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

    private static final int EARLY_INDEX = SizeGrid.BYTES.indexOf(EARLY_BYTES);
    private static final long KILOBYTE = 1000;
    private static final int KILOBYTE_INDEX = SizeGrid.BYTES.indexOf(KILOBYTE);
    private static final List<Cause> TROUBLE = List.of(Cause.REPEATED_PAYLOAD, Cause.SILENCE, Cause.REDIALLING);

    /** Returns the pace of a mode; beyond {@link #EARLY_BYTES} it is that of the longest transfer. */
    static Pace of(SizeTimes times) {
        List<TrialRow> rows = times.source(times.sizes() - 1).rows();
        return new Pace(
                median(rows, TrialRow::firstByteSeconds),
                ModeSummary.notNegative(OrderedSample.of(times.seconds(KILOBYTE_INDEX)), 0.5),
                early(times),
                median(rows, Pace::sustained),
                rows.stream().mapToDouble(Pace::troubleSeconds).sum()
                        / rows.stream().mapToDouble(Pace::endedSeconds).sum(),
                median(rows, Pace::lost));
    }

    /** Infinite where both sizes come in the same over, zero where the second never comes; both of one session. */
    private static Estimate early(SizeTimes times) {
        int later = Math.min(EARLY_INDEX, times.sizes() - 1);
        long bytes = SizeGrid.BYTES.get(later) - KILOBYTE;
        return median(times.source(later).rows(), row -> {
            double end = row.reachedSeconds(later);
            return end == Double.POSITIVE_INFINITY ? 0 : perMinute(bytes, end - row.reachedSeconds(KILOBYTE_INDEX));
        });
    }

    private static Estimate median(List<TrialRow> rows, ToDoubleFunction<TrialRow> value) {
        return ModeSummary.notNegative(
                OrderedSample.of(rows.stream().mapToDouble(value).toArray()), 0.5);
    }

    /** As far as it got; zero if it did not get beyond the early bytes. */
    private static double sustained(TrialRow row) {
        double end = Math.min(endedSeconds(row), row.deliveredSeconds());
        return perMinute(Math.max(0, row.bytesHeld() - EARLY_BYTES), end - row.reachedSeconds(EARLY_INDEX));
    }

    private static double lost(TrialRow row) {
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
