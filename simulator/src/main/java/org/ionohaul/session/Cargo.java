package org.ionohaul.session;

import java.util.List;
import org.ionohaul.channel.End;

/**
 * The files of a session, numbered from 0 in the order in which they travel: first those of the station that dials, then
 * those of the other.
 *
 * @param fromNear sizes in bytes of the files that the near end holds, in the order sent
 * @param fromFar sizes in bytes of the files that the far end holds, in the order sent
 * @param acceptsErrors whether a file counts as delivered even with bytes that are wrong because no check noticed
 */
public record Cargo(List<Long> fromNear, List<Long> fromFar, boolean acceptsErrors) {
    /** Copies the lists and checks the sizes. */
    public Cargo {
        fromNear = List.copyOf(fromNear);
        fromFar = List.copyOf(fromFar);
        if (fromNear.isEmpty() && fromFar.isEmpty()) {
            throw new IllegalArgumentException("a session needs a file");
        }
        fromNear.forEach(Cargo::requirePositive);
        fromFar.forEach(Cargo::requirePositive);
    }

    private static void requirePositive(long bytes) {
        if (bytes < 1) {
            throw new IllegalArgumentException("a file must have at least 1 byte: " + bytes);
        }
    }

    /** Returns files that count as delivered only if every byte is right. */
    public Cargo(List<Long> fromNear, List<Long> fromFar) {
        this(fromNear, fromFar, false);
    }

    /** Returns files that all travel from one end and count as delivered only if every byte is right. */
    public static Cargo from(End sender, List<Long> sizesBytes) {
        return sender == End.NEAR ? new Cargo(sizesBytes, List.of()) : new Cargo(List.of(), sizesBytes);
    }

    /** Returns the same files. */
    public Cargo acceptingErrors(boolean accepts) {
        return new Cargo(fromNear, fromFar, accepts);
    }

    /** Returns how many files there are. */
    public int files() {
        return fromNear.size() + fromFar.size();
    }

    /** Returns the size of a file, in bytes. */
    public long bytes(int file) {
        return file < fromNear.size() ? fromNear.get(file) : fromFar.get(file - fromNear.size());
    }

    /** Returns the number of the first file that an end sends. */
    public int firstFrom(End sender) {
        return sender == End.NEAR ? 0 : fromNear.size();
    }

    /** Returns the number after that of the last file that an end sends. */
    public int endFrom(End sender) {
        return sender == End.NEAR ? fromNear.size() : files();
    }
}
