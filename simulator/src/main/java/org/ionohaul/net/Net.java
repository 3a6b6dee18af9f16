package org.ionohaul.net;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.ionohaul.engine.Engine;
import org.ionohaul.random.TrialStreams;

/** One trial of a net: its messages are written, those who call go about it, and conversations come to what they come to. */
public final class Net {
    /** Number of the gateway. */
    public static final int GATEWAY = 0;

    private final Engine engine;
    private final NetRules rules;
    private final Mail mail;
    private final Conversations conversations;
    private final List<Operator> operators;
    private final Turns turns;
    private final List<Map<MessageKind, Writer>> writers = new ArrayList<>();

    /**
     * Sets a net up.
     *
     * @param conversations what calls come to
     * @param streams chance of messages and operators
     */
    public Net(NetRules rules, Engine engine, Conversations conversations, TrialStreams streams) {
        this.engine = engine;
        this.rules = rules;
        this.conversations = conversations;
        int stations = rules.members().size();
        mail = new Mail(stations, rules.discipline().order());
        operators = IntStream.rangeClosed(0, stations)
                .mapToObj(place -> new Operator(this, place, streams))
                .toList();
        turns = new Turns(this, rules.radios());
        writers.add(Map.of());
        for (int station = 1; station <= stations; station++) {
            Map<MessageKind, Writer> own = new HashMap<>();
            List<MessageKind> kinds = rules.member(station).kinds();
            for (int number = 0; number < kinds.size(); number++) {
                int at = station;
                Writer writer = new Writer(
                        engine,
                        streams,
                        station,
                        number,
                        kinds.get(number),
                        (kind, bytes) -> onWritten(at, kind, bytes));
                own.put(kinds.get(number), writer);
                writer.begin();
            }
            writers.add(own);
        }
    }

    /**
     * Runs it.
     *
     * @param untilNanos how long, in nanoseconds since the trial began
     * @return all messages written, in order of writing
     */
    public List<Letter> run(long untilNanos) {
        engine.runUntil(untilNanos);
        return List.copyOf(mail.letters());
    }

    private void onWritten(int station, MessageKind kind, long bytes) {
        mail.write(station, kind, bytes, engine.nowNanos());
        if (rules.discipline().access() == Access.IN_TURN) {
            turns.give();
        } else if (!kind.isForStation()) {
            operators.get(station).look();
        } else if (rules.gateway().calls()) {
            operators.get(GATEWAY).look();
        }
    }

    /** Takes the messages of a station that are done out of the queues; who writes on when they are does so. */
    void clear(int station) {
        for (Letter letter : mail.clear(station)) {
            Objects.requireNonNull(writers.get(station).get(letter.kind())).goOn();
        }
    }

    /** A conversation has come to its end: those who waited for it look around. */
    void onIdle() {
        if (rules.discipline().access() == Access.IN_TURN) {
            turns.give();
        }
    }

    Engine engine() {
        return engine;
    }

    NetRules rules() {
        return rules;
    }

    Mail mail() {
        return mail;
    }

    Conversations conversations() {
        return conversations;
    }

    Operator operator(int place) {
        return operators.get(place);
    }

    int stations() {
        return rules.members().size();
    }
}
