package org.ionohaul.scenario;

import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.net.Access;
import org.ionohaul.net.Order;
import org.ionohaul.net.Wait;

/** The keys of a file that describes a net: what {@link NetReader} reads and what its manual lists. */
final class NetFormat {
    static final Key<Double> WARM_UP = Key.of(
                    "warm-up",
                    "warmUpSeconds",
                    Kind.quantity(Dimension.TIME),
                    "1 h",
                    "Messages written before that count for the others' waiting, but not in the answers; shorter than the horizon.")
            .otherwise("0 s");
    static final Key<Double> LOAD = Key.of(
                    "load",
                    "load",
                    Kind.factor(),
                    1.5,
                    "By how much more is written than stated: multiplies how often messages come by chance or after a pause,"
                            + " above 0.")
            .otherwise(1.0);
    static final Key<Uncertain> AUDIBILITY = Key.of(
                    "audibility",
                    "audibilityDb",
                    Kind.uncertain(Dimension.RATIO),
                    "8 dB ± 10 dB",
                    "SNR in 3 kHz at which one station, not the gateway, hears another's steady carrier; drawn for each pair"
                            + " once a trial, both ways alike. Those below 6 dB are hidden from each other: they call into"
                            + " what they can't hear.")
            .usually("-40 dB", "60 dB");

    static final Key<List<String>> BETWEEN = Key.of(
            "groups",
            "groups",
            Kind.list(Kind.name()),
            List.of("shelters", "shelters"),
            "Two names of groups, or twice the same.");
    static final Key<Uncertain> BETWEEN_SNR = Key.of(
            "snr",
            "snrDb",
            Kind.uncertain(Dimension.RATIO),
            "-5 dB ± 6 dB",
            "As audibility at the top, for pairs of these groups.");
    static final Group AUDIBLE = Group.of(
            "audible", "Groups that hear each other better or worse than the rest; repeated.", BETWEEN, BETWEEN_SNR);

    static final Key<Integer> CHANNELS = Key.of(
                    "channels",
                    "channels",
                    Kind.count(),
                    2L,
                    "On how many frequencies the gateway can be called, 1 to 20.")
            .otherwise(1L);
    static final Key<Boolean> RADIO_EACH = Key.of(
                    "radio-each",
                    "hasRadioEach",
                    Kind.flag(),
                    true,
                    "Whether it has a radio for each channel, and serves as many callers at once; else one radio scans them.")
            .otherwise(false);
    static final Key<Long> DWELL = Key.of(
                    "dwell",
                    "dwellNanos",
                    Kind.nanos(),
                    "5 s",
                    "How long a scanning radio stays on each channel; longer than a call, or it hears none.")
            .otherwise("5 s");
    static final Key<Long> SESSION_LIMIT = Key.of(
            "session-limit",
            "sessionLimitNanos",
            Kind.nanos(),
            "10 min",
            "How long a caller may keep it: after that it falls silent. As long as it takes if left out.");
    static final Key<Long> IDLE_LIMIT = Key.of(
            "idle-limit",
            "idleNanos",
            Kind.nanos(),
            "30 s",
            "How long it holds a caller from whom it hears nothing. As long as the mode holds a link if left out.");
    static final Key<Boolean> CALLS = Key.of(
                    "calls",
                    "calls",
                    Kind.flag(),
                    true,
                    "Whether it calls stations for which messages wait; else these wait until the station calls.")
            .otherwise(false);

