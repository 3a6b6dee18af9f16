package org.ionohaul.study;

import java.util.List;
import java.util.SortedMap;
import java.util.stream.LongStream;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;

/**
 * The transfers a trial that answer every file size: a file of each size of {@link SizeGrid} up to {@link
 * #LARGEST_SENT_BYTES}, and one long one; then those larger sizes about which it matters.
 *
 * <p>The receiver of a long transfer has held its first bytes when a file of that size would be through, but for one
 * thing: a mode may put a long queue into longer overs than a short file needs, so that its first bytes come later, by one
 * over at most. With small files an over is a large part of all: those are really sent. With larger ones it is told as
 * part of what the answer leaves open, until such files are sent as well.
 */
public final class SizeTransfers {
    /** Up to this size each of the grid is really sent. */
    public static final long LARGEST_SENT_BYTES = 31_500;

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
                        SizeGrid.BYTES.stream()
                                .mapToLong(it -> it)
                                .filter(it -> it <= LARGEST_SENT_BYTES && it < largestBytes),
                        LongStream.of(largestBytes))
                .mapToObj(bytes -> transfer(bytes, directions, scenario.acceptsErrors()))
                .toList();
        return scenario.sending(transfers, horizonSeconds);
    }

    /**
     * Returns the scenario with files of these sizes alone, each in the directions given for it.
     *
     * @param scenario a scenario of such transfers
     * @param directionsByBytes which sizes, and which way
     */
    public static Scenario more(Scenario scenario, SortedMap<Long, List<Direction>> directionsByBytes) {
        return scenario.sending(
                directionsByBytes.entrySet().stream()
                        .map(it -> transfer(it.getKey(), it.getValue(), scenario.acceptsErrors()))
                        .toList(),
                scenario.horizonSeconds());
    }

    private static Transfer transfer(long bytes, List<Direction> directions, boolean acceptsErrors) {
        String name = bytes + " B";
        return new Transfer(name, List.of(new PayloadFile(name, bytes)), directions, List.of(), acceptsErrors);
    }
}
