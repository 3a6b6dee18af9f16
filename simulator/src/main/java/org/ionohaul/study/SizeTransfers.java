package org.ionohaul.study;

import java.util.List;
import java.util.stream.LongStream;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;

/**
 * The transfers a trial whose progress answers every file size: one long one, and a few short ones.
 *
 * <p>The receiver of a long transfer has held its first bytes when a file of that size would be through, but for one
 * thing: a mode may put a long queue into longer overs than a short file needs, so that its first bytes come later. The
 * difference is one over at most. It matters for small files only, so those are really sent, each twice the size of the
 * one before; sizes in between are read off the next larger transfer.
 */
public final class SizeTransfers {
    private static final List<Long> REALLY_SENT = List.of(1000L, 2000L, 4000L, 8000L, 16_000L, 31_500L);

    private SizeTransfers() {}

    /**
     * Returns the scenario with these transfers in place of what it sends, in every direction that occurs in it.
     *
     * @param scenario stations, sky, modes, seed and trials
     * @param largestBytes size of the long transfer, 1 or more
     * @param horizonSeconds how long to watch, positive
     */
    public static Scenario in(Scenario scenario, long largestBytes, double horizonSeconds) {
        List<Direction> directions = scenario.transfers().stream()
                .flatMap(it -> it.directions().stream())
                .distinct()
                .sorted()
                .toList();
        List<Transfer> transfers = LongStream.concat(
                        REALLY_SENT.stream().mapToLong(it -> it).filter(it -> it < largestBytes),
                        LongStream.of(largestBytes))
                .mapToObj(bytes -> transfer(bytes, directions))
                .toList();
        return scenario.sending(transfers, horizonSeconds);
    }

    private static Transfer transfer(long bytes, List<Direction> directions) {
        String name = bytes + " B";
        return new Transfer(name, List.of(new PayloadFile(name, bytes)), directions, List.of());
    }
}
