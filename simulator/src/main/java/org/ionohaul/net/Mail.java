package org.ionohaul.net;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** All messages of a trial, and which of them wait where: at each station for the gateway, at the gateway for each station. */
final class Mail {
    private final List<Letter> letters = new ArrayList<>();
    private final List<List<Letter>> fromStation;
    private final List<List<Letter>> forStation;
    private final Order order;

    Mail(int stations, Order order) {
        this.order = order;
        fromStation = queues(stations);
        forStation = queues(stations);
    }

    private static List<List<Letter>> queues(int stations) {
        return IntStream.rangeClosed(0, stations)
                .<List<Letter>>mapToObj(it -> new ArrayList<>())
                .toList();
    }

    Letter write(int station, MessageKind kind, long bytes, long nowNanos) {
        Letter letter = new Letter(letters.size(), station, kind, bytes, nowNanos);
        letters.add(letter);
        queue(letter).add(letter);
        return letter;
    }

    List<Letter> letters() {
        return letters;
    }

    /** Returns whether a station has something to call for. */
    boolean waitsAt(int station) {
        return waiting(fromStation, station).findAny().isPresent();
    }

    /** Returns whether anything waits at a station or for it. */
    boolean waitsFor(int station) {
        return waitsAt(station) || waiting(forStation, station).findAny().isPresent();
    }

    /** Returns the first messages that wait at a station, so many at most. */
    List<Letter> first(int station, boolean isForStation, int most) {
        return waiting(isForStation ? forStation : fromStation, station)
                .sorted(order.comparator())
                .limit(most)
                .toList();
    }

    /** Returns the message that goes first of all that wait at some stations or for them. */
    Optional<Letter> firstOf(List<Integer> stations) {
        return stations.stream()
                .flatMap(it -> Stream.concat(waiting(fromStation, it), waiting(forStation, it)))
                .min(order.comparator());
    }

    /** Returns the message that goes first of those that wait at the gateway for some stations. */
    Optional<Letter> firstAtGateway(List<Integer> stations) {
        return stations.stream().flatMap(it -> waiting(forStation, it)).min(order.comparator());
    }

    /** Takes what was delivered or given up out of the queues of a station, and returns it. */
    List<Letter> clear(int station) {
        List<Letter> cleared = new ArrayList<>();
        for (List<Letter> queue : List.of(fromStation.get(station), forStation.get(station))) {
            queue.stream().filter(Mail::isDone).forEach(cleared::add);
            queue.removeIf(Mail::isDone);
        }
        return cleared;
    }

    /** What came through in a conversation that is not over yet still lies here, and is not to be called for by another. */
    private static Stream<Letter> waiting(List<List<Letter>> queues, int station) {
        return queues.get(station).stream().filter(it -> !isDone(it));
    }

    private static boolean isDone(Letter letter) {
        return letter.isDelivered() || letter.givenUpNanos() < Letter.NEVER;
    }

    private List<Letter> queue(Letter letter) {
        return (letter.kind().isForStation() ? forStation : fromStation).get(letter.station());
    }
}