    static final Key<Long> LISTENS = Key.of(
                    "listens",
                    "listensNanos",
                    Kind.nanos(),
                    "5 s",
                    "How long a caller wants to have heard nobody before it calls; \"0 s\" for one who does not listen.")
            .otherwise("3 s");
    static final Key<Wait> HOLD_OFF = Key.of(
                    "hold-off",
                    "holdOff",
                    wait("a wait"),
                    "10 s .. 40 s",
                    "How long it waits, by chance within a range, before it listens again after a busy channel, and before it"
                            + " calls anew after a call that went well.")
            .otherwise("5 s .. 30 s");
    static final Key<Wait> REDIAL = Key.of(
                    "redial", "redial", wait("a wait"), "20 s .. 60 s", "How long it waits after a call in vain.")
            .otherwise("20 s .. 60 s");
    static final Key<Double> REDIAL_GROWTH = Key.of(
                    "redial-growth",
                    "redialGrowth",
                    Kind.factor(),
                    2.0,
                    "By how much longer after each further call in vain, 1 to 10.")
            .otherwise(1.5);
    static final Key<Integer> MOST_CALLS = Key.of(
                    "most-calls",
                    "mostCalls",
                    Kind.count(),
                    8L,
                    "After how many calls in vain, one after another, it gives its messages up, 1 or more.")
            .otherwise(20L);
    static final Key<Long> MESSAGE_PATIENCE = Key.of(
            "patience",
            "patienceNanos",
            Kind.nanos(),
            "2 h",
            "How old a message may get before it is given up; for ever if left out.");
    static final Key<Integer> CALLS_IN_A_ROW = Key.of(
            "calls-in-a-row",
            "callsInARow",
            Kind.count(),
            2L,
            "How often a call is repeated before it counts as in vain, 1 to 100; a lost link is then dialled anew by these rules"
                    + " too. Left out, the mode's own session rules hold in each call: their calls, pauses and redials.");
    static final Key<Boolean> CHANGES_CHANNEL = Key.of(
                    "changes-channel",
                    "changesChannel",
                    Kind.flag(),
                    true,
                    "Whether it tries the gateway's next channel after a busy one or a call in vain.")
            .otherwise(false);
    static final Group OPERATORS = Group.of(
            "operators",
            "How those who call go about it, people or automatic stations; under a group, what is different there.",
            LISTENS,
            HOLD_OFF,
            REDIAL,
            REDIAL_GROWTH,
            MOST_CALLS,
            MESSAGE_PATIENCE,
            CALLS_IN_A_ROW,
            CHANGES_CHANNEL);

    static final Key<Access> ACCESS = Key.of(
                    "access",
                    "access",
                    Kind.choice(Access.class),
                    "roster",
                    "Who may call when: free, anybody who finds the channel clear; roster, each station in a time of its own, in"
                            + " turn; in-turn, the one whom the gateway names next, knowing at no cost who has what: what"
                            + " perfect net control would reach.")
            .otherwise("free");
    static final Key<Order> ORDER = Key.of(
                    "order",
                    "order",
                    Kind.choice(Order.class),
                    "short-first",
                    "Which message goes first at a station and, in turn, over all: first-come, priority or short-first.")
            .otherwise("first-come");
    static final Key<Long> SLOT = Key.of(
                    "slot", "slotNanos", Kind.nanos(), "4 min", "Length of each station's time on the roster, above 0.")
            .otherwise("5 min");
    static final Key<Integer> MESSAGES_A_CALL = Key.of(
                    "messages-a-call",
                    "messagesACall",
                    Kind.count(),
                    1L,
                    "Most messages that are handed over in one call, 1 to 200.")
            .otherwise(20L);
    static final Group DISCIPLINE =
            Group.of("discipline", "What the stations have agreed on.", ACCESS, ORDER, SLOT, MESSAGES_A_CALL);

    static final Key<String> MESSAGE_NAME =
            Key.of("name", "name", Kind.name(), "situation", "What people call such messages.");
    static final Key<Direction> DIRECTION = Key.of(
                    "direction",
                    "direction",
                    Kind.choice(Direction.class),
                    "download",
                    "upload from the station to the gateway, download the other way.")
            .otherwise("upload");
    static final Key<Integer> PRIORITY = Key.of(
                    "priority", "priority", Kind.count(), 2L, "1, most urgent, to 9; used where order is by priority.")
            .otherwise(5L);
    static final Key<Uncertain> MESSAGE_SIZE = Key.of(
            "size",
            "size",
            Kind.uncertain(Dimension.SIZE),
            "500 B .. 3000 B",
            "How long it is on the air, after compression; a range or another distribution, drawn for each message."
                    + " 1 B to 1 MB.");
    static final Key<Double> RATE = Key.of(
            "rate",
            "perHour",
            Kind.quantity(Dimension.RATE),
            "2 /h",
            "How many are written an hour at (or for) each station, by chance.");
    static final Key<List<Deadline>> TIMES = Key.of(
            "at",
            "atSeconds",
            Kind.list(Deadline.kind()),
            List.of("18:20", "45 min"),
            "In place of rate: when one is written at each station.");
    static final Key<Deadline> EVENT = Key.of(
            "after",
            "eventSeconds",
            Deadline.kind(),
            "18:08",
            "In place of rate: an event after which each station writes one.");
    static final Key<Double> WITHIN = Key.of(
                    "within",
                    "withinSeconds",
                    Kind.quantity(Dimension.TIME),
                    "10 min",
                    "Until how long after the event, each moment as likely.")
            .otherwise("5 min");
    static final Key<Double> PAUSE_AFTER = Key.of(
            "pause",
            "pauseSeconds",
            Kind.quantity(Dimension.TIME),
            "30 min",
            "In place of rate: mean time from when the last one was through, or given up, until the next is written.");
    static final Key<List<Deadline>> MESSAGE_DEADLINES = Key.of(
            "deadlines",
            "deadlinesSeconds",
            Kind.list(Deadline.kind()),
            List.of("15 min", "40 min"),
            "Times after writing to judge by, rising. None if left out.");
    static final Group MESSAGE = Group.of(
            "message",
            "Messages of one kind; repeated. State one of rate, at, after and pause.",
            MESSAGE_NAME,
            DIRECTION,
            PRIORITY,
            MESSAGE_SIZE,
            RATE,
            TIMES,
            EVENT,
            WITHIN,
            PAUSE_AFTER,
            MESSAGE_DEADLINES);

