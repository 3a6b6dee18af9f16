package org.ionohaul.scenario;

import java.util.List;
import java.util.Set;
import org.ionohaul.limits.OutOfRange;

/**
 * What is sent in one session, and by when.
 *
 * @param name short name, unique in the scenario
 * @param files the files in the order sent, at least one
 * @param directions which ways to simulate, at least one
 * @param deadlinesSeconds deadlines to judge by, in seconds after pressing send, rising; may be empty
 * @param acceptsErrors whether files are of use even with bytes that are wrong because no check noticed
 */
public record Transfer(
        String name,
        List<PayloadFile> files,
        List<Direction> directions,
        List<Double> deadlinesSeconds,
        boolean acceptsErrors) {
    /** Most files of a transfer: a row of results counts them in one byte. */
    static final int MOST_FILES = 255;

    private static final int MOST_DEADLINES = 20;

    /** Copies the lists and checks that the deadlines rise. */
    public Transfer {
        files = List.copyOf(files);
        directions = List.copyOf(directions);
        deadlinesSeconds = List.copyOf(deadlinesSeconds);
        OutOfRange.unless(
                directions.size() == Set.copyOf(directions).size(),
                "directions",
                "must name each way once",
                directions);
        OutOfRange.unless(
                deadlinesSeconds.size() <= MOST_DEADLINES,
                "deadlinesSeconds",
                "must be at most 20",
                deadlinesSeconds.size());
        for (int i = 0; i < deadlinesSeconds.size(); i++) {
            OutOfRange.unless(
                    deadlinesSeconds.get(i) > (i == 0 ? 0 : deadlinesSeconds.get(i - 1)),
                    "deadlinesSeconds",
                    "must rise from above 0",
                    deadlinesSeconds);
        }
    }

    /** Returns a transfer whose files are of use only if every byte is right. */
    public Transfer(String name, List<PayloadFile> files, List<Direction> directions, List<Double> deadlinesSeconds) {
        this(name, files, directions, deadlinesSeconds, false);
    }

    /** Returns the bytes of all files together. */
    public long totalBytes() {
        return files.stream().mapToLong(PayloadFile::bytes).sum();
    }
}
