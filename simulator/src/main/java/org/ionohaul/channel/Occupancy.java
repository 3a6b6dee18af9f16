package org.ionohaul.channel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * Who else is on the frequency at one end in one trial: the time line cut at every beginning and end of an over, with the
 * overs that are on in each span. Extended as later instants are asked for; the visits are drawn in their own order, so
 * the order of asking changes nothing.
 */
final class Occupancy {
    private static final long EXTENSION_NANOS = 600_000_000_000L;

    private final List<Visits> populations;
    private final List<Over> pending = new ArrayList<>();
    private final List<List<Over>> on = new ArrayList<>();
    private long[] startNanos = new long[64];
    private long knownNanos;

    Occupancy(List<Visits> populations) {
        this.populations = List.copyOf(populations);
    }

    /** Returns the number of the span that holds an instant, zero or later. */
    int spanAt(long atNanos) {
        if (atNanos < 0) {
            throw new IllegalArgumentException("atNanos must not be negative: " + atNanos);
        }
        while (atNanos >= knownNanos) {
            extend();
        }
        int found = Arrays.binarySearch(startNanos, 0, on.size(), atNanos);
        return found >= 0 ? found : -found - 2;
    }

    /** Returns when a span begins. */
    long startNanos(int span) {
        return startNanos[span];
    }

    /** Returns when a span ends, not included, as far as is known yet: it may go on after that. */
    long endNanos(int span) {
        return span + 1 < on.size() ? startNanos[span + 1] : knownNanos;
    }

    /** Returns the overs that are on during a span. */
    List<Over> on(int span) {
        return on.get(span);
    }

    /** Returns all overs that are on at some time before an instant, which must be positive, in order of beginning. */
    List<Over> before(long atNanos) {
        return IntStream.rangeClosed(0, spanAt(atNanos - 1))
                .boxed()
                .flatMap(span -> on(span).stream())
                .distinct()
                .sorted(Comparator.comparingLong(Over::startNanos))
                .toList();
    }

    private void extend() {
        long fromNanos = knownNanos;
        long toNanos = Math.addExact(fromNanos, EXTENSION_NANOS);
        for (Visits visits : populations) {
            visits.arriveBefore(toNanos, pending);
        }
        LongStream edges = pending.stream().flatMapToLong(over -> LongStream.of(over.startNanos(), over.endNanos()));
        LongStream.concat(LongStream.of(fromNanos), edges)
                .filter(edge -> edge >= fromNanos && edge < toNanos)
                .sorted()
                .distinct()
                .forEach(this::append);
        pending.removeIf(over -> over.endNanos() <= toNanos);
        knownNanos = toNanos;
    }

    private void append(long edge) {
        if (on.size() == startNanos.length) {
            startNanos = Arrays.copyOf(startNanos, 2 * startNanos.length);
        }
        startNanos[on.size()] = edge;
        on.add(pending.stream().filter(over -> over.isOn(edge)).toList());
    }
}