    static final Key<Integer> COUNT =
            Key.of("count", "count", Kind.count(), 14L, "How many stations there are of this kind, 1 to 500.");

    /** What an end of a pair has, but for how patient the operator of a pair is. */
    private static final List<Key<?>> END_KEYS = ScenarioFormat.NEAR.keysBut(ScenarioFormat.PATIENCE);

    /** A measured series belongs to one path, and a net has many. */
    private static final List<Group> END_PARTS = ScenarioFormat.NEAR.partsBut(ScenarioFormat.READINGS);

    static final Group AT_GATEWAY = new Group(
            "gateway",
            "How the gateway hears these stations; what is left out is as under gateway at the top.",
            ScenarioFormat.NEAR.keysBut(ScenarioFormat.PATIENCE, ScenarioFormat.END_NAME),
            ScenarioFormat.NEAR.partsBut(ScenarioFormat.READINGS, ScenarioFormat.STATION, ScenarioFormat.FOLD_BACK),
            false);
    static final Group GATEWAY = new Group(
                    "gateway",
                    "The station that all call: its keys are those of far in a scenario, but for snr and signal.",
                    Stream.concat(
                                    END_KEYS.stream(),
                                    Stream.of(CHANNELS, RADIO_EACH, DWELL, SESSION_LIMIT, IDLE_LIMIT, CALLS))
                            .toList(),
                    END_PARTS,
                    false)
            .with(OPERATORS);
    static final Group GROUP = new Group(
                    "group",
                    "Stations alike; repeated. Its keys are those of near in a scenario: what is a distribution is drawn for each"
                            + " station, once a trial.",
                    Stream.concat(Stream.of(COUNT), END_KEYS.stream()).toList(),
                    END_PARTS,
                    false)
            .with(AT_GATEWAY, MESSAGE, OPERATORS);

    static final Group TOP = Group.of(
                    "",
                    "The top of the file.",
                    ScenarioFormat.TITLE,
                    ScenarioFormat.SEED,
                    ScenarioFormat.TRIALS,
                    ScenarioFormat.HORIZON,
                    ScenarioFormat.CLOCK,
                    ScenarioFormat.DISTANCE,
                    ScenarioFormat.MODES,
                    WARM_UP,
                    LOAD,
                    AUDIBILITY)
            .with(AUDIBLE, GATEWAY, GROUP, OPERATORS, DISCIPLINE, ScenarioFormat.SKY);

    private NetFormat() {}

    private static Kind<Wait> wait(String words) {
        return Kind.uncertain(Dimension.TIME).map(words, range -> {
            if (range instanceof Uncertain.Known || range instanceof Uncertain.Range) {
                return new Wait(nanos(range.quantile(0)), nanos(range.quantile(1)));
            }
            throw new WrongValue("is neither a time nor a range", "write \"20 s\" or \"10 s .. 40 s\"");
        });
    }

    private static long nanos(double seconds) throws WrongValue {
        if (seconds <= 86_400) {
            return Math.round(seconds * 1e9);
        }
        throw new WrongValue("is longer than a day", Dimension.TIME.remedy());
    }
}
