package org.ionohaul.traffic;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.ionohaul.net.MessageKind;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.study.LineStore;
import org.ionohaul.trial.NetTrial;

/**
 * The trials of a net as lines of numbers, so that they can be kept while others run: one for the trial, then one for each of its
 * messages.
 */
public final class TrialLines {
    private static final String TRIAL = "t";
    private static final int OF_TRIAL = 6;
    private static final int OF_MESSAGE = 8;

    private final NetScenario scenario;
    private final List<Integer> groups;

    /** Prepares the lines of a net's trials. */
    public TrialLines(NetScenario scenario) {
        this.scenario = scenario;
        groups = scenario.groupOfStations();
    }

    /** Returns the lines of a trial. */
    public List<String> of(NetTrial trial) {
        String head = TRIAL + ","
                + joined(
                        trial.occupiedNanos(),
                        trial.collidedNanos(),
                        trial.toBusyGatewayNanos(),
                        trial.calls(),
                        trial.refusals(),
                        trial.cutOff());
        return Stream.concat(Stream.of(head), trial.messages().stream().map(this::line))
                .toList();
    }

    private String line(NetTrial.Message message) {
        return joined(
                message.station(),
                kinds(message.station()).indexOf(message.kind()),
                message.bytes(),
                message.writtenNanos(),
                message.begunNanos(),
                message.deliveredNanos(),
                message.givenUpNanos(),
                message.calls());
    }

    private static String joined(long... numbers) {
        return LongStream.of(numbers).mapToObj(Long::toString).collect(Collectors.joining(","));
    }

    private List<MessageKind> kinds(int station) {
        return scenario.groups().get(groups.get(station)).kinds();
    }

    /**
     * Returns the trials whose lines a store holds, in order.
     *
     * @throws IOException if it can't be read
     */
    public List<NetTrial> trials(LineStore store) throws IOException {
        List<NetTrial> trials = new ArrayList<>();
        List<NetTrial.Message> messages = new ArrayList<>();
        List<long[]> head = new ArrayList<>();
        store.forEach(line -> {
            if (line.startsWith(TRIAL)) {
                head.forEach(it -> trials.add(trial(it, messages)));
                head.clear();
                messages.clear();
                head.add(numbers(line.substring(TRIAL.length() + 1), OF_TRIAL));
            } else {
                messages.add(message(numbers(line, OF_MESSAGE)));
            }
        });
        head.forEach(it -> trials.add(trial(it, messages)));
        return trials;
    }

    private static NetTrial trial(long[] head, List<NetTrial.Message> messages) {
        return new NetTrial(
                messages, head[0], head[1], head[2], (int) head[3], (int) head[4], (int) head[5], List.of());
    }

    private NetTrial.Message message(long[] numbers) {
        int station = (int) numbers[0];
        return new NetTrial.Message(
                kinds(station).get((int) numbers[1]),
                station,
                numbers[2],
                numbers[3],
                numbers[4],
                numbers[5],
                numbers[6],
                (int) numbers[7]);
    }

    private static long[] numbers(String line, int count) throws IOException {
        long[] numbers =
                Stream.of(line.split(",", -1)).mapToLong(Long::parseLong).toArray();
        if (numbers.length != count) {
            throw new IOException("a line of " + numbers.length + " numbers, not " + count);
        }
        return numbers;
    }
}
